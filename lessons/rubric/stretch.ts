// How much ground for a screen the learner had found: coarse sand below the neighbours' lowest water, by the learner's own samples.

import { isCoarseSample } from './grains';
import type { RunView } from './item';
import { nearest, toldLowest_m } from './screen';

/** Steps in which the hole is gone down, m. */
const STEP_m = 0.1;

export interface CoarseStretch {
  readonly from_m: number;
  readonly to_m: number;
}

/** The longest unbroken stretch of coarse ground below the told level and above a depth; from_m = to_m where there is none. */
export function coarseStretch(view: RunView, bottom_m: number): CoarseStretch {
  const lowest_m = toldLowest_m(view);
  let best: CoarseStretch = { from_m: lowest_m, to_m: lowest_m };
  let from_m = -1;
  const steps = Math.floor((bottom_m - lowest_m) / STEP_m + 1e-6);
  for (let i = 0; i <= steps; i++) {
    const top_m = lowest_m + i * STEP_m;
    const middle_m = top_m + STEP_m / 2;
    const sample = i < steps ? nearest(view.tray, middle_m) : null;
    if (sample !== null && isCoarseSample(sample.shares, sample.label_m)) {
      if (from_m < 0) from_m = top_m;
    } else if (from_m >= 0) {
      if (top_m - from_m > best.to_m - best.from_m) best = { from_m, to_m: top_m };
      from_m = -1;
    }
  }
  return best;
}
