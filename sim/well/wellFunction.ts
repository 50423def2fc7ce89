// The well function W(u): the exponential integral that all of Theis' well hydraulics stands on.
import { exp, ln } from '../numeric/functions';

/** Euler's constant. */
const EULER = 0.5772156649015329;
/** Beyond this the answer, some 1e-24, is told as 0. */
const NOTHING_BEYOND = 50;
/** Enough terms for 1e-15 at u = 1, and enough steps for 1e-12 just above it. */
const TERMS = 20;
const STEPS = 120;
const CLOSE_ENOUGH = 1e-13;

/**
 * W(u) = E1(u), the integral of exp(-x)/x from u to infinity; within 1e-9 of it for u 1e-15 to 50, 0 beyond.
 * Series -.5772157 - ln u + u - u^2/(2 2!) + u^3/(3 3!) - ... up to u = 1, continued fraction (modified Lentz) above.
 * Throws RangeError unless u is above 0. Source: Theis 1935; Wenzel 1942 (series), Abramowitz & Stegun 1964, 5.1.22 (fraction, from memory).
 * Worked value: .01 -> 4.03793.
 */
export function wellFunction(u: number): number {
  if (!(u > 0)) throw new RangeError(`W(u) needs u above 0, not ${u}.`);
  if (u > NOTHING_BEYOND) return 0;
  if (u <= 1) {
    let power = u;
    let sum = u - EULER - ln(u);
    for (let n = 2; n <= TERMS; n++) {
      power *= -u / n;
      const term = power / n;
      sum += term;
      if (Math.abs(term) < CLOSE_ENOUGH * sum) break;
    }
    return sum;
  }
  let b = u + 1;
  let c = 1e300;
  let d = 1 / b;
  let h = d;
  for (let i = 1; i <= STEPS; i++) {
    const a = -i * i;
    b += 2;
    d = 1 / (a * d + b);
    c = b + a / c;
    const change = c * d;
    h *= change;
    if (Math.abs(change - 1) < CLOSE_ENOUGH) break;
  }
  return h * exp(-u);
}
