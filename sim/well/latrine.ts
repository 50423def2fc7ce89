// Water from a latrine on its way to the screen: how long it is under way, and whether germs outlive it.
import { DAY_s } from '../numeric/units';

/** Days under ground below which the risk is significant, and above which it is very low (ARGOSS 2001, BGS CR/01/142, from memory). */
export const RISK_DAYS = [25, 50] as const;

export type TravelRisk = 'significant' | 'low' | 'veryLow';

/**
 * Time along the aquifer, s: t = n L/(K i). n pores, L m, K m/s, i gradient, all above 0; Infinity where K or i is 0.
 * Source: Darcy; ARGOSS 2001. Worked value: n .2, 30 m, 10 m/d, .01 -> 5 184 000 (60 days).
 */
export function travelTime_s(porosity_frac: number, distance_m: number, K_ms: number, gradient: number): number {
  const speed_ms = K_ms * gradient;
  return speed_ms > 0 ? (porosity_frac * distance_m) / speed_ms : Infinity;
}

/** The distance that leaves so much time, m: L = t K i/n. Source as above. Worked value: n .2, 10 m/d, .01, 50 d -> 25. */
export const safeDistance_m = (porosity_frac: number, K_ms: number, gradient: number, time_s: number): number =>
  (time_s * K_ms * gradient) / porosity_frac;

/** Class of a travel time: under 25 days, to 50, over 50. Source: ARGOSS 2001 (from memory). Worked value: 60 days -> veryLow. */
export function travelRisk(time_s: number): TravelRisk {
  const days = time_s / DAY_s;
  return days < RISK_DAYS[0] ? 'significant' : days <= RISK_DAYS[1] ? 'low' : 'veryLow';
}
