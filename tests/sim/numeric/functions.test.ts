// The deterministic functions are what their names say, to the last digits but a few.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { exp, expm1, ln, log10, pow } from '../../../sim/numeric/functions';

const near = (value: number, expected: number): void =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(4e-15 * Math.abs(expected));

test('exp, expm1, ln, log10 and pow agree with the built-in ones to some 1e-15', () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1e-6, max: 1e6, noNaN: true }),
      fc.double({ min: -5, max: 5, noNaN: true }),
      (positive, any) => {
        near(exp(any), Math.exp(any));
        near(expm1(any), Math.expm1(any));
        expect(Math.abs(ln(positive) - Math.log(positive))).toBeLessThan(1e-14);
        expect(Math.abs(log10(positive) - Math.log10(positive))).toBeLessThan(1e-14);
        near(pow(positive, any), Math.pow(positive, any));
      },
    ),
    { seed: 4, numRuns: 500 },
  );
});
