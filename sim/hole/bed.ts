// The jets pick the bed up again: grains lying at the bottom of the hole, round the stem where it stands in them.
import { CLASS_COUNT } from '../materials/sizes';
import { bedHeight_m, type HoleState, type StemPlace } from './hole';

/** Share of the bed within reach that the jets pick up in a second. ASSUMED. */
export const PICK_UP_1s = 0.05;
/** How far below the bit the jets reach, m. ASSUMED: ten nozzle diameters. */
export const JET_REACH_m = 0.1;
/** Excess of the stream over a grain's slip at which pick-up is in full, as a share of the slip; below it grows from 0. ASSUMED. */
const FULL_PICK_UP = 0.1;

/** Moves a share of one class of the bed into the last cell in use. */
function lift(hole: HoleState, k: number, share: number): void {
  const to = k * hole.cells + hole.used - 1;
  const grains_m3 = hole.bed_m3[k] * share;
  const moment_m4 = hole.bedMoment_m4[k] * share;
  hole.bed_m3[k] -= grains_m3;
  hole.bedMoment_m4[k] -= moment_m4;
  hole.solids_m3[to] += grains_m3;
  hole.moment_m4[to] += moment_m4;
}

/**
 * One tick of pick-up by the jets: of the bed from its top to a little below the bit, the classes that the stream past the
 * bit can lift. upward_ms: velocity of the stream in the annulus at the bit.
 */
export function pickUpBed(
  hole: HoleState,
  stem: StemPlace,
  slip_ms: Float64Array,
  upward_ms: number,
  dt_s: number,
): void {
  if (upward_ms <= 0) return;
  const height_m = bedHeight_m(hole, stem);
  if (height_m <= 0) return;
  const top_m = hole.depth_m - height_m;
  const reached = Math.min(1, Math.max(0, (stem.bit_m + JET_REACH_m - top_m) / height_m));
  if (reached <= 0) return;
  const share = Math.min(1, PICK_UP_1s * dt_s) * reached;
  for (let k = 0; k < CLASS_COUNT; k++) {
    if (hole.bed_m3[k] <= 0) continue;
    const strength = Math.min(1, Math.max(0, (upward_ms - slip_ms[k]) / (FULL_PICK_UP * slip_ms[k])));
    if (strength > 0) lift(hole, k, share * strength);
  }
}
