// How far a body gets down the hole.
import type { HoleState } from '../hole';

/**
 * Depth down to which a body of this radius gets from from_m on its way to to_m, m: the top of the first cell below its own that
 * is narrower, else to_m. Worked value: .25 m cells, .05 m wide all the way but closed from 2 to 2.25 m, body .048, 1 to 3 m -> 2.
 */
export function passableTo_m(hole: HoleState, from_m: number, to_m: number, radius_m: number): number {
  // Standing at the top edge of a cell is not yet being in it.
  for (let i = Math.ceil(from_m / hole.dz_m - 1e-9); i < hole.cells && i * hole.dz_m < to_m; i++) {
    if (hole.radius_m[i] < radius_m) return Math.max(from_m, i * hole.dz_m);
  }
  return to_m;
}
