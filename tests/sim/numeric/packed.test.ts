// A packed row comes back exactly, is short where values repeat, and a damaged text is turned away.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { packed, unpacked } from '../../../sim/numeric/packed';

const bitsOf = (values: Float64Array): string[] =>
  Array.from(new BigUint64Array(values.slice().buffer), (word) => word.toString(16));

/** Rows as a state holds them: stretches of one value and stretches of many. */
const rows = fc
  .array(
    fc.oneof(
      fc.tuple(fc.double({ noNaN: true }), fc.integer({ min: 1, max: 200 })).map(([v, n]) => new Array(n).fill(v)),
      fc.array(fc.double({ noNaN: true }), { maxLength: 20 }),
    ),
    { maxLength: 8 },
  )
  .map((parts) => Float64Array.from(parts.flat()));

test('any row comes back to the last bit', () => {
  fc.assert(
    fc.property(rows, (row) => {
      expect(bitsOf(unpacked(packed(row)))).toEqual(bitsOf(row));
    }),
    { numRuns: 300 },
  );
});

test('minus zero, the smallest and the largest numbers come back as they were', () => {
  const row = Float64Array.from([-0, -0, -0, 0, 0, 0, 5e-324, 1.7976931348623157e308, -1 / 3, 1 / 3]);
  expect(bitsOf(unpacked(packed(row)))).toEqual(bitsOf(row));
});

test('120 zeros are 14 signs, and no row costs much more than its own bytes', () => {
  expect(packed(new Float64Array(120))).toHaveLength(14);
  const busy = Float64Array.from({ length: 120 }, (_, i) => 1 / (i + 1));
  expect(packed(busy).length).toBeLessThan((120 * 8 * 4) / 3 + 6);
  expect(packed(new Float64Array(0))).toBe('');
});

test('a text that is cut or has foreign signs is turned away', () => {
  const text = packed(Float64Array.from([1, 2, 3.5]));
  expect(() => unpacked(text.slice(0, -3))).toThrow(RangeError);
  expect(() => unpacked(`${text.slice(0, -1)}*`)).toThrow("'*' is no digit");
  expect(() => unpacked('_')).toThrow(RangeError);
});
