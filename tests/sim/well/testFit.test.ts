// A yield test read back: the T that the ground has, from the drawdown and from the recovery.
import { describe, expect, test } from 'vitest';
import { fitTest } from '../../../sim/well/testFit';
import { freeDrawdown_m } from '../../../sim/well/thinAquifer';
import type { WellTest } from '../../../sim/well/wellTest';
import { pumpedWell, type PumpedWell } from './pumpedWell';

const LITRE_A_MINUTE_m3s = 1 / 60000;
const WELL: PumpedWell = { T_m2s: 5e-4, S_ratio: 0.1, r_m: 0.0315, casing_m: 0.0285, skin: 3, loss_s2m5: 1e4 };

/** Readings every ten seconds at first, later every minute, of a test of equal steps and its recovery. */
function tested(well: PumpedWell, rates_Lmin: number[], step_s: number, recovery_s: number, free_m = 0): WellTest {
  const pumped_s = step_s * rates_Lmin.length;
  const rateAt_Lmin = (t: number): number => (t < pumped_s ? rates_Lmin[Math.floor(t / step_s)] : 0);
  const fall_m = pumpedWell(well, (t) => rateAt_Lmin(t) * LITRE_A_MINUTE_m3s, pumped_s + recovery_s);
  const rows = [];
  for (let time_s = 10; time_s <= pumped_s + recovery_s; time_s += (time_s % pumped_s || pumped_s) < 300 ? 10 : 60) {
    const drawn_m = free_m > 0 ? freeDrawdown_m(fall_m[time_s], free_m) : fall_m[time_s];
    rows.push({ time_s, rate_Lmin: rateAt_Lmin(time_s - 1), level_m: 4 + drawn_m });
  }
  const lowest_m = 4 + Math.max(...fall_m);
  return {
    lift: 'suction',
    tick: 0,
    rates_Lmin,
    step_s,
    recovery_s,
    rows,
    static_m: 4,
    lowest_m,
    recovered_m: 4,
    refusal: null,
    over: true,
  };
}

describe('a test read back', () => {
  test('one step: both lines give T within a tenth, though the casing had its own water, and a skin', () => {
    const fit = fitTest(tested(WELL, [15], 3600, 3600), WELL.casing_m, 0);
    expect(fit.pumpedT_m2s / WELL.T_m2s).toBeGreaterThan(0.9);
    expect(fit.pumpedT_m2s / WELL.T_m2s).toBeLessThan(1.1);
    expect(fit.recoveredT_m2s / WELL.T_m2s).toBeGreaterThan(0.9);
    expect(fit.recoveredT_m2s / WELL.T_m2s).toBeLessThan(1.1);
    expect(fit.specific_m2s).toBeLessThan(WELL.T_m2s);
  });
  test('three steps: the recovery still gives T, by the volume over the last rate', () => {
    const fit = fitTest(tested(WELL, [8, 12, 16], 1800, 3600), WELL.casing_m, 0);
    expect(fit.recoveredT_m2s / WELL.T_m2s).toBeGreaterThan(0.85);
    expect(fit.recoveredT_m2s / WELL.T_m2s).toBeLessThan(1.15);
  });
  test('a free table reads too tight until it is set right after Jacob', () => {
    const thin = tested({ ...WELL, loss_s2m5: 0 }, [15], 3600, 0, 4);
    const raw = fitTest(thin, WELL.casing_m, 0).pumpedT_m2s;
    const right = fitTest(thin, WELL.casing_m, 4).pumpedT_m2s;
    expect(raw).toBeLessThan(0.85 * right);
    expect(right / WELL.T_m2s).toBeGreaterThan(0.9);
    expect(right / WELL.T_m2s).toBeLessThan(1.1);
  });
  test('the same pump, a tighter skin: less for a metre, the same T', () => {
    const clean = fitTest(tested(WELL, [10], 3600, 3600), WELL.casing_m, 0);
    const muddy = fitTest(tested({ ...WELL, skin: 15 }, [10], 3600, 3600), WELL.casing_m, 0);
    expect(muddy.specific_m2s).toBeLessThan(0.5 * clean.specific_m2s);
    expect(muddy.pumpedT_m2s / clean.pumpedT_m2s).toBeGreaterThan(0.85);
  });
  test('a test without readings tells nothing', () => {
    const empty = { ...tested(WELL, [15], 60, 0), rows: [] };
    expect(fitTest(empty, WELL.casing_m, 0)).toEqual({ pumpedT_m2s: 0, recoveredT_m2s: 0, specific_m2s: 0 });
  });
});
