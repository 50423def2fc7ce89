// The chain of beds and the grain-size curve.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { nextState, sharesOf } from '../../../sim/ground/chain';
import { fractionsOf } from '../../../sim/ground/gradation';
import { chainOf } from '../../../sim/ground/generate';
import { SETTING, SETTINGS } from '../../../sim/ground/settings';

test('worked values', () => {
  expect(sharesOf([[1, 3]])).toEqual([[0.25, 0.75]]);
  expect(nextState([[0.2, 0, 0.8]], 0, 0.2)).toBe(2);
  expect(fractionsOf({ d10_mm: 0.1, d30_mm: 0.2, d50_mm: 0.4, d60_mm: 0.5, d85_mm: 1 }).fractions[3]).toBeCloseTo(
    0.3834,
    4,
  );
});

test('refuses rows without weight or with a negative one', () => {
  expect(() => sharesOf([[0, 0]])).toThrow(RangeError);
  expect(() => sharesOf([[1, -1, 2]])).toThrow(RangeError);
});

test('a state without share is never drawn, not even by the largest draw', () => {
  fc.assert(
    fc.property(
      fc.array(fc.integer({ min: 0, max: 5 }), { minLength: 1, maxLength: 8 }),
      fc.double({ min: 0, max: 1 - 2 ** -32, noNaN: true }),
      (row, u) => {
        fc.pre(row.some((w) => w > 0));
        expect(row[nextState(sharesOf([row]), 0, u)]).toBeGreaterThan(0);
      },
    ),
    { seed: 11, numRuns: 500 },
  );
});

test.each(SETTINGS)('the chain of %s has no bed on its own kind, rows that sum to 1, and reaches every kind', (id) => {
  const { kinds, shares } = chainOf(SETTING[id]);
  shares.forEach((row, i) => {
    expect(row[i]).toBe(0);
    expect(row.reduce((a, b) => a + b, 0)).toBeCloseTo(1, 12);
    // Every kind named below this one has a bed of its own in this setting.
    const under = SETTING[id].beds[kinds[i]]!.under;
    for (const kind of Object.keys(under)) expect(kinds as string[]).toContain(kind);
    expect(Object.values(under).reduce((a, b) => a + b, 0)).toBe(100);
  });
  const reached = new Set([kinds.indexOf(SETTING[id].first)]);
  for (const from of reached) shares[from].forEach((share, to) => share > 0 && reached.add(to));
  expect(reached.size).toBe(kinds.length);
});

test('fractions and cobbles sum to 1, none below 0, and coarser ground shifts to coarser classes', () => {
  const step = fc.double({ min: 1.05, max: 8, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 1e-4, max: 20, noNaN: true }), step, step, step, step, (d10, a, b, c, d) => {
      const curve = {
        d10_mm: d10,
        d30_mm: d10 * a,
        d50_mm: d10 * a * b,
        d60_mm: d10 * a * b * c,
        d85_mm: d10 * a * b * c * d,
      };
      const { fractions, cobble_frac } = fractionsOf(curve);
      expect(fractions.reduce((s, f) => s + f, cobble_frac)).toBeCloseTo(1, 12);
      for (const f of [...fractions, cobble_frac]) expect(f).toBeGreaterThanOrEqual(0);
      const coarser = fractionsOf({
        d10_mm: curve.d10_mm * 1.4,
        d30_mm: curve.d30_mm * 1.4,
        d50_mm: curve.d50_mm * 1.4,
        d60_mm: curve.d60_mm * 1.4,
        d85_mm: curve.d85_mm * 1.4,
      });
      let finer = 0;
      let finerCoarser = 0;
      for (let i = 0; i < 8; i++) {
        finer += fractions[i];
        finerCoarser += coarser.fractions[i];
        expect(finerCoarser).toBeLessThanOrEqual(finer + 1e-12);
      }
    }),
    { seed: 12, numRuns: 500 },
  );
});
