// The hand under the stream: a share of the grains at the mouth goes into the sample bag instead of the pit.

import { CLASS_COUNT } from '../materials/sizes';
import type { Run } from './run';

/** Share of the stream that a hand catches. ASSUMED: a bowl held in a channel a good hand wide. */
const CAUGHT_frac = 0.05;
/**
 * Share of that, by class, that stays in the bowl: sand drops at once, silt and clay mostly run over its rim with the water.
 * ASSUMED: a bowl of 0.03 m2 under 0.1 L/s overflows at 3 mm/s, thirty times the fall of silt; some sticks all the same.
 */
const KEPT_frac = [0.02, 0.1, 1, 1, 1, 1, 1, 1];

export function catchShare(run: Run): void {
  const { state, work } = run;
  if (!state.tasks.some((task) => task.action === 'catchSample')) return;
  for (let k = 0; k < CLASS_COUNT; k++) {
    const caught_m3 = work.mouth.solids_m3[k] * CAUGHT_frac * KEPT_frac[k];
    const caught_m4 = work.mouth.moment_m4[k] * CAUGHT_frac * KEPT_frac[k];
    work.mouth.solids_m3[k] -= caught_m3;
    work.mouth.moment_m4[k] -= caught_m4;
    state.caught.solids_m3[k] += caught_m3;
    state.caught.moment_m4[k] += caught_m4;
    state.boundary.solidsOut_m3[k] += caught_m3;
  }
}
