// What a test tells of the ground: a straight line through readings against the logarithm of time.
import { ln } from '../numeric/functions';

const LN_10 = ln(10);

/**
 * Least-squares slope of readings against the logarithm of x, for each tenfold of x. x: time since pumping began, or t/t' in a recovery.
 * Only x from..to count: what comes before the end of casing storage does not. 0 where fewer than two different x are left.
 * Worked value: x 10, 100, 1000, y 1, 1.4, 1.8 -> .4.
 */
export function slopePerTenfold(x: Float64Array, y_m: Float64Array, count: number, from: number, to: number): number {
  let n = 0;
  let meanX = 0;
  let meanY = 0;
  let spread = 0;
  let joint = 0;
  for (let i = 0; i < count; i++) {
    if (!(x[i] >= from && x[i] <= to && x[i] > 0)) continue;
    n++;
    const at = ln(x[i]);
    const stepX = at - meanX;
    meanX += stepX / n;
    spread += stepX * (at - meanX);
    joint += stepX * (y_m[i] - meanY) * ((n - 1) / n);
    meanY += (y_m[i] - meanY) / n;
  }
  return n > 1 && spread > 0 ? (joint / spread) * LN_10 : 0;
}

/**
 * Transmissivity of the straight line, m2/s: T = 2.303 Q/(4 pi ds), ds m the fall in a tenfold of time, or the rise in a tenfold of t/t'
 * in a recovery. Good to 2 % where u is under .05. ds above 0. Source: Cooper & Jacob 1946; Theis 1935 for the recovery (from memory).
 * Worked value: 2500 m3/d, .40 m -> .013255 m2/s (1145.2 m2/d).
 */
export const straightLineT_m2s = (flow_m3s: number, perTenfold_m: number): number =>
  (LN_10 * flow_m3s) / (4 * Math.PI * perTenfold_m);
