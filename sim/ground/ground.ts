// The ground under one site: layers, water, what makes the water bad, and the plan of the site. Plain JSON.
import type { Layer } from './layer';

/** Format of a saved ground; changes when a field does. */
export const GROUND_VERSION = 1;

/** An aquifer and the level its water stands at in an open pipe. */
export interface Head {
  top_m: number;
  bottom_m: number;
  /** Depth of that level below ground. */
  head_m: number;
}

/** From this depth down the ground water holds this much salt, until the next entry. */
export interface Salinity {
  from_m: number;
  salt_gL: number;
}

/** A place on the site plan, from its south-west corner. */
export interface Place {
  east_m: number;
  north_m: number;
}

/** Where a hole could be set out. */
export interface Spot extends Place {
  id: string;
  /** Height of the ground here above the lowest spot. */
  rise_m: number;
}

/** A neighbour's well, known by its hamlet only. */
export interface NeighbourWell extends Place {
  hamlet: string;
  depth_m: number;
  /** Depth to water when last asked, and in the driest month. */
  level_m: number;
  dryLevel_m: number;
}

/** Something that can foul a well. */
export interface Contamination extends Place {
  source: 'latrine' | 'animalPen' | 'refusePit';
  /** Depth of its floor below ground. */
  bottom_m: number;
}

export interface Site {
  width_m: number;
  breadth_m: number;
  spots: Spot[];
  wells: NeighbourWell[];
  /** Height of the highest remembered flood above the lowest spot; negative: below it. */
  floodLine_m: number;
  /** Overhead line across the plan, or none. */
  overheadLine: { from: Place; to: Place; height_m: number } | null;
}

export interface Ground {
  version: number;
  setting: string;
  seed: number;
  depth_m: number;
  layers: Layer[];
  /** Depth of the water table now, and at the end of the driest season. */
  waterTable_m: number;
  lowestWater_m: number;
  heads: Head[];
  salinity: Salinity[];
  contamination: Contamination[];
  site: Site;
}
