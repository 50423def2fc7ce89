// A crew takes over what somebody else began: it ends the job by an act of its own from any moment, and where nothing was wrong nothing is lost by it.
import { describe, expect, it } from 'vitest';
import {
  createCrew,
  crewActs,
  grade,
  isOver,
  jobFor,
  lessonById,
  outcomeOf,
  playOn,
  scenarioOf,
  takeOver,
  type Lesson,
} from '$lessons';
import { createRun, restoreRun, snapshotOf, step, type Run, type RunRecord, type Snapshot } from '$sim';

interface Mark {
  readonly snapshot: Snapshot;
  readonly record: RunRecord;
  readonly entries: number;
}

/** Plays a run of a crew to its end and keeps it every so many seconds; once the casing is set a second tells less. */
function played(lesson: Lesson, crew: string, seed: number, every_s: number): { run: Run; marks: Mark[] } {
  const run = createRun(scenarioOf(lesson, seed));
  const player = createCrew(crew, jobFor(run, lesson));
  const marks: Mark[] = [];
  let next_s = every_s;
  while (!isOver(run, lesson)) {
    crewActs(run, player);
    do {
      if (!isOver(run, lesson)) step(run);
      if (run.state.tick < next_s || isOver(run, lesson)) continue;
      next_s = run.state.tick + (run.state.well ? 12 * every_s : every_s);
      marks.push({ snapshot: snapshotOf(run), record: structuredClone(run.record), entries: run.log.length });
    } while (run.state.wait !== null && !isOver(run, lesson));
  }
  return { run, marks };
}

function takenOver(run: Run, lesson: Lesson, { snapshot, record, entries }: Mark, crew: string): Run {
  const taken = restoreRun(run.scenario, snapshot, structuredClone(record));
  taken.log.push(...run.log.slice(0, entries));
  return playOn(taken, lesson, takeOver(crew, jobFor(taken, lesson), taken));
}

/** Scores lost by taking over at each mark of the careful crew's own run. */
function lossesOf(lesson: Lesson, seed: number, every_s: number): number[] {
  const { run, marks } = played(lesson, 'careful', seed, every_s);
  const { score } = grade(run, lesson);
  return marks
    .map((mark) => score - grade(takenOver(run, lesson, mark, 'careful'), lesson).score)
    .sort((a, b) => a - b);
}

const ENDED = [
  'outcome.reached',
  'outcome.depthReached',
  'outcome.stoppedShort',
  'outcome.givenUp',
  'outcome.handedOver',
];
const rods = lessonById('first-rods')!;

describe('a crew that takes over from its like', () => {
  it('loses nothing by it with three rods', () => {
    const losses = lossesOf(rods, 1, 311);
    expect(losses.length).toBeGreaterThan(6);
    expect(losses[Math.floor(losses.length / 2)]).toBe(0);
    expect(losses.at(-1)).toBeLessThanOrEqual(3);
    expect(losses[0]).toBeGreaterThanOrEqual(-3);
  }, 120_000);

  it('loses next to nothing by it with a whole well', () => {
    const losses = lossesOf(lessonById('open-well')!, 2, 4001);
    expect(losses.length).toBeGreaterThan(3);
    expect(Math.abs(losses[Math.floor(losses.length / 2)]!)).toBeLessThanOrEqual(0.2);
    expect(losses.filter((loss) => Math.abs(loss) > 3)).toHaveLength(0);
  }, 300_000);
});

describe('a crew that takes over from anybody', () => {
  for (const other of ['green', 'steady', 'random'])
    for (const crew of ['careful', 'steady', 'green'])
      it(`${crew} ends by an act of its own what ${other} began`, () => {
        const { run, marks } = played(rods, other, 4, 700);
        for (const mark of marks.slice(0, 4)) {
          const taken = takenOver(run, rods, mark, crew);
          expect(ENDED).toContain(outcomeOf(taken, rods).key);
        }
      }, 120_000);
});
