// Grains in a crowd fall more slowly than one alone.
import { pow } from '../numeric/functions';

/** Exponents of the halves that hinderedInto lays out: 2, 2.5 ... 5. */
const FIRST = 2;
const STEP = 0.5;
export const HINDERED_COUNT = 7;

/**
 * Exponent of Richardson & Zaki 1954 by grain Reynolds number: 4.65 below .2, 4.35 Re^-.03 to 1, 4.45 Re^-.1 to 500,
 * 2.39 above (from memory). Worked value: Re 10 -> 3.535.
 */
export function hinderedExponent(reynolds: number): number {
  if (reynolds < 0.2) return 4.65;
  if (reynolds < 1) return 4.35 * pow(reynolds, -0.03);
  if (reynolds < 500) return 4.45 * pow(reynolds, -0.1);
  return 2.39;
}

/** Writes (1-c)^2, (1-c)^2.5 ... (1-c)^5 into out from base on, for a grain volume fraction c, 0 to .6: only products and a root. */
export function hinderedInto(out: Float64Array, base: number, solids_frac: number): void {
  const open = 1 - solids_frac;
  const half = Math.sqrt(open);
  let value = open * open;
  for (let i = 0; i < HINDERED_COUNT; i++) {
    out[base + i] = value;
    value *= half;
  }
}

/** Place of an exponent m, 2 to 5, among the powers of hinderedInto. Worked value: 2.75 -> 1.5. */
export const hinderedPlace = (exponent: number): number => (exponent - FIRST) / STEP;

/**
 * (1-c)^m, the share of its lone speed that a grain keeps, from the powers of hinderedInto at base, straight between halves of m
 * (within .5 % to c .3). place: that of m, 0 to 6. Source: Richardson & Zaki 1954. Worked value: c .1, m 2.39 -> .7774.
 */
export function hinderedShare(powers: Float64Array, base: number, place: number): number {
  const i = place < HINDERED_COUNT - 2 ? Math.floor(place) : HINDERED_COUNT - 2;
  return powers[base + i] + (place - i) * (powers[base + i + 1] - powers[base + i]);
}
