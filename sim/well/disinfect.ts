// Chlorine in the finished well: how much product, how much water it must reach, how long it works.
import { expm1, ln, pow } from '../numeric/functions';
import { CHLORINE } from '../materials/chlorine';
import { POLYMER } from '../materials/polymer';
import { breakPace } from '../fluid/chlorine';

/** Dose that disinfects a well, g/L, from and to: 50-100 mg/L (extension sheets); least time it must stand, 6 h (the same; AWWA C654 12-24 h, from memory). */
export const DOSE_gL = [0.05, 0.1] as const;
export const CONTACT_s = 6 * 3600;
/** Left over at hand-over at most, g/L: .5 mg/L (WHO, from memory). */
export const RESIDUAL_gL = 0.0005;

/**
 * Product that gives a dose, kg: V dose/strength. V m3, dose g/L (kg/m3), strength share of free chlorine in the product, above 0.
 * Source: UNHCR 1997 (140 g of 70 % powder for 1 m3 at 100 mg/L; exact 142.9). Worked value: 1 m3, .1 g/L, .7 -> .14286.
 */
export const product_kg = (water_m3: number, dose_gL: number, strength_frac: number): number =>
  (water_m3 * dose_gL) / strength_frac;

/** Water in a pipe or a round shaft, m3: pi/4 d^2 h. d m the inside diameter, h m of water. Worked value: 57.0 mm, 1 m -> .002552. */
export const pipeWater_m3 = (bore_m: number, water_m: number): number => (Math.PI / 4) * bore_m * bore_m * water_m;

/** Water in the pores of a ring of pack, m3: n pi/4 (D^2 - d^2) h. Worked value: 150 round 63 mm, 4 m, n .35 -> .02038. */
export const packWater_m3 = (hole_m: number, casing_m: number, pack_m: number, porosity_frac: number): number =>
  porosity_frac * (pipeWater_m3(hole_m, pack_m) - pipeWater_m3(casing_m, pack_m));

/**
 * Chlorine left, g/L, of a dose after time_s at a temperature in C in clean water: half of it is gone after 12 h at 25 C (ASSUMED, see
 * materials/chlorine). Worked value: .1 g/L, 25 C, 12 h -> .05.
 */
export const residual_gL = (dose_gL: number, temperature_C: number, time_s: number): number =>
  dose_gL * (1 - breakPace(temperature_C, time_s).fade_frac);

/**
 * Contact: dose times time, mg min/L, as the chlorine fades by k a second: C (1 - exp(-k t))/k; halfLife_s Infinity: it does not fade.
 * Source: derived. Worked values: 50 mg/L, 12 h, no fading -> 36000; half gone in 12 h -> 25968.
 */
export function contact_mgminL(dose_gL: number, time_s: number, halfLife_s: number): number {
  const pace_1s = ln(2) / halfLife_s;
  const counted_s = pace_1s > 0 ? -expm1(-pace_1s * time_s) / pace_1s : time_s;
  return (dose_gL * 1000 * counted_s) / 60;
}

/** Half-life of chlorine in clean water at a temperature in C, s: half for 10 degrees more. ASSUMED. Worked value: 35 C -> 21600. */
export const chlorineHalfLife_s = (temperature_C: number): number =>
  CHLORINE.halfLife_s / pow(CHLORINE.Q10, (temperature_C - POLYMER.reference_C) / 10);
