// The wall of a wide well against the exact solution, whose Laplace transform is inverted here by Stehfest's way.
import { besselK0, besselK1 } from './bessel';
import { expect, it } from 'vitest';
import { wellFunction } from '../../../sim/well/wellFunction';
import { wideWellFunction } from '../../../sim/well/wideWell';

/** Stehfest 1970: weights of an inversion with so many terms. */
const TERMS = 12;
const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));
function weight(i: number): number {
  const half = TERMS / 2;
  let sum = 0;
  for (let k = Math.floor((i + 1) / 2); k <= Math.min(i, half); k++)
    sum +=
      (k ** half * factorial(2 * k)) /
      (factorial(half - k) * factorial(k) * factorial(k - 1) * factorial(i - k) * factorial(2 * k - i));
  return (i + half) % 2 === 0 ? sum : -sum;
}

/** Twice the fall at the wall of a cylinder at dimensionless time t, constant rate (van Everdingen and Hurst 1949): K0(x)/(p x K1(x)). */
function exact(t: number): number {
  let sum = 0;
  for (let i = 1; i <= TERMS; i++) {
    const p = (i * Math.LN2) / t;
    const x = Math.sqrt(p);
    sum += (weight(i) * besselK0(x)) / (p * x * besselK1(x));
  }
  return (2 * sum * Math.LN2) / t;
}

it.each([0.01, 0.1, 0.25, 1, 2.5, 5, 10, 100, 1000])('at time %d it is right to 6.5 %%, never too little', (t) => {
  const ratio = wideWellFunction(1 / (4 * t)) / exact(t);
  expect(ratio).toBeGreaterThan(0.999);
  expect(ratio).toBeLessThan(1.065);
});

it('late it is W(u), early it goes with the root of the time', () => {
  expect(Math.abs(wideWellFunction(1e-8) / wellFunction(1e-8) - 1)).toBeLessThan(1e-4);
  expect(wideWellFunction(4e6) / wideWellFunction(1e6)).toBeCloseTo(0.5, 3);
});

it('gives its worked values', () => {
  expect(wideWellFunction(25)).toBeCloseTo(0.22165, 5);
  expect(wideWellFunction(0.25)).toBeCloseTo(1.7052, 4);
  expect(wideWellFunction(2.5e-4)).toBeCloseTo(7.7485, 4);
});
