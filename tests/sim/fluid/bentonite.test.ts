// Bentonite: nothing without it, no jumps, thicker with more, slow to swell, spoilt by salt.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { apparentViscosity_Pas } from '../../../sim/fluid/apparent';
import { addBentonite, saltKeeps_frac, swellTime_s } from '../../../sim/fluid/bentonite';
import { marshFunnel_s } from '../../../sim/fluid/funnel';
import { createMakeup, makeupInto, type FluidMakeup } from '../../../sim/fluid/makeup';
import { rheologyInto, rheologyOf, type Rheology } from '../../../sim/fluid/rheology';
import { swellCells, tickShares } from '../../../sim/fluid/soak';
import { BENTONITE, SUBSTANCE_COUNT, SWELLING } from '../../../sim/fluid/substances';
import { FUNNEL_VOLUME_m3 } from '../../../sim/materials/funnel';

const fluid = (soaked_gL: number, bentonite_gL: number, fines_frac = 0, temperature_C = 25): Rheology =>
  rheologyInto({ K_Pasn: 0, n_ratio: 0 }, soaked_gL, bentonite_gL, fines_frac, temperature_C);
/** One cubic metre. */
function made(bentonite_gL: number, swelling_gL: number, salt_gL: number, fines_frac: number): FluidMakeup {
  const makeup = createMakeup();
  makeupInto(makeup, 0, bentonite_gL, swelling_gL, salt_gL, 1, fines_frac, 0);
  return makeup;
}

const dose = fc.double({ min: 0, max: 6, noNaN: true });
const bags = fc.double({ min: 0, max: 150, noNaN: true });
const warmth = fc.double({ min: 0, max: 40, noNaN: true });
/** 0.1 to 3000 1/s, evenly by decades. */
const shear = fc.double({ min: -1, max: 3.4771, noNaN: true }).map((decades) => Math.pow(10, decades));

test('worked values', () => {
  const water: Rheology = { K_Pasn: 0.00089, n_ratio: 1 };
  addBentonite(water, 64);
  expect(water.K_Pasn).toBeCloseTo(0.7965, 4);
  expect(water.n_ratio).toBeCloseTo(0.4409, 4);
  expect(swellTime_s(25)).toBeCloseTo(1964.4, 1);
  expect(saltKeeps_frac(8)).toBeCloseTo(0.5, 12);
  const makeup = made(40, 10, 8, 0);
  expect(makeup.activeBentonite_gL).toBeCloseTo(20, 12);
  expect(makeup.plainFines_frac).toBeCloseTo(30 / 2600, 12);
  expect(makeup.thickFines_frac).toBeCloseTo(150 / 2600, 12);
});

test('no bentonite is exactly the fluid without it', () => {
  fc.assert(
    fc.property(dose, warmth, (c, t) => {
      const plain = fluid(c, 0, 0.02, t);
      const joined = { ...plain };
      addBentonite(joined, 0);
      expect(joined).toEqual(plain);
    }),
    { seed: 41 },
  );
});

test('a trace is next to nothing, with polymer and without', () => {
  for (const c of [0, 0.3, 1.3, 4]) {
    const plain = fluid(c, 0);
    const trace = fluid(c, 1e-3);
    expect(Math.abs(trace.K_Pasn / plain.K_Pasn - 1)).toBeLessThan(1e-10);
    expect(Math.abs(trace.n_ratio - plain.n_ratio)).toBeLessThan(1e-10);
  }
});

test('no jump anywhere: a hair more of either changes K and n by a hair', () => {
  fc.assert(
    fc.property(dose, bags, warmth, (c, b, t) => {
      const here = fluid(c, b, 0, t);
      const there = fluid(c + 1e-7, b + 1e-6, 0, t);
      expect(Math.abs(there.K_Pasn / here.K_Pasn - 1)).toBeLessThan(1e-4);
      expect(Math.abs(there.n_ratio - here.n_ratio)).toBeLessThan(1e-5);
    }),
    { seed: 42, numRuns: 1000 },
  );
});

test('more of either is never thinner at any shear rate between a still pit and the funnel', () => {
  fc.assert(
    fc.property(dose, dose, bags, bags, shear, (c, d, a, b, g) => {
      const less = apparentViscosity_Pas(fluid(Math.min(c, d), Math.min(a, b)), g);
      const more = apparentViscosity_Pas(fluid(Math.max(c, d), Math.max(a, b)), g);
      expect(more).toBeGreaterThanOrEqual(less * (1 - 1e-9));
    }),
    { seed: 43, numRuns: 3000 },
  );
});

test('more bentonite is never faster through the funnel, its weight left aside', () => {
  let last_s = 0;
  for (let b = 0; b <= 100; b += 2) {
    const { K_Pasn, n_ratio } = fluid(0, b);
    const time_s = marshFunnel_s(K_Pasn, n_ratio, 1000, FUNNEL_VOLUME_m3);
    expect(time_s).toBeGreaterThanOrEqual(last_s - 1e-6);
    last_s = time_s;
  }
});

test('a bog of it stays finite', () => {
  const { K_Pasn, n_ratio } = fluid(10, 2000, 0.5, 0);
  expect(Number.isFinite(K_Pasn) && n_ratio >= 0.35).toBe(true);
});

test('60 % has swollen after half an hour at 25 C, most after four hours, and cold water takes longer', () => {
  const swollen = (time_s: number, temperature_C: number): number => {
    const store = new Float64Array(SUBSTANCE_COUNT);
    store[SWELLING] = 1;
    const shares = tickShares(temperature_C, 1);
    for (let tick = 0; tick < time_s; tick++) swellCells(store, 1, 1, shares);
    expect(store[BENTONITE] + store[SWELLING]).toBeCloseTo(1, 12);
    return store[BENTONITE];
  };
  expect(swollen(1800, 25)).toBeCloseTo(0.6, 9);
  expect(swollen(4 * 3600, 25)).toBeGreaterThan(0.99);
  expect(swollen(3600, 10)).toBeCloseTo(0.6, 9);
});

test('salt takes the thickness and leaves the clay: a little hardly, sea water nearly all', () => {
  expect(saltKeeps_frac(0)).toBe(1);
  expect(saltKeeps_frac(1)).toBeGreaterThan(0.97);
  expect(saltKeeps_frac(35)).toBeLessThan(0.06);
  const sea = made(60, 0, 35, 0);
  expect(rheologyOf({ K_Pasn: 0, n_ratio: 0 }, sea, 25).K_Pasn).toBeLessThan(0.01 * fluid(0, 60).K_Pasn);
  expect(sea.activeBentonite_gL + sea.plainFines_frac * 2600).toBeCloseTo(60, 9);
});

test('clay of the site thickens more than silt, and far less than bentonite of the same weight', () => {
  const thick = (clay_frac: number, silt_frac: number, bentonite_gL: number): number => {
    const makeup = createMakeup();
    makeupInto(makeup, 0, bentonite_gL, 0, 0, 1, clay_frac + silt_frac, clay_frac);
    return rheologyOf({ K_Pasn: 0, n_ratio: 0 }, makeup, 25).K_Pasn;
  };
  expect(thick(0.05, 0, 0)).toBeGreaterThan(1.3 * thick(0, 0.05, 0));
  expect(thick(0, 0, 60)).toBeGreaterThan(10 * thick(60 / 2650, 0, 0));
  // Never thinner with more of either, into a paste and beyond.
  for (let c = 0; c < 0.5; c += 0.01) {
    expect(thick(c + 0.01, 0, 0)).toBeGreaterThanOrEqual(thick(c, 0, 0));
    expect(thick(c, 0.01, 0)).toBeGreaterThanOrEqual(thick(c, 0, 0));
  }
});
