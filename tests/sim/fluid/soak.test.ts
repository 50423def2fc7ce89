// Soaking and rot: nothing lost on the way, right pace, same result however the time is cut.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { halfLife_s, soakCells, soakStore, soakTime_s, tickShares } from '../../../sim/fluid/soak';

test('worked values', () => {
  expect(soakTime_s(25)).toBeCloseTo(300.43, 2);
  expect(halfLife_s(35)).toBeCloseTo(108_000, 6);
  expect(tickShares(25, 900).soak_frac).toBeCloseTo(0.95, 12);
  const store = { soaking_kg: 1, soaked_kg: 0 };
  expect(soakStore(store, { soak_frac: 0.1, rot_frac: 0 })).toBe(0);
  expect(store).toEqual({ soaking_kg: 0.9, soaked_kg: 0.1 });
});

test('powder is 95 % soaked after a quarter of an hour of one-second ticks at 25 C (common practice, no source)', () => {
  const store = { soaking_kg: 1, soaked_kg: 0 };
  const shares = tickShares(25, 1);
  for (let tick = 0; tick < 900; tick++) soakStore(store, shares);
  expect(store.soaking_kg).toBeCloseTo(0.05, 9);
  expect(store.soaked_kg).toBeGreaterThan(0.945);
});

test('cold water (10 C) takes twice the time', () => {
  expect(soakTime_s(10) / soakTime_s(25)).toBeCloseTo(2, 12);
});

test('half of the soaked polymer is gone after 2.5 days at 25 C', () => {
  const store = { soaking_kg: 0, soaked_kg: 1 };
  const shares = tickShares(25, 60);
  for (let minute = 0; minute < 2.5 * 24 * 60; minute++) soakStore(store, shares);
  expect(store.soaked_kg).toBeCloseTo(0.5, 9);
});

test('mass is neither made nor lost but by rot, whose mass is told', () => {
  const mass = fc.double({ min: 0, max: 10, noNaN: true });
  fc.assert(
    fc.property(
      mass,
      mass,
      fc.double({ min: 0, max: 45, noNaN: true }),
      fc.integer({ min: 1, max: 300 }),
      (a, b, t, n) => {
        const store = { soaking_kg: a, soaked_kg: b };
        const shares = tickShares(t, 1);
        let rotted_kg = 0;
        for (let tick = 0; tick < n; tick++) rotted_kg += soakStore(store, shares);
        expect(Math.abs(store.soaking_kg + store.soaked_kg + rotted_kg - a - b)).toBeLessThanOrEqual(1e-12 * (a + b));
        expect(Math.min(store.soaking_kg, store.soaked_kg, rotted_kg)).toBeGreaterThanOrEqual(0);
      },
    ),
    { seed: 9, numRuns: 200 },
  );
});

test('cells and a store follow the same law', () => {
  const shares = tickShares(18, 1);
  const soaking = new Float64Array([0.3, 0, 2, 7]);
  const soaked = new Float64Array([0, 1, 0.5, 7]);
  const stores = [0, 1, 2].map((i) => ({ soaking_kg: soaking[i], soaked_kg: soaked[i] }));
  let told_kg = 0;
  for (const store of stores) told_kg += soakStore(store, shares);
  const rotted_kg = soakCells(soaking, soaked, 3, shares);
  expect(rotted_kg).toBeCloseTo(told_kg, 15);
  stores.forEach((store, i) => {
    expect(soaking[i]).toBe(store.soaking_kg);
    expect(soaked[i]).toBe(store.soaked_kg);
  });
  expect([soaking[3], soaked[3]]).toEqual([7, 7]);
});
