// Wells in time: what the laws forbid, and what steps of rate keep.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { createRateSteps, recordRate, RATE_STEPS } from '../../../sim/well/rateSteps';
import { steppedDrawdown_m, theisDrawdown_m, theisU } from '../../../sim/well/theis';
import { wellFunction } from '../../../sim/well/wellFunction';

const T = fc.double({ min: 1e-5, max: 1e-2, noNaN: true });
const S = fc.double({ min: 1e-5, max: 0.3, noNaN: true });
const flow = fc.double({ min: 1e-6, max: 1e-2, noNaN: true });
const time = fc.double({ min: 1, max: 1e7, noNaN: true });
const radius = fc.double({ min: 0.02, max: 100, noNaN: true });

describe('the well function', () => {
  it('falls with u, has no step where the two ways of reckoning meet, and ends in 0', () => {
    fc.assert(
      fc.property(fc.double({ min: -34, max: 3.9, noNaN: true }), (log) => {
        const u = Math.exp(log);
        expect(wellFunction(u * 1.001)).toBeLessThan(wellFunction(u));
      }),
      { seed: 17 },
    );
    expect(Math.abs(wellFunction(1) / wellFunction(1 + 1e-12) - 1)).toBeLessThan(1e-11);
    expect(wellFunction(50.1)).toBe(0);
  });
  it.each([0, -1, NaN])('refuses u %d', (u) => expect(() => wellFunction(u)).toThrow(RangeError));
});

describe('drawdown', () => {
  it('falls with distance, grows with time, doubles with the rate', () => {
    fc.assert(
      fc.property(T, S, flow, time, radius, (T_m2s, S_ratio, flow_m3s, time_s, r_m) => {
        const at = (Q: number, r: number, t: number): number => theisDrawdown_m(Q, T_m2s, S_ratio, r, t);
        const s = at(flow_m3s, r_m, time_s);
        expect(at(flow_m3s, r_m * 1.5, time_s)).toBeLessThanOrEqual(s);
        expect(at(flow_m3s, r_m, time_s * 1.5)).toBeGreaterThanOrEqual(s);
        expect(at(2 * flow_m3s, r_m, time_s)).toBeCloseTo(2 * s, 10);
      }),
      { seed: 17 },
    );
  });
  test('is nothing before pumping begins', () => expect(theisDrawdown_m(1e-3, 1e-3, 0.1, 0.05, 0)).toBe(0));
  test('worked values', () => {
    expect(theisDrawdown_m(1e-3, 1e-3, 1e-3, 10, 86400)).toBeCloseTo(0.6025, 4);
    expect(theisU(60, 2.06e-4, 0.01285, 24)).toBeCloseTo(0.6012, 4);
  });
});

describe('steps of rate', () => {
  it('recovery tends to nothing, and never passes it', () => {
    const steps = createRateSteps();
    recordRate(steps, 0, 4e-4);
    recordRate(steps, 3600, 8e-4);
    recordRate(steps, 7200, 0);
    let before_m = Infinity;
    for (const rest_s of [1, 60, 600, 3600, 86400, 1e7]) {
      const left_m = steppedDrawdown_m(steps, 1e-3, 0.1, 0.05, 7200 + rest_s);
      expect(left_m).toBeGreaterThan(0);
      expect(left_m).toBeLessThan(before_m);
      before_m = left_m;
    }
    expect(before_m).toBeLessThan(1e-3);
  });
  it('worked value of recovery', () => {
    const steps = createRateSteps();
    recordRate(steps, 0, 1e-3);
    recordRate(steps, 86400, 0);
    expect(steppedDrawdown_m(steps, 1e-3, 1e-3, 10, 2 * 86400)).toBeCloseTo(0.0551, 4);
  });
  it('an even rate makes one step, rest before the first nothing, the same second the last word', () => {
    const steps = createRateSteps();
    recordRate(steps, 0, 0);
    expect(steps.count).toBe(0);
    for (let t = 1; t < 9; t++) recordRate(steps, t, 3e-4);
    expect(steps.count).toBe(1);
    recordRate(steps, 9, 1e-4);
    recordRate(steps, 9, 2e-4);
    expect([steps.count, steps.rate_m3s[1]]).toEqual([2, 2e-4]);
    expect(() => recordRate(steps, 8, 0)).toThrow(RangeError);
  });
  it('a full array loses no volume, and little of the drawdown, whatever the crew does', () => {
    fc.assert(
      fc.property(fc.integer({ min: 1, max: 2 ** 31 - 2 }), (seed) => {
        const full = { from_s: [] as number[], rate_m3s: [] as number[] };
        const steps = createRateSteps();
        let state = seed;
        const next = (): number => (state = (state * 16807) % 2147483647) / 2147483647;
        let given_m3 = 0;
        let time_s = 0;
        let rate_m3s = 0;
        for (let i = 0; i < 600; i++) {
          rate_m3s = next() < 0.2 ? 0 : 5e-4 * next();
          recordRate(steps, time_s, rate_m3s);
          full.from_s.push(time_s);
          full.rate_m3s.push(rate_m3s);
          const span_s = 1 + Math.floor(60 * next());
          given_m3 += rate_m3s * span_s;
          time_s += span_s;
        }
        let kept_m3 = 0;
        for (let i = 0; i < steps.count; i++) {
          const end_s = i + 1 < steps.count ? steps.from_s[i + 1] : time_s;
          kept_m3 += steps.rate_m3s[i] * (end_s - steps.from_s[i]);
        }
        expect(steps.count).toBeLessThanOrEqual(RATE_STEPS);
        expect(kept_m3 / given_m3).toBeCloseTo(1, 9);
        const exact = {
          count: 600,
          from_s: Float64Array.from(full.from_s),
          rate_m3s: Float64Array.from(full.rate_m3s),
        };
        const truth_m = steppedDrawdown_m(exact, 5e-4, 0.1, 0.03, time_s);
        const whole_m = theisDrawdown_m(given_m3 / time_s, 5e-4, 0.1, 0.03, time_s);
        expect(Math.abs(steppedDrawdown_m(steps, 5e-4, 0.1, 0.03, time_s) - truth_m)).toBeLessThan(0.01 * whole_m);
      }),
      { numRuns: 40, seed: 11 },
    );
  });
});
