// What a yield test tells of the ground: T from the drawdown, and again from the recovery.
import { slopePerTenfold, straightLineT_m2s } from './straightLine';
import { storageEnd_s } from './storage';
import { coveredDrawdown_m } from './thinAquifer';
import type { WellTest } from './wellTest';

const LITRES_A_MINUTE = 60000;
/** Rounds of looking after the casing's own water is out, which itself depends on T. */
const ROUNDS = 3;

/** 0 where too few readings tell. */
export interface TestFit {
  readonly pumpedT_m2s: number;
  readonly recoveredT_m2s: number;
  /** Rate of the last step over the drawdown at its end. */
  readonly specific_m2s: number;
}

/**
 * Reads a test: drawdown of the first step against the time, what is left of it in the recovery against t/t', both from when the casing's
 * own water (radius casing_m) no longer tells. In a free table (thickness above 0) each reading is first set right after Jacob. After
 * several steps t is the volume over the last rate. Source: Cooper & Jacob 1946; Theis 1935; Horner's time for the steps (from memory).
 */
export function fitTest(test: WellTest, casing_m: number, freeThickness_m: number): TestFit {
  const { rows, static_m, rates_Lmin, step_s } = test;
  const count = rows.length;
  const x = new Float64Array(count);
  const fall_m = new Float64Array(count);
  const pumped_s = step_s * rates_Lmin.length;
  const set = (i: number): number => {
    const free_m = Math.max(0, rows[i].level_m - static_m);
    return freeThickness_m > 0 ? coveredDrawdown_m(Math.min(free_m, freeThickness_m), freeThickness_m) : free_m;
  };

  let first = 0;
  let last_m = 0;
  for (const [i, { time_s }] of rows.entries()) {
    if (time_s <= pumped_s) last_m = Math.max(0, rows[i].level_m - static_m);
    if (!(time_s > 0 && time_s <= step_s)) continue;
    x[first] = time_s;
    fall_m[first++] = set(i);
  }
  const pumpedT_m2s = settled(x, fall_m, first, rates_Lmin[0] / LITRES_A_MINUTE, (T_m2s) => [
    storageEnd_s(casing_m, T_m2s),
    step_s,
  ]);

  const lastRate_Lmin = rates_Lmin[rates_Lmin.length - 1];
  const equal_s = (step_s * rates_Lmin.reduce((sum, rate) => sum + rate, 0)) / lastRate_Lmin;
  let resting = 0;
  for (const [i, { time_s }] of rows.entries()) {
    const rest_s = time_s - pumped_s;
    if (!(rest_s > 0)) continue;
    x[resting] = (equal_s + rest_s) / rest_s;
    fall_m[resting++] = set(i);
  }
  const recoveredT_m2s = settled(x, fall_m, resting, lastRate_Lmin / LITRES_A_MINUTE, (T_m2s) => [
    1,
    1 + equal_s / storageEnd_s(casing_m, T_m2s),
  ]);
  const specific_m2s = last_m > 0 ? lastRate_Lmin / LITRES_A_MINUTE / last_m : 0;
  return { pumpedT_m2s, recoveredT_m2s, specific_m2s };
}

/** T of the line through those readings that a first T lets count; 0 where none is left or the line does not rise. */
function settled(
  x: Float64Array,
  fall_m: Float64Array,
  count: number,
  flow_m3s: number,
  range: (T_m2s: number) => [from: number, to: number],
): number {
  let T_m2s = 0;
  for (let round = 0; round < ROUNDS; round++) {
    const [from, to] = T_m2s > 0 ? range(T_m2s) : [0, Infinity];
    const slope_m = slopePerTenfold(x, fall_m, count, from, to);
    if (!(slope_m > 0)) return T_m2s;
    T_m2s = straightLineT_m2s(flow_m3s, slope_m);
  }
  return T_m2s;
}
