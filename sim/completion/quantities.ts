// Room in the annulus between casing and wall, and how much it takes to fill it.
import { PACKS, PACK_GRAIN_kgm3, type PackName } from '../materials/packs';

/** The hole by cells of one height; the last one goes on below. A hole that is only known by its bit is one cell. */
export interface HoleShape {
  readonly dz_m: number;
  readonly radius_m: ArrayLike<number>;
}

/** Pack is bought with this much more than the neat volume: 1.1 to 1.25 in practice (no source). ASSUMED middle. */
const ALLOWANCE_ratio = 1.15;

/** A hole as wide as its bit all the way. */
export const nominalHole = (bit_m: number): HoleShape => ({ dz_m: 1000, radius_m: [bit_m / 2] });

/** Gap between casing and wall, m, casing in the middle; below 0 where the hole is tighter. Worked value: 150 mm and 63 mm -> .0435. */
export const gap_m = (radius_m: number, outside_m: number): number => radius_m - outside_m / 2;

/** Cross-section of the annulus, m2; 0 where the hole is tighter. Worked value: 200 mm and 110 mm -> .021913. */
export function annulus_m2(radius_m: number, outside_m: number): number {
  return Math.PI * Math.max(0, radius_m * radius_m - (outside_m * outside_m) / 4);
}

/** Radius of the hole at a depth, m. */
export const radiusAt_m = (hole: HoleShape, depth_m: number): number =>
  hole.radius_m[Math.min(hole.radius_m.length - 1, Math.max(0, Math.floor(depth_m / hole.dz_m)))];

/** Calls back with each piece of a stretch of the hole that has one radius. */
function pieces(
  hole: HoleShape,
  from_m: number,
  to_m: number,
  use: (radius_m: number, length_m: number) => void,
): void {
  const last = hole.radius_m.length - 1;
  let top_m = from_m;
  while (top_m < to_m) {
    const i = Math.min(last, Math.floor(top_m / hole.dz_m + 1e-9));
    const bottom_m = i === last ? to_m : Math.min(to_m, (i + 1) * hole.dz_m);
    use(hole.radius_m[i], bottom_m - top_m);
    top_m = bottom_m;
  }
}

/**
 * Volume between two depths, m3: the sum over the cells of the annulus down to the casing's shoe and of the whole hole below it.
 * Worked value: hole of 200 mm, casing 110 mm, 1 m -> .021913.
 */
export function annulusVolume_m3(
  hole: HoleShape,
  outside_m: number,
  shoe_m: number,
  from_m: number,
  to_m: number,
): number {
  let volume_m3 = 0;
  const cased_m = Math.min(to_m, shoe_m);
  pieces(hole, from_m, cased_m, (radius_m, length_m) => (volume_m3 += annulus_m2(radius_m, outside_m) * length_m));
  pieces(hole, Math.max(from_m, shoe_m), to_m, (radius_m, length_m) => {
    volume_m3 += Math.PI * radius_m * radius_m * length_m;
  });
  return volume_m3;
}

/** Least gap between two depths, m. Worked value: 100 mm and 63 mm -> .0185. */
export function leastGap_m(hole: HoleShape, outside_m: number, from_m: number, to_m: number): number {
  let least_m = gap_m(radiusAt_m(hole, from_m), outside_m);
  pieces(hole, from_m, to_m, (radius_m) => (least_m = Math.min(least_m, gap_m(radius_m, outside_m))));
  return least_m;
}

/** What to buy for a neat volume, m3: x 1.15. Worked value: 100 L -> .115. */
export const withAllowance_m3 = (neat_m3: number): number => ALLOWANCE_ratio * neat_m3;

/** Weight of poured pack, kg: 2650 (1 - porosity) V. Worked value: 10 L of pack1, porosity .4 -> 15.9. */
export const packMass_kg = (pack: PackName, volume_m3: number): number =>
  PACK_GRAIN_kgm3 * (1 - PACKS[pack].porosity_frac) * volume_m3;
