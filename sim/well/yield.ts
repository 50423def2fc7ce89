// How far a finished well draws down at a rate, and the largest rate that its water bears.
import { exp } from '../numeric/functions';
import { solveBracketed } from '../numeric/root';
import { DAY_s } from '../numeric/units';
import { theisDrawdown_m, theisU } from './theis';
import { freeDrawdown_m } from './thinAquifer';
import { wellFunction } from './wellFunction';
import { wellLoss_m } from './wellLoss';

/** The search ends within this share of the answer. */
const CLOSE_ENOUGH = 1e-9;

/** What the ground and the screen give, as plain numbers. */
export interface Intake {
  /** Of the whole aquifer that the screen stands in; a screen in a part of it has its skin of partial penetration. */
  T_m2s: number;
  S_ratio: number;
  /** Where skins begin: the outside of the screen. */
  radius_m: number;
  /** All skins together: mud, gravel, partial penetration. */
  skin_ratio: number;
  wellLoss_s2m5: number;
  /** Water over the bottom of an aquifer with a free table; 0: under cover. */
  freeThickness_m: number;
}

/**
 * ln(R/r), no unit, R the reach of the cone after time_s: W(u)/2. What Thiem's ln(R/r) is to a well that has pumped so long.
 * Source: Theis 1935 set equal to Thiem 1906. Worked value: T 1e-3, S .1, r .03, 1 d -> 7.2919.
 */
export const wayLogOf = (T_m2s: number, S_ratio: number, radius_m: number, time_s: number): number =>
  wellFunction(theisU(radius_m, S_ratio, T_m2s, time_s)) / 2;

/**
 * Drawdown in the ground at the screen for each m3/s, after time_s at one rate, s/m2: (W(u) + 2 sigma)/(4 pi T).
 * A skin below 0 counts as a wider well, r exp(-sigma). T above 0. Source: Theis 1935, Ramey 1982.
 * Worked value: T 1e-3, S .1, r .03, sigma 2, 1 d -> 1478.85.
 */
export function responseAfter_sm2(well: Intake, time_s: number): number {
  const { T_m2s, S_ratio, radius_m, skin_ratio } = well;
  const wide_m = skin_ratio < 0 ? radius_m * exp(-skin_ratio) : radius_m;
  const inSkin_sm2 = Math.max(0, skin_ratio) / (2 * Math.PI * T_m2s);
  return theisDrawdown_m(1, T_m2s, S_ratio, wide_m, time_s) + inSkin_sm2;
}

/**
 * The same at the end of the last pumping of a season of daily use, s/m2: the mean of the day over the whole season, and on top of it what
 * the hours of pumping add. pumpedADay_s up to 86400. Source: superposition. No rain and no river feed the aquifer meanwhile.
 * Worked value: a day of 86400 s -> as responseAfter_sm2 of the season.
 */
export function seasonResponse_sm2(well: Intake, pumpedADay_s: number, season_s: number): number {
  const share = Math.min(1, pumpedADay_s / DAY_s);
  return share * responseAfter_sm2(well, season_s) + (1 - share) * responseAfter_sm2(well, pumpedADay_s);
}

/**
 * Drawdown in the well, m: Q times the response, further where the table is free (Jacob), and the loss in the slots, C Q^2.
 * Source: Jacob 1944, 1947. Worked value: Q 1e-3, response 1200, b 6, C 1e5 -> 1.4524.
 */
export function drawdownOf_m(well: Intake, flow_m3s: number, response_sm2: number): number {
  const covered_m = flow_m3s * response_sm2;
  const inGround_m = well.freeThickness_m > 0 ? freeDrawdown_m(covered_m, well.freeThickness_m) : covered_m;
  return inGround_m + wellLoss_m(well.wellLoss_s2m5, flow_m3s);
}

/**
 * The largest rate that draws the well down by no more than allowed_m, m3/s; 0 where nothing is allowed or nothing flows.
 * response above 0: see responseAfter_sm2. Source: drawdownOf_m solved for Q; it rises with Q.
 * Worked value: allowed 1.4524, response 1200, b 6, C 1e5 -> 1.0000e-3.
 */
export function largestYield_m3s(well: Intake, allowed_m: number, response_sm2: number): number {
  if (!(allowed_m > 0) || !(well.T_m2s > 0)) return 0;
  const most_m3s = (allowed_m / response_sm2) * (1 + CLOSE_ENOUGH);
  const excess = (flow_m3s: number): number => drawdownOf_m(well, flow_m3s, response_sm2) - allowed_m;
  return solveBracketed(excess, 0, most_m3s, most_m3s / 2, most_m3s * CLOSE_ENOUGH);
}
