// What a pump loses: to sand that wears the impeller, to a suction side that boils, to air, to a seal that ran dry.
import { CLASS_COUNT } from '../materials/sizes';

/** Share of its head that an impeller loses per m3 of fine sand through it. ASSUMED: a small open impeller, a tenth after half a cubic metre. */
const LOST_PER_SAND = 0.2;
/** How hard a grain of each class wears it, fine sand 1. ASSUMED: rising with the grain, clay hardly at all. */
const HARSHNESS_ratio = [0, 0.1, 1, 2, 4, 4, 4, 4];
/** Share lost in a second of a starved suction side. ASSUMED: 1.8 % an hour; bubbles that collapse pit the vanes. */
const BOILING_1s = 5e-6;
/** No impeller wears further: at half of its head nobody goes on. */
const MOST_WORN_frac = 0.5;

/** Seconds that the seal bears without water. ASSUMED: a minute or two. */
export const SEAL_DRY_s = 100;
/** Air that a burnt seal lets in, as a volume fraction of the flow. ASSUMED. */
export const SEAL_LEAK_frac = 0.02;
/** Air that breaks the prime: 3 to 5 % (from memory). */
export const AIR_BREAKS_frac = 0.04;
/** Share of the head lost per share of air in the fluid. ASSUMED: two fifths are gone where the prime breaks. */
const HEAD_PER_AIR = 10;

/**
 * Wear after a second, 0 to .5: grows by .2 per m3 of fine sand through the pump, coarser grains more, and while the suction
 * side is starved. solids_m3 by class, totals of the second. Worked value: 1e-5 m3 of fine sand -> 2e-6.
 */
export function wearAfter(worn_frac: number, solids_m3: ArrayLike<number>, starved: boolean, dt_s: number): number {
  let grown = starved ? BOILING_1s * dt_s : 0;
  for (let k = 0; k < CLASS_COUNT; k++) grown += LOST_PER_SAND * HARSHNESS_ratio[k] * solids_m3[k];
  return Math.min(MOST_WORN_frac, worn_frac + grown);
}

/** Share of its head that a worn pump gives with air in the fluid, 0 to 1. Worked value: worn .1, air .02 -> .72. */
export function headLeft_ratio(worn_frac: number, air_frac: number): number {
  return (1 - worn_frac) * Math.max(0, 1 - HEAD_PER_AIR * air_frac);
}
