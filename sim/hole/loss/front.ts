// How far the fluid that the wall drank has got into the ground.

/** Every cell is looked at once in so many ticks, in turn. */
export const LOOK_TICKS = 8;

/** Where the ground is not saturated the front counts as at least this many radii of the hole away. ASSUMED: what soaks in ahead of the stream. */
export const LEAST_FRONT_ratio = 2;
/** Radius of influence: beyond it the ground water does not feel the hole, m. ASSUMED: a few metres within the hours of a job. */
export const REACH_m = 5;

/**
 * Radius to which the lost fluid fills the pores, m: sqrt(r^2 + V/(pi n)), from the volume of a ring; no further than REACH_m.
 * radius_m: of the wall, above 0. lost_m2: lost volume per metre of hole, 0 or more. pores_frac: pore space that it can fill,
 * above 0: all pores in saturated ground, the drained ones elsewhere. Worked value: .05 m, .01 m2, .37 -> .10537.
 */
export function frontRadius_m(radius_m: number, lost_m2: number, pores_frac: number): number {
  const front_m = Math.sqrt(radius_m * radius_m + lost_m2 / (Math.PI * pores_frac));
  return front_m < REACH_m ? front_m : Math.max(radius_m, REACH_m);
}
