// From five diameters to the share of grains in each size class.
import { alongLogX, alongLogY } from '../numeric/curve';
import { pow } from '../numeric/functions';
import { CLASS_COUNT, SIZE_CLASSES } from '../materials/sizes';

/** Five points of a grain-size curve: diameter that so many per cent of the grains are finer than. */
export interface Gradation {
  d10_mm: number;
  d30_mm: number;
  d50_mm: number;
  d60_mm: number;
  d85_mm: number;
}

const PASSING_frac = [0, 0.1, 0.3, 0.5, 0.6, 0.85, 1];

/** Diameters at the shares of PASSING_frac. */
function sizesOf({ d10_mm, d30_mm, d50_mm, d60_mm, d85_mm }: Gradation): number[] {
  const finest_mm = d10_mm / Math.sqrt(d30_mm / d10_mm);
  const coarsest_mm = d85_mm * pow(d85_mm / d60_mm, 0.15 / 0.25);
  return [finest_mm, d10_mm, d30_mm, d50_mm, d60_mm, d85_mm, coarsest_mm];
}

/**
 * Share of the grains finer than a diameter, 0 to 1. The curve of finer-than is straight in the logarithm of the diameter between
 * the five points, and its end pieces go on with the same slope to nothing finer and all finer. The form of the curve is ASSUMED.
 * Diameters above 0 and strictly rising. Worked value: d10 .1, d30 .2, d50 .4, d60 .5, d85 1; .2 mm -> .3.
 */
export const finerThan_frac = (curve: Gradation, d_mm: number): number => alongLogX(sizesOf(curve), PASSING_frac, d_mm);

/** Diameter that a share of the grains is finer than, mm: the same curve read the other way. Worked value: the curve above, .3 -> .2. */
export const sizeAt_mm = (curve: Gradation, finer_frac: number): number =>
  alongLogY(PASSING_frac, sizesOf(curve), finer_frac);

/**
 * Share of the grains in each size class, and the share coarser than the coarsest class (cobbles); all add up to 1.
 * By weight, and so by volume, since the grains of one layer have one density.
 * Worked value: d10 .1, d30 .2, d50 .4, d60 .5, d85 1 -> medium sand (.2-.63) .3834.
 */
export function fractionsOf(curve: Gradation): { fractions: number[]; cobble_frac: number } {
  const sizes_mm = sizesOf(curve);
  const fractions: number[] = [];
  let below = 0;
  for (let i = 0; i < CLASS_COUNT; i++) {
    const passing = alongLogX(sizes_mm, PASSING_frac, SIZE_CLASSES[i].upper_mm);
    fractions.push(passing - below);
    below = passing;
  }
  return { fractions, cobble_frac: 1 - below };
}
