// The cake a fluid makes: nothing from water, more and tighter with everything put in, no jumps.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { cakeMakingInto, cakePerFiltrate_ratio, type CakeMaking } from '../../../sim/fluid/cakeMaking';

const cake = (soaked_gL: number, bentonite_gL: number, fines_frac: number): CakeMaking =>
  cakeMakingInto({ perFiltrate_ratio: 0, conductivity_ms: 0 }, soaked_gL, bentonite_gL, fines_frac);
/** Resistance grown per metre of filtrate, s. */
const seal_s = (made: CakeMaking): number => made.perFiltrate_ratio / made.conductivity_ms;

const dose = fc.double({ min: 0, max: 6, noNaN: true });
const bags = fc.double({ min: 0, max: 120, noNaN: true });
const fines = fc.double({ min: 0, max: 0.4, noNaN: true });

test('worked values', () => {
  expect(cake(1.3, 0, 0).perFiltrate_ratio).toBeCloseTo(0.01, 12);
  expect(cake(1.3, 0, 0).conductivity_ms).toBeCloseTo(1e-7, 18);
  expect(cakePerFiltrate_ratio(0.05 / 0.6)).toBeCloseTo(1 / 11, 12);
});

test('clean water lays nothing down', () => expect(cake(0, 0, 0).perFiltrate_ratio).toBe(0));

test('each kind alone has the conductivity of its own cake', () => {
  expect(cake(0, 40, 0).conductivity_ms).toBeCloseTo(1e-9, 20);
  expect(cake(0, 0, 0.05).conductivity_ms).toBeCloseTo(1e-8, 19);
  expect(cake(2, 0, 0).conductivity_ms).toBeCloseTo(1e-7, 18);
});

test('more of anything lays down more and seals better', () => {
  fc.assert(
    fc.property(dose, dose, bags, bags, fines, fines, (c, d, b, e, f, g) => {
      const less = cake(Math.min(c, d), Math.min(b, e), Math.min(f, g));
      const more = cake(Math.max(c, d), Math.max(b, e), Math.max(f, g));
      expect(more.perFiltrate_ratio).toBeGreaterThanOrEqual(less.perFiltrate_ratio);
      if (less.perFiltrate_ratio > 0) expect(seal_s(more)).toBeGreaterThanOrEqual(seal_s(less) * (1 - 1e-12));
    }),
    { seed: 21, numRuns: 1000 },
  );
});

test('no jump: a hair more of anything changes the cake by a hair, and the conductivity stays between its kinds', () => {
  fc.assert(
    fc.property(dose, bags, fines, (c, b, f) => {
      const here = cake(c + 0.01, b, f);
      const there = cake(c + 0.01 + 1e-9, b + 1e-7, f + 1e-10);
      expect(Math.abs(there.perFiltrate_ratio / here.perFiltrate_ratio - 1)).toBeLessThan(1e-4);
      expect(Math.abs(there.conductivity_ms / here.conductivity_ms - 1)).toBeLessThan(1e-3);
      expect(here.conductivity_ms).toBeGreaterThanOrEqual(1e-9 * (1 - 1e-12));
      expect(here.conductivity_ms).toBeLessThanOrEqual(1e-7 * (1 + 1e-12));
    }),
    { seed: 22, numRuns: 1000 },
  );
});

test('a paste, or nonsense below nothing, stays finite', () => {
  for (const made of [cake(0, 5000, 0.9), cake(1000, 0, 2), cake(-1, -1, -1)]) {
    expect(Number.isFinite(made.perFiltrate_ratio) && made.perFiltrate_ratio >= 0).toBe(true);
    expect(made.conductivity_ms).toBeGreaterThan(0);
  }
});
