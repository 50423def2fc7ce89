// Ground that left the wall in one tick: by cell and class, and how it gets into the hole.
import { CLASS_COUNT } from '../../materials/sizes';
import type { HoleState } from '../hole';
import { emptyParcel, type Parcel } from '../parcel';
import type { WallGround } from '../wallGround';

export interface Fallen {
  /** First and last cell with anything; last below first: nothing fell, the arrays are all 0. */
  first: number;
  last: number;
  /** Grains by class and cell, class-major, m3; their origin is the middle of the cell. */
  solids_m3: Float64Array;
  /** Pore water by cell, m3. */
  poreWater_m3: Float64Array;
}

export function createFallen(cells: number): Fallen {
  return {
    first: cells,
    last: -1,
    solids_m3: new Float64Array(CLASS_COUNT * cells),
    poreWater_m3: new Float64Array(cells),
  };
}

export function clearFallen(fallen: Fallen): void {
  const cells = fallen.poreWater_m3.length;
  for (let i = fallen.first; i <= fallen.last; i++) {
    fallen.poreWater_m3[i] = 0;
    for (let k = 0; k < CLASS_COUNT; k++) fallen.solids_m3[k * cells + i] = 0;
  }
  fallen.first = cells;
  fallen.last = -1;
}

/** Counts volume_m3 of the ground of cell i, pores included: (1 - n) V of grains by class, n S V of water; air in the pores leaves room. */
export function addFallen(fallen: Fallen, ground: WallGround, i: number, volume_m3: number): void {
  if (i < fallen.first) fallen.first = i;
  if (i > fallen.last) fallen.last = i;
  const n = ground.porosity_frac[i];
  for (let k = 0; k < CLASS_COUNT; k++) {
    const at = k * ground.cells + i;
    fallen.solids_m3[at] += volume_m3 * (1 - n) * ground.fractions[at];
  }
  fallen.poreWater_m3[i] += volume_m3 * n * ground.saturation_frac[i];
}

/**
 * Puts the fallen ground into the hole: grains into the stream of their cell - the top wet one if theirs stands dry, the last
 * above the bed if theirs lies under it - and their water with them. What a cell cannot hold packs into the bed in the sweep.
 * out is set to what came in from the ground, for the ledger.
 */
export function dropFallen(hole: HoleState, fallen: Fallen, level_m: number, out: Parcel): void {
  emptyParcel(out);
  if (fallen.last < fallen.first) return;
  const lowest = hole.used - 1;
  const wet = Math.min(lowest, Math.max(0, Math.floor(level_m / hole.dz_m)));
  for (let i = fallen.first; i <= fallen.last; i++) {
    out.water_m3 += fallen.poreWater_m3[i];
    const to = i < wet ? wet : i > lowest ? lowest : i;
    const origin_m = (i + 0.5) * hole.dz_m;
    for (let k = 0; k < CLASS_COUNT; k++) {
      const grains_m3 = fallen.solids_m3[k * hole.cells + i];
      if (grains_m3 === 0) continue;
      hole.solids_m3[k * hole.cells + to] += grains_m3;
      hole.moment_m4[k * hole.cells + to] += grains_m3 * origin_m;
      out.solids_m3[k] += grains_m3;
      out.moment_m4[k] += grains_m3 * origin_m;
    }
  }
  hole.water_m3 += out.water_m3;
}
