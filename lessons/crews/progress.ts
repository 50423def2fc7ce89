// Whether the hole still gets deeper, or the casing for it longer. Every crew gives up by an act when it does not: no job hangs.

import type { Senses } from '$sim';

export interface Progress {
  deepest_m: number;
  /** Pieces of casing that were joined by then. */
  joined: number;
  /** Job second at which the hole was last found deeper, or another piece joined. */
  deeper_s: number;
  /** Seconds of turning with weight on since then. */
  drilled_s: number;
}

/** Less than this is no progress, m. */
const DEEPER_m = 0.03;
/** Drilled for so long without progress, the ground refuses the bit, s: less than a hand's breadth in an hour. ASSUMED patience. */
const REFUSES_s = 1500;
/** And so long without progress for whatever reason, the hole is lost, s. ASSUMED patience. */
const LOST_s = 5400;

export function createProgress(): Progress {
  return { deepest_m: 0, joined: 0, deeper_s: 0, drilled_s: 0 };
}

export function keepProgress(progress: Progress, senses: Senses): void {
  const { stem } = senses;
  const joined = senses.well?.casing.joined ?? 0;
  if (joined > progress.joined) progress.deeper_s = senses.time_s;
  progress.joined = joined;
  if (stem.bottom_m >= progress.deepest_m + DEEPER_m) {
    progress.deepest_m = stem.bottom_m;
    progress.deeper_s = senses.time_s;
    progress.drilled_s = 0;
  } else if (stem.turning && stem.feed_frac > 0) progress.drilled_s += 1;
}

/** True when going on has no sense any more. */
export function hopeless(progress: Progress, senses: Senses): boolean {
  return progress.drilled_s > REFUSES_s || senses.time_s - progress.deeper_s > LOST_s;
}
