// The mud pit: settling chamber, then suction chamber, joined by a notch.
import type { ChamberSize } from '../materials/kit';
import { SUBSTANCE_COUNT } from '../fluid/substances';
import { CLASS_COUNT } from '../materials/sizes';

/** Water, grains and what the water carries of one chamber. Grains lie in `deposit` once settled; water_m3 holds their pore water too. */
export interface Chamber {
  capacity_m3: number;
  area_m2: number;
  depth_m: number;
  water_m3: number;
  /** Grain volume by class, suspended and settled, m3. */
  solids_m3: Float64Array;
  deposit_m3: Float64Array;
  /** By substance, kg. */
  dissolved_kg: Float64Array;
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
  settling: ChamberSize;
  suction: ChamberSize;
  notch_m: number;
  strainer_m: number;
}

function createChamber({ area_m2, depth_m }: ChamberSize): Chamber {
  return {
    capacity_m3: area_m2 * depth_m,
    area_m2,
    depth_m,
    water_m3: 0,
    solids_m3: new Float64Array(CLASS_COUNT),
    deposit_m3: new Float64Array(CLASS_COUNT),
    dissolved_kg: new Float64Array(SUBSTANCE_COUNT),
    clumps_kg: 0,
  };
}

/** An empty pit. Throws RangeError where a size is not above 0. */
export function createPit(shape: PitShape): PitState {
  for (const { area_m2, depth_m } of [shape.settling, shape.suction]) {
    if (!(area_m2 > 0 && depth_m > 0)) throw new RangeError('Both chambers of a pit need an area and a depth.');
  }
  return {
    settling: createChamber(shape.settling),
    suction: createChamber(shape.suction),
    notch_m: shape.notch_m,
    strainer_m: shape.strainer_m,
    blockage_frac: 0,
  };
}
