// Seepage: what an unlined pit loses into the ground, or gets from it.
import type { Ground } from '../ground/ground';
import { layerAt } from '../ground/lookup';
import { NATIVE_CLAY } from '../materials/nativeClay';
import { waterViscosity_Pas } from '../materials/water';
import { BED_POROSITY } from '../hole/hole';
import { FINE_CLASS_COUNT } from '../materials/sizes';
import { levelBelowRim_m } from './level';
import type { Chamber } from './pit';

/** The walls are read in slices of this height, m. */
const SLICE_m = 0.1;
/** Way that the water goes in the ground before its head is spent, m: with the table deep below the gradient is 1 anyway. ASSUMED. */
const WAY_m = 1;
/** A wall takes this share of what a floor would under the same head. ASSUMED: the water turns down on its way. */
const WALL_frac = 0.5;
/** Temperature at which the conductivity of the ground is given, C. */
const K_AT_C = 20;

/** The ground beside and under a chamber of this depth: conductivity by slices from the rim down, and of the floor. */
export interface PitGround {
  wallK_ms: Float64Array;
  floorK_ms: number;
  waterTable_m: number;
}

export function createPitGround(ground: Ground, depth_m: number): PitGround {
  const wallK_ms = new Float64Array(Math.ceil(depth_m / SLICE_m - 1e-9));
  for (let i = 0; i < wallK_ms.length; i++) wallK_ms[i] = layerAt(ground, (i + 0.5) * SLICE_m).K_ms;
  return { wallK_ms, floorK_ms: layerAt(ground, depth_m).K_ms, waterTable_m: ground.waterTable_m };
}

/** Gradient out of the pit at a depth, -1 to 1: 1 with the water table below that depth, else by the head between fluid and table over a metre. */
function gradient(level_m: number, depth_m: number, table_m: number): number {
  if (table_m >= depth_m) return 1;
  return Math.max(-1, Math.min(1, (table_m - level_m) / WAY_m));
}

/**
 * Water lost through floor and walls, m3/s; negative: ground water comes in. Darcy: floor K A i, behind the fines that lie on it
 * (thickness / 1e-8 m/s in series); walls K P dz i / 2 below the fluid; all of it slower as the fluid is thicker than water at
 * 20 C. viscosity_Pas: of the fluid in the pores. P of a square chamber. Worked value: 0.6 m2, .8 m deep, full, K 1e-6,
 * water of 20 C, deep table -> 6e-7 + 1.24e-6 = 1.84e-6.
 */
export function seepage_m3s(chamber: Chamber, ground: PitGround, viscosity_Pas: number): number {
  const level_m = Math.max(0, levelBelowRim_m(chamber));
  const fluid_m = chamber.depth_m - level_m;
  if (fluid_m <= 0 && ground.waterTable_m >= chamber.depth_m) return 0;
  const thinner_ratio = waterViscosity_Pas(K_AT_C) / viscosity_Pas;
  let fines_m3 = 0;
  for (let k = 0; k < FINE_CLASS_COUNT; k++) fines_m3 += chamber.deposit_m3[k];
  const cake_m = fines_m3 / ((1 - BED_POROSITY) * chamber.area_m2);
  const i = gradient(level_m, chamber.depth_m, ground.waterTable_m);
  const bare_ms = ground.floorK_ms * i;
  const cake_s = cake_m / NATIVE_CLAY.cakeConductivity_ms;
  const floor_ms = bare_ms > 0 ? bare_ms / (1 + (bare_ms * cake_s) / Math.max(fluid_m, 1e-9)) : bare_ms;
  let loss_m3s = floor_ms * chamber.area_m2;
  const girth_m = 4 * Math.sqrt(chamber.area_m2);
  for (let s = 0; s < ground.wallK_ms.length; s++) {
    const top_m = s * SLICE_m;
    const bottom_m = Math.min(top_m + SLICE_m, chamber.depth_m);
    const outwards = gradient(level_m, (top_m + bottom_m) / 2, ground.waterTable_m);
    // Out where the fluid stands; in also where ground water stands above it.
    const wet_m = outwards > 0 ? bottom_m - Math.max(top_m, level_m) : bottom_m - Math.max(top_m, ground.waterTable_m);
    if (wet_m > 0) loss_m3s += WALL_frac * ground.wallK_ms[s] * girth_m * wet_m * outwards;
  }
  return loss_m3s > 0 ? loss_m3s * thinner_ratio : loss_m3s;
}
