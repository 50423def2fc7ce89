// Where a wall that has come in holds the steel: the bit in a hole tighter than itself, the rods where the hole has closed on them.
import { steelArea_m2, type HoleState, type StemPlace } from '../hole/hole';

/** Steel that the wall touches, as a length of full grip at the bit's width, and the mean strength of the clay there. */
export interface Grip {
  length_m: number;
  su_kPa: number;
}

/** Length of the bit with its shank, m. Only steel that touches is gripped, not all of the hole that is tighter than the bit. ASSUMED. */
export const BIT_BODY_m = 0.3;
/** Clay that has come in by less than this touches no steel, m. ASSUMED: the play of the wings. */
const PLAY_m = 0.001;
/** The wall grips in full when it has come in beyond that by this share of the bit's radius. ASSUMED: a twentieth, 2.5 mm. */
const FULL_BITE_frac = 0.05;
/** Clay this near to the rods holds them: what is left between is a smear, m. ASSUMED. */
const CLINGS_m = 0.001;

const overlap_m = (top_m: number, bottom_m: number, from_m: number, to_m: number): number =>
  Math.max(0, Math.min(bottom_m, to_m) - Math.max(top_m, from_m));

/**
 * Length of stem that the wall grips, m, and the strength that it grips with, kPa. The bit counts over BIT_BODY_m above its
 * edge wherever the hole is tighter than it, in proportion to how far the wall has come in; the rods count where the hole
 * has closed on them, in proportion to their girth. suOf_kPa by cell, negative where friction rules: such ground does not
 * grip, it falls in. Worked value: radius .046 everywhere, 100 mm bit at 5 m, su 20 -> .3 m at 20 kPa.
 */
export function gripInto(
  out: Grip,
  hole: HoleState,
  stem: StemPlace,
  bitWidth_m: number,
  suOf_kPa: Float64Array,
): void {
  const bitRadius_m = bitWidth_m / 2;
  const rodRadius_m = Math.sqrt(steelArea_m2(stem) / Math.PI);
  const girth_ratio = rodRadius_m / bitRadius_m;
  const head_m = Math.max(0, stem.bit_m - BIT_BODY_m);
  let length_m = 0;
  let strength = 0;
  for (let i = 0; i < hole.cells && i * hole.dz_m < stem.bit_m; i++) {
    const inwards_m = bitRadius_m - PLAY_m - hole.radius_m[i];
    if (inwards_m <= 0 || suOf_kPa[i] <= 0) continue;
    const top_m = i * hole.dz_m;
    const bottom_m = Math.min(top_m + hole.dz_m, hole.depth_m);
    const bite = Math.min(1, inwards_m / (FULL_BITE_frac * bitRadius_m));
    let held_m = bite * overlap_m(top_m, bottom_m, head_m, stem.bit_m);
    if (hole.radius_m[i] <= rodRadius_m + CLINGS_m) held_m += girth_ratio * overlap_m(top_m, bottom_m, 0, head_m);
    length_m += held_m;
    strength += held_m * suOf_kPa[i];
  }
  out.length_m = length_m;
  out.su_kPa = length_m > 0 ? strength / length_m : 0;
}
