// The hole: its wall by cells from the ground level down, and what stands in it outside the stem.
import { CLASS_COUNT } from '../materials/sizes';

/**
 * Cell i spans i*dz to (i+1)*dz below ground level. Arrays by class are class-major: class k, cell i at k*cells + i.
 * Only the first `used` cells hold suspended matter; the last of them ends at the top of the bed.
 */
export interface HoleState {
  /** Height of a cell, m. */
  dz_m: number;
  /** Number of cells in the arrays: the deepest hole there can be. */
  cells: number;
  /** Number of cells above the bed in use for transport. */
  used: number;
  /** Depth drilled, m. */
  depth_m: number;
  /** Radius of the wall by cell, m; 0 where there is no hole yet. */
  radius_m: Float64Array;
  /** Suspended grain volume by class and cell, m3. */
  solids_m3: Float64Array;
  /** The same times the depth it was cut at, m4. */
  moment_m4: Float64Array;
  /** Polymer that thickens, and that still soaks, by cell, kg. */
  soaked_kg: Float64Array;
  soaking_kg: Float64Array;
  /** All water in the hole outside the stem, pores of the bed included, m3. */
  water_m3: number;
  /** Empty volume at the top: fluid missing below the sill of the channel, m3. */
  shortfall_m3: number;
  /** Grain volume lying at the bottom by class, m3, and the same times the depth it was cut at, m4. */
  bed_m3: Float64Array;
  bedMoment_m4: Float64Array;
}

export interface HoleShape {
  /** Height of a cell, m. */
  dz_m: number;
  /** Deepest hole wanted, m. */
  maxDepth_m: number;
  /** Diameter of the bit, m. */
  bit_m: number;
  /** Depth of the starter hole dug by hand, m. */
  starter_m: number;
}

/** A starter hole, empty: the first flow fills it. */
export function createHole(shape: HoleShape): HoleState {
  const cells = Math.ceil(shape.maxDepth_m / shape.dz_m);
  const hole: HoleState = {
    dz_m: shape.dz_m,
    cells,
    used: 1,
    depth_m: 0,
    radius_m: new Float64Array(cells),
    solids_m3: new Float64Array(CLASS_COUNT * cells),
    moment_m4: new Float64Array(CLASS_COUNT * cells),
    soaked_kg: new Float64Array(cells),
    soaking_kg: new Float64Array(cells),
    water_m3: 0,
    shortfall_m3: 0,
    bed_m3: new Float64Array(CLASS_COUNT),
    bedMoment_m4: new Float64Array(CLASS_COUNT),
  };
  throw new Error(`not filled in yet: ${hole.cells}`);
}

/** Where the steel is: the outside diameter of the rods and the depth of the bit. */
export interface StemPlace {
  bit_m: number;
  rodOutside_m: number;
}

/** Room for fluid and grains in the hole outside the stem, m3. */
export function holeCapacity_m3(_hole: HoleState, _stem: StemPlace): number {
  throw new Error('not filled in yet');
}

/** Height of the bed above the bottom, m. */
export function bedHeight_m(_hole: HoleState, _stem: StemPlace): number {
  throw new Error('not filled in yet');
}

/** Length of stem that stands in the bed, m; 0 when the bit is above it. */
export function buried_m(_hole: HoleState, _stem: StemPlace): number {
  throw new Error('not filled in yet');
}

/** Level of the fluid in the annulus below the sill, m; 0 when full. */
export function fluidLevel_m(_hole: HoleState, _stem: StemPlace): number {
  throw new Error('not filled in yet');
}
