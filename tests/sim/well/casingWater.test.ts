// The water of the casing in any ground, whatever is drawn: finite, within the casing, and no more out than came in.
import fc from 'fast-check';
import { expect, it } from 'vitest';
import { carryWater, createWaterTick } from '../../../sim/well/casingWater';
import { createRateSteps } from '../../../sim/well/rateSteps';
import { createScreenRing } from '../../../sim/well/ring';
import type { WellState } from '../../../sim/well/wellState';

const SECTION_m2 = 0.00255;

function wellAt(T_m2s: number, S_ratio: number, skin_ratio: number, freeThickness_m: number): WellState {
  return {
    closed: true,
    closedTick: 0,
    casing: 'pvc63',
    section_m2: SECTION_m2,
    bottom_m: 15,
    water_m3: 11 * SECTION_m2,
    level_m: 4,
    chlorine_kg: 0,
    chlorineIn_m3: 0,
    ring: createScreenRing(1),
    intake: { T_m2s, S_ratio, radius_m: 0.0315, skin_ratio, wellLoss_s2m5: 1e4, freeThickness_m },
    rest_m: 4,
    rates: createRateSteps(),
    ground_m3s: 0,
    drawn_m3s: 0,
    still: false,
    stirred: false,
    sand_gL: 0,
    turbidity_NTU: 0,
    sandClass_frac: new Float64Array(8),
    washed_s: new Float64Array(4),
    out_m3: 0,
    in_m3: 0,
    sand_kg: 0,
    clearTold: false,
    brokenTold: false,
    jar: null,
    dip: null,
    test: null,
    disinfection: null,
    headWorks: null,
  };
}

const power = (least: number, most: number): fc.Arbitrary<number> =>
  fc.double({ min: least, max: most, noNaN: true }).map((x) => 10 ** x);

it('stays within the casing and keeps its books', () =>
  fc.assert(
    fc.property(
      power(-11, -1),
      power(-4.5, -0.5),
      fc.double({ min: -1, max: 200, noNaN: true }),
      fc.constantFrom(0, 2, 20),
      fc.array(fc.double({ min: -0.0002, max: 0.001, noNaN: true }), { minLength: 1, maxLength: 6 }),
      (T_m2s, S_ratio, skin_ratio, free_m, rates) => {
        const well = wellAt(T_m2s, S_ratio, skin_ratio, free_m);
        const out = createWaterTick();
        let balance_m3 = well.water_m3;
        let tick = 0;
        for (const rate of rates) {
          for (let i = 0; i < 120; i++) {
            // Pouring stops at the brim.
            carryWater(well, tick++, well.level_m < 0.1 ? Math.max(0, rate) : rate, 1, out);
            balance_m3 += out.ground_m3 - out.drawn_m3;
            expect(Number.isFinite(well.level_m)).toBe(true);
            expect(well.water_m3).toBeGreaterThanOrEqual(-1e-15);
            expect(well.level_m).toBeLessThanOrEqual(15 + 1e-9);
            expect(well.level_m).toBeGreaterThanOrEqual(-0.1);
          }
        }
        expect(Math.abs(balance_m3 - well.water_m3)).toBeLessThan(1e-12);
      },
    ),
    { numRuns: 150 },
  ));

it('drawn from, it never stands above its rest; at rest it stays there', () => {
  for (const T_m2s of [1e-9, 1e-6, 1e-4, 1e-2]) {
    const well = wellAt(T_m2s, 0.1, 0, 10);
    const out = createWaterTick();
    for (let t = 0; t < 600; t++) carryWater(well, t, 1e-4, 1, out);
    expect(well.level_m).toBeGreaterThanOrEqual(4);
    const rested = wellAt(T_m2s, 0.1, 0, 10);
    carryWater(rested, 0, 0, 1, out);
    expect(rested.still).toBe(true);
    expect(rested.level_m).toBe(4);
  }
});
