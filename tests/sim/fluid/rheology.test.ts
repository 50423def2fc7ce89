// Laws of the fluid's thickness: exactly water without polymer, no jumps, thicker with dose, fines and cold.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { waterViscosity_Pas } from '../../../sim/materials/water';
import { apparentViscosity_Pas, fallingShear_1s, LEAST_SHEAR_1s } from '../../../sim/fluid/apparent';
import { mixtureDensity_kgm3 } from '../../../sim/fluid/density';
import { finesThickening_ratio, rheologyInto, type Rheology } from '../../../sim/fluid/rheology';

const fluid = (soaked_gL: number, fines_frac: number, temperature_C: number): Rheology =>
  rheologyInto({ K_Pasn: 0, n_ratio: 0 }, soaked_gL, 0, fines_frac, temperature_C);

const dose = fc.double({ min: 0, max: 10, noNaN: true });
const fines = fc.double({ min: 0, max: 0.4, noNaN: true });
const warmth = fc.double({ min: 0, max: 40, noNaN: true });

test('worked values', () => {
  const working = fluid(1.3, 0, 25);
  expect(working.K_Pasn).toBeCloseTo(0.08107, 5);
  expect(working.n_ratio).toBeCloseTo(0.6919, 4);
  expect(finesThickening_ratio(0.1)).toBeCloseTo(1.3145, 4);
  expect(apparentViscosity_Pas({ K_Pasn: 0.5, n_ratio: 0.5 }, 4)).toBeCloseTo(0.25, 12);
  expect(fallingShear_1s(0.03, 0.01, 4)).toBeCloseTo(5, 12);
  expect(mixtureDensity_kgm3(1000, 0.05, 2650)).toBeCloseTo(1082.5, 10);
});

test('the working dose has K .08 within 2 %, the thick dose .26', () => {
  expect(Math.abs(fluid(1.3, 0, 25).K_Pasn / 0.08 - 1)).toBeLessThan(0.02);
  expect(Math.abs(fluid(2.5, 0, 25).K_Pasn / 0.26 - 1)).toBeLessThan(0.02);
});

test('without polymer and fines it is exactly water', () => {
  fc.assert(
    fc.property(warmth, (t) => {
      expect(fluid(0, 0, t)).toEqual({ K_Pasn: waterViscosity_Pas(t), n_ratio: 1 });
    }),
    { seed: 5 },
  );
});

test('a trace of polymer is next to water: no jump at nothing', () => {
  for (const t of [5, 15, 25, 35]) {
    const water = fluid(0, 0, t);
    const trace = fluid(1e-9, 0, t);
    expect(Math.abs(trace.K_Pasn / water.K_Pasn - 1)).toBeLessThan(1e-10);
    expect(Math.abs(trace.n_ratio - 1)).toBeLessThan(1e-10);
  }
});

test('no jump anywhere: a hair more of anything changes K and n by a hair', () => {
  fc.assert(
    fc.property(dose, fines, warmth, (c, f, t) => {
      const here = fluid(c, f, t);
      const there = fluid(c + 1e-7, f + 1e-8, t + 1e-7);
      expect(Math.abs(there.K_Pasn / here.K_Pasn - 1)).toBeLessThan(1e-5);
      expect(Math.abs(there.n_ratio - here.n_ratio)).toBeLessThan(1e-5);
    }),
    { seed: 6, numRuns: 1000 },
  );
});

test('more dose: K rises, n falls, and no shear rate up to 5e4 1/s shows it thinner', () => {
  fc.assert(
    fc.property(dose, dose, warmth, fc.double({ min: -1, max: 4.7, noNaN: true }), (a, b, t, decades) => {
      const less = fluid(Math.min(a, b), 0, t);
      const more = fluid(Math.max(a, b), 0, t);
      expect(more.K_Pasn).toBeGreaterThanOrEqual(less.K_Pasn);
      expect(more.n_ratio).toBeLessThanOrEqual(less.n_ratio);
      const shear_1s = Math.pow(10, decades);
      const thin = apparentViscosity_Pas(less, shear_1s);
      expect(apparentViscosity_Pas(more, shear_1s)).toBeGreaterThanOrEqual(thin * (1 - 1e-12));
    }),
    { seed: 7, numRuns: 3000 },
  );
});

test('more fines and colder: thicker', () => {
  fc.assert(
    fc.property(dose, fines, fines, warmth, warmth, (c, f1, f2, t1, t2) => {
      expect(fluid(c, Math.max(f1, f2), t1).K_Pasn).toBeGreaterThanOrEqual(fluid(c, Math.min(f1, f2), t1).K_Pasn);
      expect(fluid(c, f1, Math.min(t1, t2)).K_Pasn).toBeGreaterThanOrEqual(fluid(c, f1, Math.max(t1, t2)).K_Pasn);
    }),
    { seed: 8, numRuns: 500 },
  );
});

test('stays finite and positive far outside its range', () => {
  for (const c of [-1, 0, 40, 1000]) {
    for (const f of [-0.1, 0, 0.6, 2]) {
      const { K_Pasn, n_ratio } = fluid(c, f, -20);
      expect(Number.isFinite(K_Pasn) && K_Pasn > 0).toBe(true);
      expect(n_ratio).toBeGreaterThanOrEqual(0.35);
      expect(n_ratio).toBeLessThanOrEqual(1);
    }
  }
});

test('apparent viscosity levels off below the least shear rate', () => {
  const thick = fluid(3, 0, 25);
  expect(apparentViscosity_Pas(thick, 0)).toBe(apparentViscosity_Pas(thick, LEAST_SHEAR_1s));
});
