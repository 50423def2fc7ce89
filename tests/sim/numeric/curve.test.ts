// Lines between points: worked values, ends, order.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { alongLine, alongLogX, alongLogY, clamp } from '../../../sim/numeric/curve';

test('worked values', () => {
  expect(alongLine([0, 10], [1, 3], 5)).toBe(2);
  expect(alongLogX([1, 100], [0, 1], 10)).toBeCloseTo(0.5, 12);
  expect(alongLogY([0, 2], [1, 100], 1)).toBeCloseTo(10, 12);
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
    }),
    { seed: 3 },
  );
});
