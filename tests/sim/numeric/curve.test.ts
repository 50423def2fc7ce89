// Lines between points and the smooth step: worked values, ends, order.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alongLine, alongLogX, alongLogY, clamp, smoothStep } from '../../../sim/numeric/curve';
import { cubicMetres, dose_gL, flow_Lmin, flow_m3s, litres, metres } from '../../../sim/numeric/units';

test('worked values', () => {
  expect(alongLine([0, 10], [1, 3], 5)).toBe(2);
  expect(alongLogX([1, 100], [0, 1], 10)).toBeCloseTo(0.5, 12);
  expect(alongLogY([0, 2], [1, 100], 1)).toBeCloseTo(10, 12);
  expect(smoothStep(2, 4, 3)).toBe(0.5);
  expect(clamp(7, 0, 5)).toBe(5);
});

test('flat beyond both ends, exact at the points', () => {
  for (const along of [alongLine, alongLogX, alongLogY]) {
    expect(along([1, 2, 4], [3, 5, 6], 0.5)).toBe(3);
    expect(along([1, 2, 4], [3, 5, 6], 9)).toBe(6);
    expect(along([1, 2, 4], [3, 5, 6], 2)).toBe(5);
  }
});

test('rising points give a rising curve', () => {
  const x = fc.double({ min: 0.5, max: 5, noNaN: true });
  fc.assert(
    fc.property(x, x, (a, b) => {
      const [lo, hi] = a < b ? [a, b] : [b, a];
      for (const along of [alongLine, alongLogX, alongLogY]) {
        expect(along([1, 2, 4], [3, 5, 6], hi)).toBeGreaterThanOrEqual(along([1, 2, 4], [3, 5, 6], lo));
      }
      expect(smoothStep(1, 4, hi)).toBeGreaterThanOrEqual(smoothStep(1, 4, lo));
    }),
    { seed: 3 },
  );
});

test('conversions', () => {
  expect(flow_m3s(120)).toBeCloseTo(0.002, 15);
  expect(flow_Lmin(0.002)).toBeCloseTo(120, 12);
  expect(litres(cubicMetres(35))).toBeCloseTo(35, 12);
  expect(metres(33.7)).toBeCloseTo(0.0337, 15);
  expect(dose_gL(1.3, 1)).toBe(1.3);
  expect(dose_gL(1, 0)).toBe(0);
});
