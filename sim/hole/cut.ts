// Cutting: the hole grows, its grains and pore water join what stands in the hole.
import { SALT } from '../fluid/substances';
import { CLASS_COUNT } from '../materials/sizes';
import { openWall, type HoleState } from './hole';
import type { Parcel } from './parcel';

/** The ground that the bit is in: shares of the grain volume by class (with cobbles they sum to 1). */
export interface CutGround {
  porosity_frac: number;
  /** Share of the pores that holds water. */
  saturation_frac: number;
  fractions: ArrayLike<number>;
  /** Salt in that water. */
  salt_gL: number;
}

/** The jets mix the cuttings over this length above the bottom, m. ASSUMED: three bit diameters. */
const MIXED_m = 0.3;

/**
 * The cell that the hole ends in gets longer by what is cut in it: where it had become wider or narrower than the bit above, its
 * radius is now that of both parts together, so that the hole grows by what was cut and by no more.
 */
function deepenCell(hole: HoleState, advance_m: number, bitRadius_m: number): void {
  const i = Math.min(hole.cells - 1, Math.floor(hole.depth_m / hole.dz_m));
  const radius_m = hole.radius_m[i];
  const open_m = hole.depth_m - i * hole.dz_m;
  if (radius_m === bitRadius_m || !(open_m > 0) || hole.wall.open_s[i] === 0) return;
  const cut_m = Math.min(advance_m, hole.dz_m - open_m);
  const share = cut_m / (open_m + cut_m);
  hole.radius_m[i] = Math.sqrt(radius_m * radius_m + share * (bitRadius_m * bitRadius_m - radius_m * radius_m));
  hole.wall.squeezed_m[i] *= 1 - share;
  hole.wall.swollen_m[i] *= 1 - share;
}

/**
 * Deepens the hole by advance_m (0 to one cell) with a bit of bit_m. out receives what came in from the ground (grains with
 * their origin, pore water), for the ledger. Cobbles stay behind in the ground and air in the pores leaves a void: the fluid
 * that fills their places is missing at the top in the next sweep. Throws RangeError beyond the deepest cell.
 */
export function cutGround(hole: HoleState, advance_m: number, bit_m: number, ground: CutGround, out: Parcel): void {
  const from_m = hole.depth_m;
  const to_m = from_m + advance_m;
  if (to_m > hole.cells * hole.dz_m + 1e-9)
    throw new RangeError(`No hole deeper than ${hole.cells * hole.dz_m} m here.`);
  const volume_m3 = (Math.PI / 4) * bit_m * bit_m * advance_m;
  const origin_m = (from_m + to_m) / 2;
  deepenCell(hole, advance_m, bit_m / 2);
  hole.depth_m = to_m;
  openWall(hole, bit_m / 2);
  out.water_m3 = volume_m3 * ground.porosity_frac * ground.saturation_frac;
  hole.water_m3 += out.water_m3;
  const last = hole.used - 1;
  const first = Math.max(0, Math.min(last, Math.round((hole.used * hole.dz_m - MIXED_m) / hole.dz_m)));
  const share = 1 / (last - first + 1);
  if (ground.salt_gL > 0) {
    const salt_kg = out.water_m3 * ground.salt_gL;
    out.dissolved_kg[SALT] = salt_kg;
    for (let i = first; i <= last; i++) hole.dissolved_kg[SALT * hole.cells + i] += salt_kg * share;
  }
  for (let k = 0; k < CLASS_COUNT; k++) {
    const grains_m3 = volume_m3 * (1 - ground.porosity_frac) * ground.fractions[k];
    out.solids_m3[k] = grains_m3;
    out.moment_m4[k] = grains_m3 * origin_m;
    if (grains_m3 <= 0) continue;
    for (let i = first; i <= last; i++) {
      hole.solids_m3[k * hole.cells + i] += grains_m3 * share;
      hole.moment_m4[k * hole.cells + i] += grains_m3 * share * origin_m;
    }
  }
}
