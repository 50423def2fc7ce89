// How the wall as a whole stands: what the machine and the record need of it.
import type { HoleState } from '../hole';

/** Least stability over the open cells, -2 to 9. */
export function leastStability(hole: HoleState): number {
  let least = 9;
  for (let i = 0; i < hole.cells && i * hole.dz_m < hole.depth_m; i++)
    if (hole.wall.stability_ratio[i] < least) least = hole.wall.stability_ratio[i];
  return least;
}

/** Whether any cell of the wall is falling. */
export function isSloughing(hole: HoleState): boolean {
  for (let i = 0; i < hole.cells && i * hole.dz_m < hole.depth_m; i++) if (hole.wall.sloughing[i] > 0) return true;
  return false;
}

/** Whether clay has closed the hole anywhere. */
export function isClosed(hole: HoleState): boolean {
  for (let i = 0; i < hole.cells && i * hole.dz_m < hole.depth_m; i++) if (hole.radius_m[i] <= 0) return true;
  return false;
}
