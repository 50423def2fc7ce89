// How far the water falls round a pumped well, after Theis: one rate, or a history of rates with its pauses.
import type { RateSteps } from './rateSteps';
import { wellFunction } from './wellFunction';

/**
 * u = r^2 S/(4 T t): no unit. r m from the well's axis, S storage coefficient, T m2/s, t s since pumping began; all above 0.
 * Source: Theis 1935. Worked value: r 60, S 2.06e-4, T .01285, t 24 s -> .6012.
 */
export const theisU = (r_m: number, S_ratio: number, T_m2s: number, time_s: number): number =>
  (r_m * r_m * S_ratio) / (4 * T_m2s * time_s);

/**
 * Drawdown s = Q W(u)/(4 pi T), m, in an endless even aquifer; 0 before pumping began.
 * Q m3/s, T m2/s above 0. Source: Theis 1935. Worked value: Q .001, T .001, S .001, r 10, t 1 d -> .6025.
 */
export function theisDrawdown_m(flow_m3s: number, T_m2s: number, S_ratio: number, r_m: number, time_s: number): number {
  if (!(time_s > 0)) return 0;
  return (flow_m3s * wellFunction(theisU(r_m, S_ratio, T_m2s, time_s))) / (4 * Math.PI * T_m2s);
}

/**
 * Drawdown at time_s, m, after all steps of rate so far: the sum of (Q_i - Q_(i-1)) W(u_i)/(4 pi T), u_i from the start of step i.
 * Recovery is a step to rate 0: W(u) - W(u'). fallOf: W(u), or what stands for it at the wall of a wide well. Source: superposition, Theis 1935; Cooper & Jacob 1946.
 * Worked value: Q .001 for 1 d, then 1 d of rest; T .001, S .001, r 10 -> .0551.
 */
export function steppedDrawdown_m(
  steps: RateSteps,
  T_m2s: number,
  S_ratio: number,
  r_m: number,
  time_s: number,
  fallOf: (u: number) => number = wellFunction,
): number {
  let sum_m3s = 0;
  let before_m3s = 0;
  for (let i = 0; i < steps.count; i++) {
    const from_s = steps.from_s[i];
    if (from_s >= time_s) break;
    const rate_m3s = steps.rate_m3s[i];
    const change_m3s = rate_m3s - before_m3s;
    before_m3s = rate_m3s;
    if (change_m3s !== 0) sum_m3s += change_m3s * fallOf(theisU(r_m, S_ratio, T_m2s, time_s - from_s));
  }
  return sum_m3s / (4 * Math.PI * T_m2s);
}
