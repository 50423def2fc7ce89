// All crews play a lesson on one seed: what came of each, as plain data.
import { hashRun, ledgerOf, recordUpTo, restoreRun, snapshotOf, verdictOf, type Run } from '$sim';
import {
  createCrew,
  CREWS,
  grade,
  jobFor,
  playOn,
  readRunFile,
  replayFile,
  startRun,
  writeRunFile,
  type Lesson,
} from '$lessons';

export interface CrewRun {
  readonly lesson: string;
  readonly crew: string;
  readonly seed: number;
  readonly score: number;
  readonly passed: boolean;
  readonly outcome: string;
  readonly ticks: number;
  /** Of the machine, s. */
  readonly time_s: number;
  /** Its own acts, and those refused. */
  readonly acts: number;
  readonly refused: number;
  /** Of water, grains, polymer and additives, relative. */
  readonly lost: number;
  /** In the driest month; nothing where no well was handed over. */
  readonly yield_Lmin: number;
  readonly leak_d: number;
  /** null where the well gives no water, or there is none. */
  readonly sand_mgL: number | null;
  /** From the text of its run file; null where that was not asked. */
  readonly reproduced: boolean | null;
  /** Events that happened, those with a cause by it, as in wallFails.level. */
  readonly happened: readonly string[];
}

function reproducedBy(run: Run, lesson: Lesson): boolean {
  const read = readRunFile(writeRunFile(run, lesson));
  const replayed = read.ok ? replayFile(read.file) : null;
  return replayed !== null && replayed.reproduced && replayed.hash === hashRun(run);
}

export function happenedIn(run: Run): string[] {
  const names = new Set<string>();
  for (const { name, data } of run.record.events) {
    names.add(name);
    if (typeof data.cause === 'string') names.add(`${name}.${data.cause}`);
  }
  return [...names].sort();
}

const refusedIn = (run: Run): number => run.record.events.filter(({ name }) => name === 'refused').length;

function noted(
  lesson: Lesson,
  crew: string,
  seed: number,
  run: Run,
  before: Pick<CrewRun, 'acts' | 'refused'>,
  time_s: number,
  again: boolean,
): CrewRun {
  const { score, outcome, passed } = grade(run, lesson);
  const verdict = outcome.key === 'outcome.handedOver' ? verdictOf(run) : null;
  return {
    lesson: lesson.id,
    crew,
    seed,
    score,
    passed,
    outcome: outcome.key,
    ticks: run.state.tick,
    time_s,
    acts: run.log.length - before.acts,
    refused: refusedIn(run) - before.refused,
    lost: Math.max(...Object.values(ledgerOf(run)).map((share) => Math.abs(Number(share)))),
    yield_Lmin: verdict?.yield.dry_Lmin ?? 0,
    leak_d: verdict?.leak.annulus_d ?? 0,
    sand_mgL: verdict !== null && verdict.yield.now_Lmin > 0 ? verdict.sand_mgL : null,
    reproduced: again ? reproducedBy(run, lesson) : null,
    happened: happenedIn(run),
  };
}

/** As many runs as are wanted from where a lesson begins: what another crew did before is played once. */
function startsOf(lesson: Lesson, seed: number): () => Run {
  const { scenario, record, log, ...rest } = startRun(lesson, seed);
  const snapshot = snapshotOf({ scenario, record, log, ...rest });
  const mark = { events: record.events.length, rows: record.trace.length, wellRows: record.wellTrace.length };
  return () => {
    const run = restoreRun(scenario, snapshot, recordUpTo(record, mark));
    run.log.push(...log);
    return run;
  };
}

/** Every crew on this seed; `again` plays each run file once more. */
export function crewRuns(lesson: Lesson, seed: number, again: boolean, crews: readonly string[] = CREWS): CrewRun[] {
  const start = startsOf(lesson, seed);
  return crews.map((crew) => {
    const start_ms = performance.now();
    const run = start();
    const before = { acts: run.log.length, refused: refusedIn(run) };
    playOn(run, lesson, createCrew(crew, jobFor(run, lesson)));
    return noted(lesson, crew, seed, run, before, (performance.now() - start_ms) / 1000, again);
  });
}
