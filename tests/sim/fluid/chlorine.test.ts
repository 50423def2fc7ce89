// Chlorine against polymer: dose and time count alike, it is used up, it fades, it leaves bentonite alone.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { breakPace, breakPolymer, type BreakLoss } from '../../../sim/fluid/chlorine';
import { BENTONITE, CHLORINE, SOAKED, SOAKING, SUBSTANCE_COUNT } from '../../../sim/fluid/substances';
import { CHLORINE as LAW } from '../../../sim/materials/chlorine';

/** One cubic metre with polymer and chlorine, g/L, left for a while. */
function left(polymer_gL: number, chlorine_gL: number, time_s: number, fines_frac = 0, temperature_C = 25) {
  const store = new Float64Array(SUBSTANCE_COUNT);
  store[SOAKED] = polymer_gL;
  store[CHLORINE] = chlorine_gL;
  store[BENTONITE] = 7;
  store[SOAKING] = 3;
  const pace = breakPace(temperature_C, 1);
  const loss: BreakLoss = { polymer_kg: 0, chlorine_kg: 0 };
  for (let tick = 0; tick < time_s; tick++) breakPolymer(store, 1, 0, 1, fines_frac, pace, loss);
  return { polymer_gL: store[SOAKED], chlorine_gL: store[CHLORINE], store, loss };
}

test('worked values', () => {
  expect(breakPace(25, 1).breaks_m3kg).toBeCloseTo(0.002, 15);
  const { loss } = left(1, 0.5, 1);
  expect(loss.polymer_kg).toBeCloseTo(0.000999, 6);
  expect(loss.polymer_kg * LAW.used_ratio).toBeCloseTo(0.00005, 6);
});

test('with plenty of chlorine it is the law of second order: exp(-k C t)', () => {
  // 10 g/L of chlorine hardly changes beside .01 g/L of polymer in a minute.
  const share = left(0.01, 10, 60).polymer_gL / 0.01;
  expect(Math.abs(share / Math.exp(-LAW.breaks_m3kgs * 10 * 60) - 1)).toBeLessThan(0.02);
});

test('polymer in plenty uses the chlorine up and then stays', () => {
  const { polymer_gL, chlorine_gL } = left(5, 0.05, 24 * 3600);
  expect(chlorine_gL).toBeLessThan(1e-4);
  expect(5 - polymer_gL).toBeGreaterThan(0.7 * (0.05 / LAW.used_ratio));
  expect(5 - polymer_gL).toBeLessThanOrEqual(0.05 / LAW.used_ratio);
});

test('twice the dose does in half the time what the dose does', () => {
  const once = left(0.2, 0.4, 600).polymer_gL;
  const twice = left(0.2, 0.8, 300).polymer_gL;
  expect(Math.abs(twice / once - 1)).toBeLessThan(0.03);
});

test('by itself half of it is gone in twelve hours, sooner in dirty or in warm fluid', () => {
  expect(left(0, 1, LAW.halfLife_s).chlorine_gL).toBeCloseTo(0.5, 9);
  expect(left(0, 1, LAW.halfLife_s / 2, LAW.dirtDoubles_frac).chlorine_gL).toBeCloseTo(0.5, 3);
  expect(left(0, 1, LAW.halfLife_s / 2, 0, 35).chlorine_gL).toBeCloseTo(0.5, 9);
});

test('bentonite and powder not yet soaked are left alone', () => {
  const { store } = left(1, 1, 3600);
  expect([store[BENTONITE], store[SOAKING]]).toEqual([7, 3]);
});

test('nothing negative, and what went is told to the last bit of rounding', () => {
  const amount = fc.double({ min: 0, max: 20, noNaN: true });
  fc.assert(
    fc.property(amount, amount, fc.double({ min: 0, max: 0.5, noNaN: true }), (p, c, f) => {
      const { polymer_gL, chlorine_gL, loss } = left(p, c, 50, f);
      expect(Math.min(polymer_gL, chlorine_gL)).toBeGreaterThanOrEqual(0);
      expect(Math.abs(polymer_gL + loss.polymer_kg - p)).toBeLessThanOrEqual(1e-12 * (1 + p));
      expect(Math.abs(chlorine_gL + loss.chlorine_kg - c)).toBeLessThanOrEqual(1e-12 * (1 + c));
    }),
    { seed: 31, numRuns: 300 },
  );
});

test('without chlorine, or without water, nothing happens', () => {
  expect(left(1, 0, 10).loss).toEqual({ polymer_kg: 0, chlorine_kg: 0 });
  const store = new Float64Array(SUBSTANCE_COUNT).fill(1);
  const loss: BreakLoss = { polymer_kg: 0, chlorine_kg: 0 };
  breakPolymer(store, 1, 0, 0, 0, breakPace(25, 1), loss);
  expect(loss.polymer_kg).toBe(0);
});
