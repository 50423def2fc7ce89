// The hole: its wall by cells from the ground level down, and what stands in it outside the stem.
import { SUBSTANCE_COUNT } from '../fluid/substances';
import { CLASS_COUNT } from '../materials/sizes';
import { createWallState, type WallState } from './wallState';

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
  /** Radius of the wall by cell, m; 0 where there is no hole yet, and where clay has closed it. */
  radius_m: Float64Array;
  /** Suspended grain volume by class and cell, m3. */
  solids_m3: Float64Array;
  /** The same times the depth it was cut at, m4. */
  moment_m4: Float64Array;
  /** What the water carries, by substance and cell, kg: substance s, cell i at s*cells + i. */
  dissolved_kg: Float64Array;
  /** All water in the hole outside the stem, pores of the bed included, m3. */
  water_m3: number;
  /** Empty volume at the top: fluid missing below the sill of the channel, m3. */
  shortfall_m3: number;
  /** What has become of the wall, cell by cell. */
  wall: WallState;
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

/** Where the steel stands: the outside diameter of the rods and the depth of the bit. */
export interface StemPlace {
  bit_m: number;
  rodOutside_m: number;
}

/** Share of pores in a bed of freshly settled grains. ASSUMED: loose sand. */
export const BED_POROSITY = 0.45;
/** The bed ends this far below ground at the least, m, so that the mouth stays open. */
const MOUTH_m = 0.02;

/** A starter hole without stem, still empty: the first fluid fills it. Throws RangeError for a starter deeper than the hole can be. */
export function createHole(shape: HoleShape): HoleState {
  const cells = Math.ceil(shape.maxDepth_m / shape.dz_m - 1e-9);
  if (!(shape.starter_m > 0) || shape.starter_m > cells * shape.dz_m) {
    throw new RangeError(`A starter hole of ${shape.starter_m} m does not fit in ${shape.maxDepth_m} m.`);
  }
  const hole: HoleState = {
    dz_m: shape.dz_m,
    cells,
    used: Math.max(1, Math.round(shape.starter_m / shape.dz_m)),
    depth_m: shape.starter_m,
    radius_m: new Float64Array(cells),
    solids_m3: new Float64Array(CLASS_COUNT * cells),
    moment_m4: new Float64Array(CLASS_COUNT * cells),
    dissolved_kg: new Float64Array(SUBSTANCE_COUNT * cells),
    water_m3: 0,
    shortfall_m3: 0,
    wall: createWallState(cells),
    bed_m3: new Float64Array(CLASS_COUNT),
    bedMoment_m4: new Float64Array(CLASS_COUNT),
  };
  openWall(hole, shape.bit_m / 2);
  hole.shortfall_m3 = holeVolume_m3(hole);
  return hole;
}

/** Gives every cell down to the present depth that has no wall yet this radius; a cell that clay has closed stays closed. */
export function openWall(hole: HoleState, radius_m: number): void {
  for (let i = 0; i < hole.cells && i * hole.dz_m < hole.depth_m; i++) {
    if (hole.radius_m[i] === 0 && hole.wall.open_s[i] === 0) hole.radius_m[i] = radius_m;
  }
}

/** Volume of the bare hole, m3: sum of pi r^2 over its cells. Worked value: .1 m wide, 20 m deep -> .15708. */
export function holeVolume_m3(hole: HoleState): number {
  let volume = 0;
  for (let i = 0; i < hole.cells; i++) {
    const height_m = Math.min(hole.dz_m, hole.depth_m - i * hole.dz_m);
    if (height_m <= 0) break;
    volume += Math.PI * hole.radius_m[i] * hole.radius_m[i] * height_m;
  }
  return volume;
}

/** Cross-section that the stem takes up, m2: its bore is not part of the hole. */
export const steelArea_m2 = (stem: StemPlace): number => (Math.PI / 4) * stem.rodOutside_m * stem.rodOutside_m;

/** Level of the fluid in the annulus below the sill, m; 0 when full. */
export function fluidLevel_m(hole: HoleState, stem: StemPlace): number {
  let empty_m3 = hole.shortfall_m3;
  for (let i = 0; i < hole.cells && i * hole.dz_m < hole.depth_m; i++) {
    const bottom_m = Math.min((i + 1) * hole.dz_m, hole.depth_m);
    const room_m3 = cellVolume_m3(hole, i, bottom_m, stem);
    const top_m = i * hole.dz_m;
    if (empty_m3 <= room_m3) return top_m + (room_m3 > 0 ? empty_m3 / room_m3 : 0) * (bottom_m - top_m);
    empty_m3 -= room_m3;
  }
  return hole.depth_m;
}

/** Room of cell i down to bottom_m, outside the stem, m3; none where the wall has closed on the stem. */
export function cellVolume_m3(hole: HoleState, i: number, bottom_m: number, stem: StemPlace): number {
  const top_m = i * hole.dz_m;
  const steel_m = Math.min(bottom_m, Math.max(top_m, stem.bit_m)) - top_m;
  return Math.max(0, Math.PI * hole.radius_m[i] * hole.radius_m[i] * (bottom_m - top_m) - steelArea_m2(stem) * steel_m);
}

/** Volume of the bed with its pores, m3. */
export function bedVolume_m3(hole: HoleState): number {
  let grains = 0;
  for (let k = 0; k < CLASS_COUNT; k++) grains += hole.bed_m3[k];
  return grains / (1 - BED_POROSITY);
}

/**
 * Height of the bed above the bottom, m: its volume with pores filled up from the bottom, in the ring where it stands
 * above the bit. Worked value: 4.712e-4 m3 of grains in a 100 mm hole, no stem in it -> .1091.
 */
export function bedHeight_m(hole: HoleState, stem: StemPlace): number {
  let left_m3 = bedVolume_m3(hole);
  if (left_m3 <= 0) return 0;
  const steel_m2 = steelArea_m2(stem);
  let at_m = hole.depth_m;
  for (let i = Math.ceil(hole.depth_m / hole.dz_m - 1e-12) - 1; i >= 0; i--) {
    const open_m2 = Math.PI * hole.radius_m[i] * hole.radius_m[i];
    const top_m = i * hole.dz_m;
    const below_m = at_m - Math.min(at_m, Math.max(top_m, stem.bit_m));
    if (left_m3 <= open_m2 * below_m) return hole.depth_m - at_m + left_m3 / open_m2;
    left_m3 -= open_m2 * below_m;
    at_m -= below_m;
    const ring_m2 = Math.max(0, open_m2 - steel_m2);
    const above_m = at_m - top_m;
    if (left_m3 <= ring_m2 * above_m) return hole.depth_m - at_m + left_m3 / ring_m2;
    left_m3 -= ring_m2 * above_m;
    at_m = top_m;
  }
  return hole.depth_m;
}

/** Depth of the top of the bed, m. */
export function bedTop_m(hole: HoleState, stem: StemPlace): number {
  return Math.max(Math.min(MOUTH_m, hole.depth_m), hole.depth_m - bedHeight_m(hole, stem));
}

/** Length of stem that stands in the bed, m; 0 when the bit is above it. */
export function buried_m(hole: HoleState, stem: StemPlace): number {
  return Math.max(0, Math.min(stem.bit_m, hole.depth_m) - bedTop_m(hole, stem));
}
