// The ring round the screen, cell by cell: what the drilling left in it, and what washing has taken out since.

/** Plain arrays of state, entry i for the i-th cell that the screen touches, from above. */
export interface ScreenRing {
  count: number;
  /** Upper end and length of the screen in the cell. */
  top_m: Float64Array;
  height_m: Float64Array;
  /** Radius of the hole, and how far the fluid lost in drilling had gone into the ground. */
  hole_m: Float64Array;
  invaded_m: Float64Array;
  /** How far the polymer in the invaded ground closes it, in working doses: 0 none, 1 and more as after a working fluid. */
  dose_ratio: Float64Array;
  /** Share of that polymer that is still whole: chlorine breaks it, time rots it. */
  whole_frac: Float64Array;
  /** Share of the mud in the invaded ground, broken or whole, that washing has not yet brought out. */
  mud_frac: Float64Array;
  /** Resistance of the cake on the wall, s; the share of the wall that it still covers; the share of it that is clay: chlorine does not break that. */
  cake_s: Float64Array;
  caked_frac: Float64Array;
  clay_frac: Float64Array;
  /** Share of the loose fines next to the screen that have been washed out. */
  washed_frac: Float64Array;
  /** Share of the water that comes in here, as last reckoned. */
  flow_frac: Float64Array;
  /** Share of the way in that grains bridged by drawing one way only close. */
  bridged_frac: Float64Array;
}

/** A ring of so many cells, nothing in it. */
export const createScreenRing = (count: number): ScreenRing => ({
  count,
  top_m: new Float64Array(count),
  height_m: new Float64Array(count),
  hole_m: new Float64Array(count),
  invaded_m: new Float64Array(count),
  dose_ratio: new Float64Array(count),
  whole_frac: new Float64Array(count),
  mud_frac: new Float64Array(count),
  cake_s: new Float64Array(count),
  caked_frac: new Float64Array(count),
  clay_frac: new Float64Array(count),
  washed_frac: new Float64Array(count),
  flow_frac: new Float64Array(count),
  bridged_frac: new Float64Array(count),
});
