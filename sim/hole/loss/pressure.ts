// Pressure of the fluid against each cell of the wall, for a level.
import { GRAVITY_MS2 } from '../../numeric/units';
import type { LossWork } from './work';

/** Weight of a metre of the fluid in cell i, Pa/m. */
export const weight_Pam = (work: LossWork, i: number): number => work.density_kgm3[i] * GRAVITY_MS2;

/** The cell of the column that a level lies in; a level at an edge belongs to the cell under it. */
export function cellOfLevel(level_m: number, dz_m: number, work: LossWork): number {
  if (level_m >= work.bottom_m) return work.cells;
  return Math.min(work.cells - 1, Math.floor(level_m / dz_m));
}

/** Pressure at level_m, in cell j, of a column full to the mouth, Pa: with the level there, all below it bears so much less. */
export function pressureAbove_Pa(level_m: number, j: number, dz_m: number, work: LossWork): number {
  return (j > 0 ? work.bottom_Pa[j - 1] : 0) + weight_Pam(work, j) * (level_m - j * dz_m);
}

/**
 * Mean pressure over the open height h of the cell that the level lies in, Pa: rho g h y^2/2 on the wetted share y, and y of what flow
 * and stem add (what a swab takes off counts only in full cells). Nothing jumps as the level passes the cell's edges.
 */
export function cellWithLevel_Pa(level_m: number, j: number, dz_m: number, work: LossWork): number {
  const height_m = work.height_m[j];
  const wetted = Math.min(1, (j * dz_m + height_m - level_m) / height_m);
  const more_Pa = work.added_Pa[j];
  return wetted * (0.5 * weight_Pam(work, j) * height_m * wetted + (more_Pa > 0 ? more_Pa : 0));
}

/** Sets pressure_Pa for a level: 0 above it, below it rho g times the depth under it, and what flow and moving stem add. */
export function setPressure(level_m: number, dz_m: number, work: LossWork): void {
  const { pressure_Pa, middle_Pa, added_Pa, cells } = work;
  let first = 0;
  let above_Pa = 0;
  if (level_m > 0) {
    const j = cellOfLevel(level_m, dz_m, work);
    for (let i = 0; i < j; i++) pressure_Pa[i] = 0;
    if (j >= cells) return;
    pressure_Pa[j] = cellWithLevel_Pa(level_m, j, dz_m, work);
    above_Pa = pressureAbove_Pa(level_m, j, dz_m, work);
    first = j + 1;
  }
  for (let i = first; i < cells; i++) pressure_Pa[i] = middle_Pa[i] - above_Pa + added_Pa[i];
}
