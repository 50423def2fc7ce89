// Whole holes for the tests and the sweep: which crew drills where and how deep, and what came of it.

import { hashRun, ledgerOf, SETTINGS, type Run } from '$sim';
import { CREWS, outcomeOf, playCrew, practiceFor, readRunFile, replayFile, writeRunFile, type Asked } from '$lessons';

export interface Hole {
  readonly crew: string;
  readonly asked: Asked;
  readonly seed: number;
}

export interface Drilled {
  readonly outcome: string;
  readonly depth_m: number;
  readonly ticks: number;
  /** The crew ended the job itself: it stopped drilling or gave the hole up. */
  readonly byAct: boolean;
  readonly lost: number;
  readonly reproduced: boolean;
}

/** Holes of 10 to 15 m, shared over crews and settings; every crew meets every setting once in 18. */
export function holes(count: number): Hole[] {
  return Array.from({ length: count }, (_, i) => ({
    crew: CREWS[i % CREWS.length]!,
    asked: { depth_m: 10 + (i % 11) / 2, setting: SETTINGS[Math.floor(i / CREWS.length) % SETTINGS.length]! },
    seed: 1 + i,
  }));
}

function endedByAct(run: Run): boolean {
  const [, last] = run.log.findLast(([, action]) => action === 'stopDrilling' || action === 'abandon') ?? [];
  const { job } = run.state.machine;
  return job === 'abandoned' ? last === 'abandon' : job === 'pullingOut' && last === 'stopDrilling';
}

/** Drills the hole, saves it to the text of a run file and plays that again. */
export function drilled({ crew, asked, seed }: Hole): Drilled {
  const practice = practiceFor('open-hole', asked)!;
  const run = playCrew(practice, crew, seed);
  const { water, solids, polymer } = ledgerOf(run);
  const read = readRunFile(writeRunFile(run, practice));
  const again = read.ok ? replayFile(read.file) : null;
  return {
    outcome: outcomeOf(run, practice).key,
    depth_m: run.state.hole.depth_m,
    ticks: run.state.tick,
    byAct: endedByAct(run),
    lost: Math.max(Math.abs(water), Math.abs(solids), Math.abs(polymer)),
    reproduced: again !== null && again.reproduced && again.hash === hashRun(run),
  };
}
