// How a cake grows, where it cannot, and what takes it off.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import {
  capture_frac,
  grownResistance_s,
  keptByInflow_frac,
  keptCake_frac,
  limitedResistance_s,
  MOST_CAKE_m,
} from '../../../../sim/hole/loss/cake';

const size = fc.double({ min: -4, max: 2, noNaN: true }).map((x) => Math.pow(10, x));

describe('capture', () => {
  it('is whole in fine ground, none in open gravel, as the table says between', () => {
    expect(capture_frac(0.001)).toBe(1);
    expect(capture_frac(0.4)).toBe(1);
    expect(capture_frac(Math.sqrt(0.24))).toBeCloseTo(0.575, 10);
    expect(capture_frac(0.6)).toBe(0.15);
    expect(capture_frac(Math.sqrt(0.6))).toBeCloseTo(0.075, 10);
    expect(capture_frac(1)).toBe(0);
    expect(capture_frac(30)).toBe(0);
  });
  it('falls with the grain and never jumps', () => {
    fc.assert(
      fc.property(size, (d) => {
        const here = capture_frac(d);
        const next = capture_frac(d * 1.001);
        expect(next).toBeLessThanOrEqual(here);
        expect(here - next).toBeLessThan(0.003);
        expect(next).toBeGreaterThanOrEqual(0);
      }),
    );
  });
});

describe('growth', () => {
  const given = fc.record({
    before: fc.double({ min: 0, max: 1e5, noNaN: true }),
    rho: fc.double({ min: 1, max: 1e6, noNaN: true }),
    head: fc.double({ min: 0.001, max: 20, noNaN: true }),
    c: fc.double({ min: 0, max: 0.5, noNaN: true }),
    K: fc.double({ min: -9, max: -6, noNaN: true }).map((x) => Math.pow(10, x)),
  });
  it('gives the worked value', () => expect(grownResistance_s(0, 256, 1, 0.01, 1e-7, 300)).toBeCloseTo(7494.2, 1));
  it('is the same in one step as in many', () => {
    fc.assert(
      fc.property(given, ({ before, rho, head, c, K }) => {
        let s = before;
        for (let i = 0; i < 8; i++) s = grownResistance_s(s, rho, head, c, K, 1);
        const once = grownResistance_s(before, rho, head, c, K, 8);
        expect(Math.abs(s - once)).toBeLessThan(1e-9 * (once + rho));
      }),
    );
  });
  it('lays down c times the filtrate, the flow being that of the mean resistance', () => {
    fc.assert(
      fc.property(given, ({ before, rho, head, c, K }) => {
        fc.pre(c > 1e-6);
        const after = grownResistance_s(before, rho, head, c, K, 8);
        const filtrate_m = (8 * head) / (rho + 0.5 * (before + after));
        expect((after - before) * K).toBeCloseTo(c * filtrate_m, 9);
      }),
    );
  });
  it('grows with the root of time on a wall without resistance of its own', () => {
    const at = (t: number): number => grownResistance_s(0, 0, 2, 0.01, 1e-7, t);
    expect(at(1800) / at(450)).toBeCloseTo(2, 12);
  });
  it('stops at the thickest cake and never shrinks', () => {
    expect(limitedResistance_s(0, 1e9, 0, 1e-7)).toBeCloseTo(MOST_CAKE_m / 1e-7, 6);
    expect(limitedResistance_s(500, 600, MOST_CAKE_m, 1e-7)).toBe(500);
    expect(limitedResistance_s(500, 600, MOST_CAKE_m + 1e-9, 1e-7)).toBe(500);
    expect(limitedResistance_s(500, 600, 0.001, 1e-7)).toBe(600);
    expect(grownResistance_s(700, 256, 1, 0, 1e-7, 8)).toBe(700);
  });
});

describe('what takes the cake off', () => {
  const still = (c: number, s: number): number => keptCake_frac(0, false, c, s);
  const rubbed = (shear_Pa: number, s: number): number => keptCake_frac(shear_Pa, false, 0.01, s);
  it('is nothing where a full dose stands still', () => expect(still(0.01, 8)).toBe(1));
  it('is clean water, half in ten minutes', () => {
    expect(still(0, 600)).toBeCloseTo(0.5, 12);
    expect(still(0.005, 600)).toBeCloseTo(Math.SQRT1_2, 12);
  });
  it('is a tenth an hour by the rods', () => expect(keptCake_frac(0, true, 0.02, 3600)).toBeCloseTo(0.9, 12));
  it('is the stream, from 5 Pa on and the more the harder it rubs', () => {
    expect(rubbed(5, 60)).toBe(1);
    expect(rubbed(5.001, 60)).toBeGreaterThan(0.9998);
    expect(rubbed(10, 120)).toBeCloseTo(0.5, 12);
    expect(rubbed(20, 60)).toBeLessThan(rubbed(10, 60));
  });
  it('is ground water from behind, half in 10 s', () => expect(keptByInflow_frac(10)).toBeCloseTo(0.5, 12));
  it('is the same in one step as in many', () => {
    let kept = 1;
    for (let i = 0; i < 75; i++) kept *= keptCake_frac(7, true, 0.002, 8);
    expect(kept / keptCake_frac(7, true, 0.002, 600)).toBeCloseTo(1, 10);
  });
  it('never makes cake', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 1000, noNaN: true }),
        fc.boolean(),
        fc.double({ min: 0, max: 1, noNaN: true }),
        fc.double({ min: 0, max: 60, noNaN: true }),
        (shear, turning, c, dt) => {
          const kept = keptCake_frac(shear, turning, c, dt);
          expect(kept).toBeGreaterThan(0);
          expect(kept).toBeLessThanOrEqual(1);
        },
      ),
    );
  });
});
