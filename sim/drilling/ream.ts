// Reaming: a turning bit cuts back clay that has come into the hole where it stands.
import { emptyParcel, type Parcel } from '../hole/parcel';
import type { HoleState, StemPlace } from '../hole/hole';
import type { WallGround } from '../hole/wallGround';
import { CLASS_COUNT } from '../materials/sizes';
import { BIT_BODY_m } from './grip';

/** How fast the wings cut the wall back, m/s. ASSUMED: a few millimetres in half a minute. */
const REAMS_ms = 2e-4;

/** They cut a little ahead of them as well, m: a bit that stands over a place too tight for it cuts its way in. ASSUMED. */
const AHEAD_m = 0.01;

/**
 * One tick of a turning bit in a hole that has squeezed or swollen tighter than the bit: the wall beside the bit goes back by up
 * to REAMS_ms, its grains and pore water join what stands in those cells. out is set to what came in from the ground.
 * Returns the volume cut, m3. Worked value: 1 cell of .25 m, 5 mm inwards, 1 s -> radius .0452, 1.42e-5 m3.
 */
export function reamInto(
  out: Parcel,
  hole: HoleState,
  stem: StemPlace,
  bitWidth_m: number,
  ground: WallGround,
  dt_s: number,
): number {
  emptyParcel(out);
  const { wall, cells, dz_m } = hole;
  const head_m = Math.max(0, stem.bit_m - BIT_BODY_m);
  let volume_m3 = 0;
  for (let i = Math.floor(head_m / dz_m); i < hole.used && i * dz_m < stem.bit_m + AHEAD_m; i++) {
    const before_m = hole.radius_m[i];
    const grown_m = Math.min(REAMS_ms * dt_s, bitWidth_m / 2 - before_m, wall.squeezed_m[i] + wall.swollen_m[i]);
    if (grown_m <= 0) continue;
    const after_m = before_m + grown_m;
    hole.radius_m[i] = after_m;
    const swollen_m = Math.min(wall.swollen_m[i], grown_m);
    wall.swollen_m[i] -= swollen_m;
    wall.squeezed_m[i] = Math.max(0, wall.squeezed_m[i] - (grown_m - swollen_m));
    const height_m = Math.min(dz_m, hole.depth_m - i * dz_m);
    const cut_m3 = Math.PI * (after_m * after_m - before_m * before_m) * height_m;
    const origin_m = (i + 0.5) * dz_m;
    const n = ground.porosity_frac[i];
    out.water_m3 += cut_m3 * n;
    for (let k = 0; k < CLASS_COUNT; k++) {
      const grains_m3 = cut_m3 * (1 - n) * ground.fractions[k * cells + i];
      hole.solids_m3[k * cells + i] += grains_m3;
      hole.moment_m4[k * cells + i] += grains_m3 * origin_m;
      out.solids_m3[k] += grains_m3;
      out.moment_m4[k] += grains_m3 * origin_m;
    }
    volume_m3 += cut_m3;
  }
  hole.water_m3 += out.water_m3;
  return volume_m3;
}
