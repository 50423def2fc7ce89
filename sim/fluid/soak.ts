// Powder soaks, soaked polymer rots. The shares of one tick depend on the temperature only: compute them once, then a tick
// costs a few multiplications per store.
import { expm1, ln, pow } from '../numeric/functions';
import { POLYMER } from '../materials/polymer';

/** Polymer in one body of fluid. */
export interface PolymerStore {
  soaking_kg: number;
  soaked_kg: number;
}

/** Shares of the soaking and of the soaked part that change in one tick. */
export interface TickShares {
  soak_frac: number;
  rot_frac: number;
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
  };
}

/** One tick for one store, in place; returns the mass that rotted away, kg. Worked value: soaking 1, soak .1, rot 0 -> .9 and .1. */
export function soakStore(store: PolymerStore, shares: TickShares): number {
  const moved_kg = store.soaking_kg * shares.soak_frac;
  store.soaking_kg -= moved_kg;
  const rotted_kg = store.soaked_kg * shares.rot_frac;
  store.soaked_kg += moved_kg - rotted_kg;
  return rotted_kg;
}

/** The same for the first `count` cells of two arrays, in place; returns the mass that rotted away, kg. */
export function soakCells(
  soaking_kg: Float64Array,
  soaked_kg: Float64Array,
  count: number,
  shares: TickShares,
): number {
  let rotted_kg = 0;
  for (let i = 0; i < count; i++) {
    const moved_kg = soaking_kg[i] * shares.soak_frac;
    const gone_kg = soaked_kg[i] * shares.rot_frac;
    soaking_kg[i] -= moved_kg;
    soaked_kg[i] += moved_kg - gone_kg;
    rotted_kg += gone_kg;
  }
  return rotted_kg;
}
