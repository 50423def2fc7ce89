// The mud pit: settling chamber, then suction chamber, joined by a notch.

/** Water, grains and polymer of one chamber. Grains lie in `deposit` once settled; water_m3 holds their pore water too. */
export interface Chamber {
  capacity_m3: number;
  area_m2: number;
  depth_m: number;
  water_m3: number;
  /** Grain volume by class, suspended and settled, m3. */
  solids_m3: Float64Array;
  deposit_m3: Float64Array;
  soaked_kg: number;
  soaking_kg: number;
  /** Powder in lumps that will never soak, kg. */
  clumps_kg: number;
}

export interface PitState {
  settling: Chamber;
  suction: Chamber;
  /** Depth of the notch between the chambers below the rim, m. */
  notch_m: number;
  /** Height of the strainer above the dug floor of the suction chamber, m. */
  strainer_m: number;
  /** Share of the strainer that is blocked, 0 to 1. */
  blockage_frac: number;
}

export interface PitShape {
  settling_m3: number;
  suction_m3: number;
  depth_m: number;
  notch_m: number;
  strainer_m: number;
}

/** An empty pit. */
export function createPit(_shape: PitShape): PitState {
  throw new Error('not filled in yet');
}
