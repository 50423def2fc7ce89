// The bracketed root find: right answers, few steps, a plain refusal.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { solveBracketed } from '../../../sim/numeric/root';

test('finds the root of two', () => {
  expect(solveBracketed((x) => x * x - 2, 0, 2, 1, 1e-12)).toBeCloseTo(Math.SQRT2, 10);
});

test('finds any crossing of a rising curve to within the tolerance, whatever the guess', () => {
  fc.assert(
    fc.property(
      fc.double({ min: -9, max: 9, noNaN: true }),
      fc.double({ min: 0.01, max: 100, noNaN: true }),
      fc.double({ min: -20, max: 20, noNaN: true }),
      fc.integer({ min: 1, max: 5 }),
      (root, slope, guess, odd) => {
        const bend = (x: number): number => {
          let y = slope * (x - root);
          for (let i = 1; i < odd; i++) y = y + (x - root) * (x - root) * (x - root);
          return y;
        };
        expect(Math.abs(solveBracketed(bend, -10, 10, guess, 1e-9) - root)).toBeLessThanOrEqual(1e-8);
      },
    ),
    { seed: 1, numRuns: 500 },
  );
});

test('takes few steps from a good guess', () => {
  let calls = 0;
  const f = (x: number): number => {
    calls++;
    return x * x * x - 0.002 * 0.002 * 0.002 + 1e-3 * (x - 0.002);
  };
  expect(solveBracketed(f, 0, 0.006, 0.00201, 1e-9)).toBeCloseTo(0.002, 9);
  expect(calls).toBeLessThanOrEqual(10);
});

test('copes with a kink and with a very flat end', () => {
  const kink = (x: number): number => (x < 0.3 ? 1e-9 * (x - 0.3) : 1e9 * (x - 0.3));
  expect(solveBracketed(kink, 0, 1, 0.9, 1e-10)).toBeCloseTo(0.3, 6);
});

test('takes an end that is the root', () => {
  expect(solveBracketed((x) => x, 0, 1, 0.5, 1e-9)).toBe(0);
  expect(solveBracketed((x) => x - 1, 0, 1, 0.5, 1e-9)).toBe(1);
});

test('refuses a bracket without a crossing', () => {
  expect(() => solveBracketed((x) => x + 5, 0, 1, 0.5, 1e-9)).toThrow(RangeError);
});
