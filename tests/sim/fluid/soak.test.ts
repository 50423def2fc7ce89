// Soaking and rot: nothing lost on the way, right pace, same result however the time is cut.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { SOAKED, SOAKING, SUBSTANCE_COUNT } from '../../../sim/fluid/substances';
import { halfLife_s, soakCells, soakStore, soakTime_s, tickShares } from '../../../sim/fluid/soak';

/** A body of fluid that holds nothing but polymer. */
function store(soaking_kg: number, soaked_kg: number): Float64Array {
  const body = new Float64Array(SUBSTANCE_COUNT);
  body[SOAKING] = soaking_kg;
  body[SOAKED] = soaked_kg;
  return body;
}

test('worked values', () => {
  expect(soakTime_s(25)).toBeCloseTo(300.43, 2);
  expect(halfLife_s(35)).toBeCloseTo(108_000, 6);
  expect(tickShares(25, 900).soak_frac).toBeCloseTo(0.95, 12);
  const body = store(1, 0);
  expect(soakStore(body, { soak_frac: 0.1, rot_frac: 0, swell_frac: 0 })).toBe(0);
  expect([body[SOAKING], body[SOAKED]]).toEqual([0.9, 0.1]);
});

test('powder is 95 % soaked after a quarter of an hour of one-second ticks at 25 C (common practice, no source)', () => {
  const body = store(1, 0);
  const shares = tickShares(25, 1);
  for (let tick = 0; tick < 900; tick++) soakStore(body, shares);
  expect(body[SOAKING]).toBeCloseTo(0.05, 9);
  expect(body[SOAKED]).toBeGreaterThan(0.945);
});

test('cold water (10 C) takes twice the time', () => {
  expect(soakTime_s(10) / soakTime_s(25)).toBeCloseTo(2, 12);
});

test('half of the soaked polymer is gone after 2.5 days at 25 C', () => {
  const body = store(0, 1);
  const shares = tickShares(25, 60);
  for (let minute = 0; minute < 2.5 * 24 * 60; minute++) soakStore(body, shares);
  expect(body[SOAKED]).toBeCloseTo(0.5, 9);
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
        const body = store(a, b);
        const shares = tickShares(t, 1);
        let rotted_kg = 0;
        for (let tick = 0; tick < n; tick++) rotted_kg += soakStore(body, shares);
        expect(Math.abs(body[SOAKING] + body[SOAKED] + rotted_kg - a - b)).toBeLessThanOrEqual(1e-12 * (a + b));
        expect(Math.min(body[SOAKING], body[SOAKED], rotted_kg)).toBeGreaterThanOrEqual(0);
      },
    ),
    { seed: 9, numRuns: 200 },
  );
});

test('cells and a single body follow the same law, and cells beyond the count stay', () => {
  const shares = tickShares(18, 1);
  const stride = 4;
  const cells = new Float64Array(SUBSTANCE_COUNT * stride);
  cells.set([0.3, 0, 2, 7], SOAKING * stride);
  cells.set([0, 1, 0.5, 7], SOAKED * stride);
  const bodies = [0, 1, 2].map((i) => store(cells[SOAKING * stride + i], cells[SOAKED * stride + i]));
  let told_kg = 0;
  for (const body of bodies) told_kg += soakStore(body, shares);
  const rotted_kg = soakCells(cells, stride, 3, shares);
  expect(rotted_kg).toBeCloseTo(told_kg, 15);
  bodies.forEach((body, i) => {
    expect(cells[SOAKING * stride + i]).toBe(body[SOAKING]);
    expect(cells[SOAKED * stride + i]).toBe(body[SOAKED]);
  });
  expect([cells[SOAKING * stride + 3], cells[SOAKED * stride + 3]]).toEqual([7, 7]);
});
