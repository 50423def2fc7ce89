// Modified Bessel functions K0 and K1 by their integral, for checks only: K_n(x) = integral of exp(-x cosh t) cosh(n t) over t from 0.
const STEP = 0.005;
const UP_TO = 14;

function integral(x: number, n: number): number {
  let sum = 0.5 * Math.exp(-x);
  for (let t = STEP; t <= UP_TO; t += STEP) sum += Math.exp(-x * Math.cosh(t)) * Math.cosh(n * t);
  return sum * STEP;
}

export const besselK0 = (x: number): number => integral(x, 0);
export const besselK1 = (x: number): number => integral(x, 1);
