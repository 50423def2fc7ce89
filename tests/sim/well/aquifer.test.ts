// What a screen stands in: whole aquifers and parts of them, free tables, cover, clay, two sands, the dry month.
import { describe, expect, test } from 'vitest';
import { aquiferOf } from '../../../sim/well/aquifer';
import { allowedDrawdown_m } from '../../../sim/well/lift';
import { partialSkin_ratio } from '../../../sim/well/partial';
import { largestYield_m3s, responseAfter_sm2, type Intake } from '../../../sim/well/yield';

const DAY_s = 86400;
const SAND: Intake = { T_m2s: 1e-3, S_ratio: 0.1, radius_m: 0.03, skin_ratio: 0, wellLoss_s2m5: 0, freeThickness_m: 0 };

describe('what a screen stands in', () => {
  const layer = (top_m: number, bottom_m: number, K_ms: number, Sy_frac: number) => ({
    top_m,
    bottom_m,
    K_ms,
    Sy_frac,
  });
  const layers = [
    layer(0, 5, 1e-9, 0.03),
    layer(5, 15, 1e-3, 0.25),
    layer(15, 18, 1e-9, 0.03),
    layer(18, 24, 5e-4, 0.2),
    layer(24, 40, 1e-9, 0.03),
  ];
  const heads = [
    { top_m: 5, bottom_m: 15, head_m: 6 },
    { top_m: 18, bottom_m: 24, head_m: 4 },
  ];
  const at = (top_m: number, bottom_m: number, fall_m = 0) => aquiferOf(layers, heads, 6, fall_m, top_m, bottom_m);

  test('the lower part of a sand with a free table', () => {
    const found = at(12, 15);
    expect(found.T_m2s).toBeCloseTo(9e-3, 12);
    expect(found.screened_m2s).toBeCloseTo(3e-3, 12);
    expect([found.thickness_m, found.wetScreen_m]).toEqual([9, 3]);
    expect(found.level_m).toBeCloseTo(6, 12);
    expect([found.free, found.atAnEnd, found.S_ratio]).toEqual([true, true, 0.25]);
  });
  test('a sand under clay with its own head', () => {
    const found = at(19, 22);
    expect(found.T_m2s).toBeCloseTo(3e-3, 12);
    expect(found.screened_m2s).toBeCloseTo(1.5e-3, 12);
    expect(found.level_m).toBeCloseTo(4, 12);
    expect([found.free, found.atAnEnd]).toEqual([false, false]);
    expect(found.S_ratio).toBeCloseTo(6 * 2e-4, 12);
  });
  test('clay alone yields next to nothing', () => {
    const found = at(25, 28);
    expect(found.T_m2s).toBeCloseTo(3e-9, 15);
    expect(found.screened_m2s).toBe(found.T_m2s);
    const well = { ...SAND, T_m2s: found.T_m2s, S_ratio: found.S_ratio };
    expect(largestYield_m3s(well, 15, responseAfter_sm2(well, DAY_s)) * 60000).toBeLessThan(0.01);
  });
  test('half a screen in clay draws as much as the other half alone', () => {
    expect(at(14, 16).screened_m2s).toBeCloseTo(at(14, 15).screened_m2s, 8);
    expect(at(14, 16).wetScreen_m).toBe(2);
  });
  test('both sands: their sum, and a level between theirs', () => {
    const found = at(10, 20);
    expect(found.T_m2s).toBeCloseTo(9e-3 + 3e-3 + 3e-9, 12);
    expect(found.level_m).toBeCloseTo((6 * 5e-3 + 4 * 1e-3) / 6e-3, 9);
  });
  test('half the screen above the lowest level loses yield then', () => {
    const now = at(7, 13);
    const dry = at(7, 13, 4);
    expect(dry.level_m).toBeCloseTo(10, 12);
    expect(dry.wetScreen_m).toBeCloseTo(3, 12);
    expect(dry.screened_m2s).toBeCloseTo(now.screened_m2s / 2, 12);
    const yieldOf = (found: typeof now): number => {
      const skin_ratio = partialSkin_ratio(found.screened_m2s / found.T_m2s, found.thickness_m, 0.03, found.atAnEnd, 7);
      const well = {
        ...SAND,
        T_m2s: found.T_m2s,
        S_ratio: found.S_ratio,
        skin_ratio,
        freeThickness_m: found.thickness_m,
      };
      const allowed_m = allowedDrawdown_m(found.level_m, 7, 13, found.thickness_m, 45);
      return largestYield_m3s(well, allowed_m, responseAfter_sm2(well, DAY_s));
    };
    expect(yieldOf(dry)).toBeLessThan(0.6 * yieldOf(now));
  });
  test('a screen above the water has none of it', () => {
    const found = at(5.2, 5.8);
    expect([found.screened_m2s, found.wetScreen_m, found.T_m2s]).toEqual([0, 0, 0]);
  });
});
