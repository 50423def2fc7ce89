// The funnel and the feel: never faster with more dose, smooth, and the words in their order.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { FUNNEL, FUNNEL_VOLUME_m3 } from '../../../sim/materials/funnel';
import { POLYMER } from '../../../sim/materials/polymer';
import { feelWord } from '../../../sim/fluid/feel';
import { entryExcess_ratio, marshFunnel_s } from '../../../sim/fluid/funnel';
import { rheologyInto, type Rheology } from '../../../sim/fluid/rheology';

const fluid = (soaked_gL: number, fines_frac = 0, temperature_C = 25): Rheology =>
  rheologyInto({ K_Pasn: 0, n_ratio: 0 }, soaked_gL, 0, fines_frac, temperature_C);
const seconds = (soaked_gL: number, fines_frac = 0, density_kgm3 = 1000): number => {
  const { K_Pasn, n_ratio } = fluid(soaked_gL, fines_frac);
  return marshFunnel_s(K_Pasn, n_ratio, density_kgm3, FUNNEL_VOLUME_m3);
};

test('worked value: water at 21 C takes 26.0 s', () => {
  const { K_Pasn, n_ratio } = fluid(0, 0, 21);
  expect(marshFunnel_s(K_Pasn, n_ratio, 998, FUNNEL_VOLUME_m3)).toBeCloseTo(26.0, 1);
});

test('the entry costs 1.25 velocity heads of water, less of a fluid that thins with shear', () => {
  expect(entryExcess_ratio(1)).toBeCloseTo(1.25, 12);
  expect(entryExcess_ratio(0.5)).toBeCloseTo(0.881, 3);
});

test('more dose and more fines are never faster', () => {
  const dose = fc.double({ min: 0, max: 8, noNaN: true });
  const fines = fc.double({ min: 0, max: 0.3, noNaN: true });
  fc.assert(
    fc.property(dose, dose, fines, fines, (a, b, f, g) => {
      expect(seconds(Math.max(a, b), f)).toBeGreaterThanOrEqual(seconds(Math.min(a, b), f) - 1e-6);
      expect(seconds(a, Math.max(f, g))).toBeGreaterThanOrEqual(seconds(a, Math.min(f, g)) - 1e-6);
    }),
    { seed: 10, numRuns: 150 },
  );
});

test('no flat spot and no jump from water to a syrup', () => {
  // Steps of .1 mPa s: each adds at least .04 s, and no step differs from its neighbour by .02 s.
  const viscosities = Array.from({ length: 300 }, (_, i) => 0.0008 + i * 0.0001);
  const times = viscosities.map((mu) => marshFunnel_s(mu, 1, 1000, FUNNEL_VOLUME_m3));
  const slopes = times.slice(1).map((t, i) => t - times[i]);
  for (const slope of slopes) expect(slope).toBeGreaterThan(0.04);
  slopes.slice(1).forEach((slope, i) => expect(Math.abs(slope - slopes[i])).toBeLessThan(0.02));
});

test('a heavier fluid of the same thickness is faster, a larger cup slower', () => {
  expect(seconds(2, 0, 1200)).toBeLessThan(seconds(2, 0, 1000));
  const { K_Pasn, n_ratio } = fluid(1);
  expect(marshFunnel_s(K_Pasn, n_ratio, 1000, 1e-3)).toBeGreaterThan(marshFunnel_s(K_Pasn, n_ratio, 1000, 9e-4));
});

test('even a jelly gives a finite time', () => {
  expect(Number.isFinite(seconds(30))).toBe(true);
});

test('nobody waits for a paste: it reads an hour, whatever it is', () => {
  for (const K_Pasn of [200, 1e4, 1e9, 1e30]) expect(marshFunnel_s(K_Pasn, 0.2, 1100, FUNNEL_VOLUME_m3)).toBe(3600);
});

test('refuses a cup larger than the funnel', () => {
  expect(() => marshFunnel_s(0.001, 1, 1000, FUNNEL.filled_m3)).toThrow(RangeError);
  expect(() => marshFunnel_s(0.001, 1, 1000, 0)).toThrow(RangeError);
});

const wordAt = (soaked_gL: number): string => feelWord(fluid(soaked_gL), soaked_gL);

test('the working dose is slick, a thin one slightly slick, a thick one stringy, water watery', () => {
  expect(wordAt(0)).toBe('watery');
  expect(wordAt(POLYMER.workingDose_gL / 2)).toBe('slightlySlick');
  expect(wordAt(POLYMER.workingDose_gL)).toBe('slick');
  expect(wordAt(POLYMER.thickDose_gL)).toBe('stringy');
});

test('the words keep their order as the dose grows', () => {
  const order = ['watery', 'slightlySlick', 'slick', 'stringy'];
  let last = 0;
  for (let c = 0; c <= 5; c += 0.05) {
    const rank = order.indexOf(wordAt(c));
    expect(rank).toBeGreaterThanOrEqual(last);
    last = rank;
  }
  expect(last).toBe(3);
});

test('clay alone never pulls strings: as thick as that, it is creamy', () => {
  const mud = rheologyInto({ K_Pasn: 0, n_ratio: 0 }, 0, 64, 0, 25);
  expect(feelWord(mud, 0)).toBe('creamy');
  expect(feelWord(mud, POLYMER.thickDose_gL)).toBe('stringy');
});
