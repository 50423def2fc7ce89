// What the careful crew remembers: plain data, filled as the job goes on.

import { createPatience, type Patience } from './patience';
import { createTrail, type Trail } from './climb';
import type { Trouble } from './trouble';

export interface CarefulMemory {
  patience: Patience;
  trail: Trail;
  trouble: Trouble;
  cautionsRead: number;
  powderIn_g: number;
  /** Rod for which a sample was last caught. */
  sampledRod: number;
  /** Job second at which the feed was last taken off to clear, or -1. */
  clearing_s: number;
  /** Seconds in a row that the returns looked clean. */
  clean_s: number;
  /** The bit was lifted for this stop. */
  lifted: boolean;
  /** The hole is clear: the flow may stop. */
  stopping: boolean;
  feed_frac: number;
  lastFeed_s: number;
}

export function createCarefulMemory(): CarefulMemory {
  return {
    patience: createPatience(),
    trail: createTrail(),
    trouble: { since_s: -1, lifts: 0 },
    cautionsRead: 0,
    powderIn_g: 0,
    sampledRod: 0,
    clearing_s: -1,
    clean_s: 0,
    lifted: false,
    stopping: false,
    feed_frac: 0.3,
    lastFeed_s: 0,
  };
}
