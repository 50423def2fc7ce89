// What a crew remembers of the well it is making: plain data.

import { lowestTold_m, type WellJob } from './wellJob';
import type { StyleName } from './wellStyle';

export interface WellMemory {
  readonly style: StyleName;
  readonly job: WellJob;
  /** The lowest water that a neighbour tells, m. */
  readonly lowest_m: number;
  spotChosen: boolean;
  /** Layers of the book written down so far; -1: not begun. */
  booked: number;
  /** The last rod is out. */
  pulled: boolean;
  /** How often the casing was run and worked. */
  runs: number;
  works: number;
  /** What is being filled in: pack, backfill, seal, and nothing more. */
  filling: 'pack' | 'backfill' | 'seal' | 'done';
  /** Pours of this filling, and whether the last is sounded. */
  pours: number;
  sounded: boolean;
  broken: boolean;
  rounds: number;
  dipped: boolean;
  tests: number;
  disinfected: boolean;
  rinses: number;
  headed: boolean;
  recorded: number;
  /** How often each act was tried without coming about: after a few times it is left. */
  tries: Record<string, number>;
}

export function createWellMemory(style: StyleName, job: WellJob): WellMemory {
  return {
    style,
    job,
    lowest_m: lowestTold_m(job),
    spotChosen: false,
    booked: -1,
    pulled: false,
    runs: 0,
    works: 0,
    filling: 'pack',
    pours: 0,
    sounded: false,
    broken: false,
    rounds: 0,
    dipped: false,
    tests: 0,
    disinfected: false,
    rinses: 0,
    headed: false,
    recorded: 0,
    tries: {},
  };
}
