// How well the casing hangs in the middle of its hole.

/** Centralisers hold the pipe in the middle this far up and down, m; this far off it lies against the wall. ASSUMED: thin plastic pipe, one each 3 to 6 m in practice. */
const HELD_m = 0.75;
const LIES_m = 3;

/**
 * How far the casing stands off the middle at a depth, 0 to 1 (against the wall), with so many centralisers spread evenly over what is
 * in the hole. Worked value: 4 on 12 m, at 3 m (1.5 m from the next) -> .3333; none -> 1.
 */
export function offMiddle_frac(depth_m: number, shoe_m: number, centralisers: number): number {
  let nearest_m = LIES_m;
  for (let k = 0; k < centralisers; k++)
    nearest_m = Math.min(nearest_m, Math.abs(depth_m - ((k + 0.5) * shoe_m) / centralisers));
  return Math.min(1, Math.max(0, (nearest_m - HELD_m) / (LIES_m - HELD_m)));
}
