// The casing's own water against a published solution, and the straight line that a test is read by.
import { describe, expect, it } from 'vitest';
import { groundRate_m3s, storageEnd_s, type CasingTick } from '../../../sim/well/storage';
import { slopePerTenfold, straightLineT_m2s } from '../../../sim/well/straightLine';
import { theisDrawdown_m } from '../../../sim/well/theis';
import { pumpedWell } from './pumpedWell';

/** Modified Bessel functions K0 and K1 from their integral, exp(-x cosh t), by the trapezium. */
function bessel(x: number, order: 0 | 1): number {
  const h = 0.02;
  let sum = 0;
  for (let i = 0; i < 1200; i++) {
    const t = i * h;
    const part = Math.exp(-x * Math.cosh(t)) * (order === 1 ? Math.cosh(t) : 1);
    sum += i === 0 ? part / 2 : part;
    if (part < 1e-18 * sum) break;
  }
  return sum * h;
}

/** Stehfest's weights for ten terms. */
const WEIGHTS = Array.from({ length: 10 }, (_, index) => {
  const factorial = (n: number): number => (n < 2 ? 1 : n * factorial(n - 1));
  const i = index + 1;
  let sum = 0;
  for (let k = Math.floor((i + 1) / 2); k <= Math.min(i, 5); k++)
    sum +=
      (k ** 5 * factorial(2 * k)) /
      (factorial(5 - k) * factorial(k) * factorial(k - 1) * factorial(i - k) * factorial(2 * k - i));
  return ((i + 5) % 2 === 0 ? 1 : -1) * sum;
});

/** Papadopulos and Cooper 1967: drawdown in a wide well, by Stehfest 1970 from its Laplace transform; skin after Moench 1984. */
function wideWell_m(
  Q: number,
  T_m2s: number,
  S_ratio: number,
  r_m: number,
  casing_m: number,
  skin: number,
  t_s: number,
): number {
  let sum = 0;
  WEIGHTS.forEach((weight, index) => {
    const p = ((index + 1) * Math.LN2) / t_s;
    const x = r_m * Math.sqrt((p * S_ratio) / T_m2s);
    const ground = (bessel(x, 0) / (x * bessel(x, 1)) + skin) / (2 * Math.PI * T_m2s);
    sum += (weight * (Q * ground)) / (p * (1 + Math.PI * casing_m * casing_m * p * ground));
  });
  return (sum * Math.LN2) / t_s;
}

/** Levels at some seconds of a well of 63 mm pumped at one rate. */
const pumped = (
  Q: number,
  T_m2s: number,
  S_ratio: number,
  r_m: number,
  casing_m: number,
  skin: number,
  at_s: number[],
) => {
  const levels_m = pumpedWell({ T_m2s, S_ratio, r_m, casing_m, skin, loss_s2m5: 0 }, () => Q, Math.max(...at_s));
  return at_s.map((t_s) => levels_m[t_s]);
};

describe("the casing's own water", () => {
  const AT_s = [10, 30, 60, 180, 600, 1800];
  // At first the ground counts too much: the line of Theis gives the well's own circle, S pi r2, to the ground as well.
  it.each([
    [1e-3, 0.1, 0],
    [1e-4, 0.1, 0],
    [1e-4, 1e-3, 3],
    [3e-5, 0.05, 0],
  ])(
    'T %d, S %d, skin %d: within 7 % of Papadopulos and Cooper at 10 s, 3 % from a minute to half an hour',
    (T_m2s, S_ratio, skin) => {
      const levels = pumped(2e-4, T_m2s, S_ratio, 0.0315, 0.0285, skin, AT_s);
      AT_s.forEach((t_s, i) => {
        const published = wideWell_m(2e-4, T_m2s, S_ratio, 0.0315, 0.0285, skin, t_s);
        expect(Math.abs(levels[i] / published - 1), `${t_s} s: ${levels[i]} and ${published}`).toBeLessThan(
          t_s < 60 ? 0.07 : 0.03,
        );
      });
    },
  );
  it('at first all water comes from the casing, after 25 r2/T nearly all from the ground', () => {
    const [first] = pumped(2e-4, 3e-5, 0.05, 0.0315, 0.0285, 0, [1]);
    expect(first / (2e-4 / (Math.PI * 0.0285 * 0.0285))).toBeGreaterThan(0.75);
    const end_s = Math.ceil(storageEnd_s(0.0285, 3e-5));
    const [late] = pumped(2e-4, 3e-5, 0.05, 0.0315, 0.0285, 0, [end_s]);
    expect(late / theisDrawdown_m(2e-4, 3e-5, 0.05, 0.0315, end_s)).toBeGreaterThan(0.97);
  });
  it('worked value, and a rest that stays a rest', () => {
    const still: CasingTick = {
      pumped_m3s: 3e-4,
      drawdown_m: 0,
      earlier_m: 0,
      before_m3s: 0,
      response_sm2: 1000,
      skin_sm2: 0,
      loss_s2m5: 0,
      section_m2: 0.003,
    };
    expect(groundRate_m3s(still, 1)).toBeCloseTo(7.5e-5, 10);
    expect(groundRate_m3s({ ...still, pumped_m3s: 0 }, 1)).toBe(0);
  });
  it('well loss slows the inflow, and the two ways of the water are alike', () => {
    const tick: CasingTick = {
      pumped_m3s: 0,
      drawdown_m: 2,
      earlier_m: 0,
      before_m3s: 0,
      response_sm2: 1000,
      skin_sm2: 500,
      loss_s2m5: 0,
      section_m2: 0.003,
    };
    const free = groundRate_m3s(tick, 1);
    const lossy = groundRate_m3s({ ...tick, loss_s2m5: 1e6 }, 1);
    expect(lossy).toBeLessThan(free);
    expect(lossy).toBeGreaterThan(0);
    expect(groundRate_m3s({ ...tick, drawdown_m: -2, loss_s2m5: 1e6 }, 1)).toBe(-lossy);
  });
});

describe('the straight line', () => {
  it('reads T from a test in which the casing had its own water, when it looks late enough', () => {
    const at_s = [1, 2, 4, 8, 15, 30, 60, 120, 240, 480, 900, 1800, 3600];
    const levels_m = Float64Array.from(pumped(3e-4, 4e-4, 0.1, 0.0315, 0.0285, 2, at_s));
    const late = slopePerTenfold(Float64Array.from(at_s), levels_m, at_s.length, storageEnd_s(0.0285, 4e-4), 3600);
    expect(straightLineT_m2s(3e-4, late) / 4e-4).toBeCloseTo(1, 1);
    const early = slopePerTenfold(Float64Array.from(at_s), levels_m, at_s.length, 1, 15);
    expect(straightLineT_m2s(3e-4, early) / 4e-4).toBeLessThan(0.6);
  });
  it('finds no slope in one reading', () => {
    expect(slopePerTenfold(Float64Array.of(10, 10), Float64Array.of(1, 2), 2, 1, 100)).toBe(0);
    expect(slopePerTenfold(Float64Array.of(10, 100, 1000), Float64Array.of(1, 1.4, 1.8), 3, 1, 1e4)).toBeCloseTo(
      0.4,
      12,
    );
  });
});
