// The stem as a delay line.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { createMakeup } from '../../../sim/fluid/makeup';
import { SOAKED } from '../../../sim/fluid/substances';
import { createParcel, emptyParcel, parcelVolume_m3, type Parcel } from '../../../sim/hole/parcel';
import {
  createStemFill,
  lengthenStem,
  pushThroughStem,
  readStem,
  shortenStem,
  stemVolume_m3,
  type StemFill,
} from '../../../sim/hole/stemFill';

const ROD_m3 = (Math.PI / 4) * 0.0272 * 0.0272 * 1.5;
const sum = (values: ArrayLike<number>): number => Array.from(values).reduce((a, b) => a + b, 0);

const held = (fill: StemFill): number[] => [sum(fill.water_m3), sum(fill.solids_m3), sum(fill.dissolved_kg)];
const carried = (p: Parcel): number[] => [p.water_m3, sum(p.solids_m3), sum(p.dissolved_kg)];

function parcelOf(water_m3: number, soaked_kg = 0, sand_m3 = 0): Parcel {
  const parcel = createParcel();
  parcel.water_m3 = water_m3;
  parcel.dissolved_kg[SOAKED] = soaked_kg;
  parcel.solids_m3[2] = sand_m3;
  return parcel;
}

test('air gives way first; then as much leaves as comes in', () => {
  const fill = createStemFill(2 * ROD_m3);
  const out = createParcel();
  pushThroughStem(fill, parcelOf(ROD_m3), out);
  expect(parcelVolume_m3(out)).toBe(0);
  expect(fill.void_m3).toBeCloseTo(ROD_m3, 15);
  pushThroughStem(fill, parcelOf(0.002), out);
  expect(parcelVolume_m3(out)).toBeCloseTo(0.002 - ROD_m3, 15);
  expect(fill.void_m3).toBe(0);
});

test('a change of fluid reaches the bit after the volume of the stem, within a sixteenth or so', () => {
  const fill = createStemFill(14 * ROD_m3);
  const out = createParcel();
  for (let t = 0; t < 20; t++) pushThroughStem(fill, parcelOf(0.002), out);
  let half_s = 0;
  let polymer_kg = 0;
  for (let t = 1; t <= 20; t++) {
    pushThroughStem(fill, parcelOf(0.002, 0.002), out);
    if (half_s === 0 && out.dissolved_kg[SOAKED] >= 0.001) half_s = t;
    polymer_kg += out.dissolved_kg[SOAKED];
  }
  const delay_s = (14 * ROD_m3) / 0.002;
  expect(delay_s).toBeCloseTo(6.1, 1);
  expect(half_s).toBeGreaterThanOrEqual(6);
  expect(half_s).toBeLessThanOrEqual(8);
  expect(polymer_kg).toBeCloseTo(0.002 * (20 - delay_s), 6);
});

test('a single rod passes more than its own volume in a second', () => {
  const fill = createStemFill(ROD_m3);
  const out = createParcel();
  pushThroughStem(fill, parcelOf(ROD_m3, 1e-3), out);
  pushThroughStem(fill, parcelOf(0.0025, 0), out);
  expect(out.dissolved_kg[SOAKED]).toBeCloseTo(1e-3, 15);
  expect(stemVolume_m3(fill)).toBeCloseTo(ROD_m3, 15);
});

test('random pushes, rods on and rods off lose nothing', () => {
  const push = fc.record({
    kind: fc.constantFrom('push', 'push', 'push', 'on', 'off'),
    water_m3: fc.double({ min: 0, max: 3e-3, noNaN: true }),
    sand_m3: fc.double({ min: 0, max: 1e-4, noNaN: true }),
    soaked_kg: fc.double({ min: 0, max: 1e-3, noNaN: true }),
  });
  fc.assert(
    fc.property(fc.array(push, { minLength: 1, maxLength: 60 }), (acts) => {
      const fill = createStemFill(ROD_m3);
      let rods = 1;
      const out = createParcel();
      const came = [0, 0, 0, 0];
      const went = [0, 0, 0, 0];
      for (const act of acts) {
        emptyParcel(out);
        if (act.kind === 'on') {
          lengthenStem(fill, ROD_m3);
          rods++;
        } else if (act.kind === 'off' && rods > 1) {
          shortenStem(fill, ROD_m3, out);
          rods--;
        } else if (act.water_m3 > 0) {
          const parcel = parcelOf(act.water_m3, act.soaked_kg, act.sand_m3);
          carried(parcel).forEach((x, i) => (came[i] += x));
          pushThroughStem(fill, parcel, out);
        }
        carried(out).forEach((x, i) => {
          expect(x).toBeGreaterThanOrEqual(0);
          went[i] += x;
        });
        expect(Math.abs(stemVolume_m3(fill) + fill.void_m3 - rods * ROD_m3)).toBeLessThan(1e-14);
        for (const x of fill.water_m3) expect(x).toBeGreaterThanOrEqual(0);
      }
      held(fill).forEach((x, i) =>
        expect(Math.abs(came[i] - went[i] - x)).toBeLessThanOrEqual(1e-12 * Math.max(came[i], 1e-6)),
      );
    }),
    { seed: 9, numRuns: 300 },
  );
});

test('reading: density, dose and fines of what stands in the stem', () => {
  const fill = createStemFill(ROD_m3);
  const out = createParcel();
  const parcel = parcelOf(0.97, 1.3 * 0.97, 0.02);
  parcel.solids_m3[1] = 0.01;
  pushThroughStem(fill, parcel, out);
  const reading = { ...createMakeup(), density_kgm3: 0 };
  readStem(fill, reading);
  expect(reading.density_kgm3).toBeCloseTo(998.2 + 0.03 * (2650 - 998.2), 6);
  expect(reading.soaked_gL).toBeCloseTo(1.3, 9);
  expect(reading.fines_frac).toBeCloseTo(0.01, 9);
  readStem(createStemFill(ROD_m3), reading);
  expect(reading).toEqual({ ...createMakeup(), density_kgm3: 998.2 });
});
