// Powder soaks, soaked polymer rots, bentonite swells. The shares of one tick depend on the temperature only: compute them once, then a tick
// costs a few multiplications per store.
import { expm1, ln, pow } from '../numeric/functions';
import { POLYMER } from '../materials/polymer';
import { swellTime_s } from './bentonite';
import { BENTONITE, SOAKED, SOAKING, SWELLING } from './substances';

/** Shares of the soaking, of the soaked and of the swelling part that change in one tick. */
export interface TickShares {
  soak_frac: number;
  rot_frac: number;
  swell_frac: number;
}

/** Time constant of soaking, s, at a temperature in C: 95 % after 15 min at 25 C, twice as long at 10 C. Worked value: 25 C -> 300.4. */
export function soakTime_s(temperature_C: number): number {
  const at25_s = POLYMER.soaked95_s / ln(20);
  return at25_s * pow(2, (POLYMER.reference_C - temperature_C) / POLYMER.soakDoubling_C);
}

/** Half-life of soaked polymer, s, at a temperature in C: 2.5 d at 25 C, Q10 2. Worked value: 35 C -> 108000. */
export function halfLife_s(temperature_C: number): number {
  return POLYMER.halfLife_s * pow(POLYMER.Q10, (POLYMER.reference_C - temperature_C) / 10);
}

/** Shares of one tick of tick_s seconds, first order: 1 - exp(-t/tau). Worked value: 25 C, 900 s -> soak .95. */
export function tickShares(temperature_C: number, tick_s: number): TickShares {
  return {
    soak_frac: -expm1(-tick_s / soakTime_s(temperature_C)),
    rot_frac: -expm1((-tick_s * ln(2)) / halfLife_s(temperature_C)),
    swell_frac: -expm1(-tick_s / swellTime_s(temperature_C)),
  };
}

/** One tick for one body of fluid, masses by substance, in place; returns the mass that rotted away, kg. Worked value: soaking 1, soak .1, rot 0 -> .9 and .1. */
export const soakStore = (dissolved_kg: Float64Array, shares: TickShares): number =>
  soakCells(dissolved_kg, 1, 1, shares);

/** The same for the first `count` of `stride` cells, substance-major (substance s, cell i at s*stride + i); returns the mass that rotted away, kg. */
export function soakCells(dissolved_kg: Float64Array, stride: number, count: number, shares: TickShares): number {
  const soaking = SOAKING * stride;
  const soaked = SOAKED * stride;
  let rotted_kg = 0;
  for (let i = 0; i < count; i++) {
    const moved_kg = dissolved_kg[soaking + i] * shares.soak_frac;
    const gone_kg = dissolved_kg[soaked + i] * shares.rot_frac;
    dissolved_kg[soaking + i] -= moved_kg;
    dissolved_kg[soaked + i] += moved_kg - gone_kg;
    rotted_kg += gone_kg;
  }
  return rotted_kg;
}

/** Bentonite swells: one tick for the first `count` of `stride` cells, in place. Nothing is lost. Worked value: swelling 1, share .1 -> .9 and .1. */
export function swellCells(dissolved_kg: Float64Array, stride: number, count: number, shares: TickShares): void {
  const swelling = SWELLING * stride;
  const swollen = BENTONITE * stride;
  for (let i = 0; i < count; i++) {
    const moved_kg = dissolved_kg[swelling + i] * shares.swell_frac;
    dissolved_kg[swelling + i] -= moved_kg;
    dissolved_kg[swollen + i] += moved_kg;
  }
}
