// Transport of one field: nothing lost, nothing negative, sharp and on time.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { carryField, createFieldWork, fullColumn } from '../../../sim/hole/field';
import { BOTTOM, BOTTOM_MOMENT, TOP, TOP_MOMENT } from '../../../sim/hole/gather';

const CELLS = 40;
const NO_ENTRY = { face: 0, amount: 0, moment: 0, up_frac: 1 };
/** Ways in heights of a cell from speeds, m/s, over a time. */
const ways = (up_ms: ArrayLike<number>, time_s: number): Float64Array =>
  Float64Array.from(up_ms, (ms) => (ms * time_s) / 0.25);
const none = (cells: number): Float64Array => new Float64Array(cells);
const sum = (values: ArrayLike<number>): number => Array.from(values).reduce((a, b) => a + b, 0);

const amounts = fc.array(fc.oneof(fc.constant(0), fc.double({ min: 0, max: 1e-3, noNaN: true })), {
  minLength: CELLS,
  maxLength: CELLS,
});
const speeds = fc.array(fc.oneof(fc.constant(0), fc.double({ min: -1.5, max: 1.5, noNaN: true })), {
  minLength: CELLS,
  maxLength: CELLS,
});
const bottom = fc.double({ min: (CELLS - 0.5) * 0.25, max: (CELLS + 0.5) * 0.25, noNaN: true });
const face = fc.integer({ min: 0, max: CELLS });

test('whatever the speeds, all of it is somewhere, none is negative, and origins stay within their bounds', () => {
  fc.assert(
    fc.property(amounts, speeds, bottom, face, (start, up, bottom_m, at) => {
      const field = Float64Array.from(start);
      // Origins from 3 to 9 m.
      const moment = Float64Array.from(start, (a, i) => a * (3 + (6 * i) / CELLS));
      const column = fullColumn(CELLS, 0.25, bottom_m);
      const work = createFieldWork(CELLS);
      const before = sum(field) + 2e-4;
      const momentBefore = sum(moment) + 2e-4 * 9;
      work.way.set(ways(up, 1));
      carryField(field, moment, 0, column, { face: at, amount: 2e-4, moment: 2e-4 * 9, up_frac: 1 }, work);
      const { ends } = work;
      const after = sum(field) + ends[TOP] + ends[BOTTOM];
      const momentAfter = sum(moment) + ends[TOP_MOMENT] + ends[BOTTOM_MOMENT];
      expect(Math.abs(after / before - 1)).toBeLessThan(1e-12);
      expect(Math.abs(momentAfter / momentBefore - 1)).toBeLessThan(1e-12);
      for (let i = 0; i < CELLS; i++) {
        expect(field[i]).toBeGreaterThanOrEqual(0);
        expect(moment[i]).toBeGreaterThanOrEqual(3 * field[i] * (1 - 1e-9));
        expect(moment[i]).toBeLessThanOrEqual(9 * field[i] * (1 + 1e-9));
      }
    }),
    { seed: 7, numRuns: 1000 },
  );
});

test('a long step equals the sum of its parts in steady flow, for the amount that left', () => {
  const column = fullColumn(CELLS, 0.25, 10);
  const up = new Float64Array(CELLS).fill(0.3);
  const once = new Float64Array(CELLS).fill(1);
  const work = createFieldWork(CELLS);
  work.way.set(ways(up, 10));
  carryField(once, none(CELLS), 0, column, NO_ENTRY, work);
  const atOnce = work.ends[TOP];
  const parts = new Float64Array(CELLS).fill(1);
  let inParts = 0;
  for (let t = 0; t < 10; t++) {
    work.way.set(ways(up, 1));
    carryField(parts, none(CELLS), 0, column, NO_ENTRY, work);
    inParts += work.ends[TOP];
  }
  expect(atOnce).toBeCloseTo(12, 9);
  expect(inParts).toBeCloseTo(12, 6);
});

test('grains that rise into ones that sink meet at the edge between them and stay', () => {
  const column = fullColumn(4, 0.25, 1);
  const field = Float64Array.from([0, 1, 1, 0]);
  const work = createFieldWork(4);
  work.way.set(ways([-0.3, -0.3, 0.3, 0.3], 5));
  carryField(field, none(4), 0, column, NO_ENTRY, work);
  expect(sum(field)).toBeCloseTo(2, 12);
  expect(work.ends[TOP] + work.ends[BOTTOM]).toBe(0);
  expect(field[0] + field[3]).toBe(0);
});

test('what enters at the bit fills the gap below the stream, in plug flow', () => {
  const column = fullColumn(8, 0.25, 2);
  const field = new Float64Array(8).fill(0.25);
  const work = createFieldWork(8);
  work.way.fill(0.6 / 0.25, 0, 8);
  carryField(field, none(8), 0, column, { face: 8, amount: 0.6, moment: 0, up_frac: 1 }, work);
  // A column of even load that takes in fluid of the same load keeps it.
  for (const amount of field) expect(amount).toBeCloseTo(0.25, 12);
  expect(work.ends[TOP]).toBeCloseTo(0.6, 12);
});

describe('a pulse over 20 m with cells of .25 m', () => {
  for (const speed of [0.12, 0.287, 0.36, 0.9]) {
    it(`arrives within 2 % of plug flow and spreads by no more than a tenth at ${speed} m/s`, () => {
      const cells = 80;
      const column = fullColumn(cells, 0.25, 20);
      const field = new Float64Array(cells);
      field[cells - 1] = 1;
      const up = new Float64Array(cells).fill(speed);
      const work = createFieldWork(cells);
      let arrived = 0;
      let mean_s = 0;
      let t10 = 0;
      let t90 = 0;
      for (let t = 1; arrived < 1 - 1e-9 && t < 1000; t++) {
        work.way.set(ways(up, 1));
        carryField(field, none(cells), 0, column, NO_ENTRY, work);
        const out = work.ends[TOP];
        mean_s += out * (t - 0.5);
        if (arrived < 0.1 && arrived + out >= 0.1) t10 = t - 1 + (0.1 - arrived) / out;
        if (arrived < 0.9 && arrived + out >= 0.9) t90 = t - 1 + (0.9 - arrived) / out;
        arrived += out;
      }
      const plug_s = 19.875 / speed;
      expect(Math.abs(mean_s / plug_s - 1)).toBeLessThan(0.02);
      expect((t90 - t10) / plug_s).toBeLessThan(0.1);
    });
  }
});
