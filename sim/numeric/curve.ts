// Lines between given points, straight in x and y or in the logarithm of one of them.
import { exp, ln } from './functions';

/** x kept within lo..hi. */
export function clamp(x: number, lo: number, hi: number): number {
  return x < lo ? lo : x > hi ? hi : x;
}

/**
 * y at x on straight lines through (xs[i], ys[i]); flat beyond both ends.
 * xs strictly rising, same length as ys, at least one point. Worked value: xs [0, 10], ys [1, 3], x 5 -> 2.
 */
export function alongLine(xs: readonly number[], ys: readonly number[], x: number): number {
  const last = xs.length - 1;
  if (x <= xs[0]) return ys[0];
  if (x >= xs[last]) return ys[last];
  let i = 1;
  while (xs[i] < x) i++;
  const share = (x - xs[i - 1]) / (xs[i] - xs[i - 1]);
  return ys[i - 1] + share * (ys[i] - ys[i - 1]);
}

/**
 * As alongLine, but straight in the logarithm of x: for grain-size curves. All xs and x above 0.
 * Worked value: xs [1, 100], ys [0, 1], x 10 -> 0.5.
 */
export function alongLogX(xs: readonly number[], ys: readonly number[], x: number): number {
  const last = xs.length - 1;
  if (x <= xs[0]) return ys[0];
  if (x >= xs[last]) return ys[last];
  let i = 1;
  while (xs[i] < x) i++;
  const share = ln(x / xs[i - 1]) / ln(xs[i] / xs[i - 1]);
  return ys[i - 1] + share * (ys[i] - ys[i - 1]);
}

/**
 * As alongLine, but straight in the logarithm of y: for quantities that fall by a factor per step. All ys above 0.
 * Worked value: xs [0, 2], ys [1, 100], x 1 -> 10.
 */
export function alongLogY(xs: readonly number[], ys: readonly number[], x: number): number {
  const last = xs.length - 1;
  if (x <= xs[0]) return ys[0];
  if (x >= xs[last]) return ys[last];
  let i = 1;
  while (xs[i] < x) i++;
  if (x === xs[i]) return ys[i];
  const share = (x - xs[i - 1]) / (xs[i] - xs[i - 1]);
  return ys[i - 1] * exp(share * ln(ys[i] / ys[i - 1]));
}
