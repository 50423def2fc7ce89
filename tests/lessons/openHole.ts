// Whole holes for the tests and the sweep: which crew drills where and how deep, and what came of it.

import { hashRun, ledgerOf, runAt, SETTINGS, trailOf, type Run, type Trail } from '$sim';
import {
  DEPTH_LIMITS_m,
  outcomeOf,
  playCrew,
  practiceFor,
  readRunFile,
  replayFile,
  runFileOf,
  writeRunFile,
  type Asked,
  type RunFile,
} from '$lessons';
import { countOf } from './ownGround';

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
  /** Times that the stem was stuck, the bit buried, the prime lost; and what fell from the wall, L. */
  readonly stuck: number;
  readonly buried: number;
  readonly primeLost: number;
  readonly fallen_L: number;
  readonly reproduced: boolean;
  /** Brought back from a snapshot on the way, at a tick of chance, it comes to the same end. */
  readonly restored: boolean;
}

const CREWS = ['green', 'steady', 'careful'];

/** Holes of 10 to 15 m, shared over crews and settings; every crew meets every setting once in 18. */
export function holes(count: number): Hole[] {
  return Array.from({ length: count }, (_, i) => ({
    crew: CREWS[i % CREWS.length]!,
    asked: { depth_m: 10 + (i % 11) / 2, setting: SETTINGS[Math.floor(i / CREWS.length) % SETTINGS.length]! },
    seed: 1 + i,
  }));
}

/** The same with depths spread over all that may be asked. */
export function deepAndShallow(count: number): Hole[] {
  const { least, most } = DEPTH_LIMITS_m;
  return holes(count).map((hole, i) => ({
    ...hole,
    asked: { ...hole.asked, depth_m: least + ((i * 7) % (most - least + 1)) },
  }));
}

/** The hole as the file that a browser opens. */
export function holeFile({ crew, asked, seed }: Hole): RunFile {
  const practice = practiceFor('open-hole', asked)!;
  return JSON.parse(JSON.stringify(runFileOf(playCrew(practice, crew, seed), practice))) as RunFile;
}

/** Plays up to a tick that the seed picks, takes a snapshot through its text, and plays the rest from it. */
function restoredHash({ scenario, log, state }: Run, seed: number): string {
  const tick = 1 + ((seed * 7919) % (state.tick - 1));
  const trail = JSON.parse(JSON.stringify(trailOf(scenario, log, tick, tick))) as Trail;
  return hashRun(runAt(scenario, log, trail, state.tick));
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
  const lost = Math.max(...Object.values(ledgerOf(run)));
  const read = readRunFile(writeRunFile(run, practice));
  const again = read.ok ? replayFile(read.file) : null;
  return {
    outcome: outcomeOf(run, practice).key,
    depth_m: run.state.hole.depth_m,
    ticks: run.state.tick,
    byAct: endedByAct(run),
    lost,
    stuck: countOf(run, 'stuck'),
    buried: countOf(run, 'buried'),
    primeLost: countOf(run, 'primeLost'),
    fallen_L: run.state.wall.taken_m3.reduce((sum, taken_m3) => sum + taken_m3 * 1000, 0),
    reproduced: again !== null && again.reproduced && again.hash === hashRun(run),
    restored: restoredHash(run, seed) === hashRun(run),
  };
}
