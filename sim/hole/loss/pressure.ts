// Pressure of the fluid against each cell of the wall, for a level.
import { GRAVITY_MS2 } from '../../numeric/units';
import type { HoleState } from '../hole';
import type { LossInput, LossWork } from './work';

/** Weight of a metre of the fluid in cell i, Pa/m. */
export const weight_Pam = (work: LossWork, i: number): number => work.density_kgm3[i] * GRAVITY_MS2;

/** What flow and moving stem add to the weight of the fluid in cell i, Pa: friction of the rising stream above it, surge. */
export function added_Pa(hole: HoleState, i: number, input: LossInput, work: LossWork): number {
  const middle_m = i * hole.dz_m + 0.5 * work.height_m[i];
  return input.friction_Pam * (middle_m < input.bit_m ? middle_m : input.bit_m) + work.surge_Pa[i];
}

/** Pressure at level_m in a column full to the mouth, Pa: with the level there, all below it bears so much less. */
export function pressureAbove_Pa(hole: HoleState, level_m: number, work: LossWork): number {
  if (level_m <= 0) return 0;
  const i = Math.min(work.cells - 1, Math.floor(level_m / hole.dz_m));
  return (i > 0 ? work.bottom_Pa[i - 1] : 0) + weight_Pam(work, i) * (level_m - i * hole.dz_m);
}

/**
 * Mean pressure over the open height h of cell i with the level at level_m, Pa; above_Pa: pressureAbove_Pa of it; more_Pa: added_Pa.
 * Below the level: rho g times the depth of the middle under it, and what is added. Share y of the cell wetted: rho g h y^2/2 and y
 * of what is added, so that nothing jumps as the level passes. Above the level 0.
 */
export function cellPressure_Pa(
  hole: HoleState,
  i: number,
  level_m: number,
  above_Pa: number,
  more_Pa: number,
  work: LossWork,
): number {
  const top_m = i * hole.dz_m;
  if (level_m <= top_m) return work.middle_Pa[i] - above_Pa + more_Pa;
  const height_m = work.height_m[i];
  const wetted = (top_m + height_m - level_m) / height_m;
  if (wetted <= 0) return 0;
  return wetted * (0.5 * weight_Pam(work, i) * height_m * wetted + (more_Pa > 0 ? more_Pa : 0));
}
