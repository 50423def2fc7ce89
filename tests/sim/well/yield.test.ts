// The yield of a finished well: what must rise, what must fall, what meets at the edges.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { WELL_PUMPS } from '../../../sim/materials/wellPumps';
import { allowedDrawdown_m, deepestDraw_m } from '../../../sim/well/lift';
import { peopleServed } from '../../../sim/well/need';
import { huismanSkin_ratio, kozenyShare_ratio, partialSkin_ratio } from '../../../sim/well/partial';
import { ringSkin_ratio, sharedSkin_ratio } from '../../../sim/well/skin';
import { coveredDrawdown_m, freeDrawdown_m } from '../../../sim/well/thinAquifer';
import { acrossBeds_ms, alongBeds_ms, shared_m, transmissivity_m2s } from '../../../sim/well/transmissivity';
import { slotLoss_s2m5, wellLoss_m } from '../../../sim/well/wellLoss';
import {
  drawdownOf_m,
  largestYield_m3s,
  responseAfter_sm2,
  seasonResponse_sm2,
  wayLogOf,
  type Intake,
} from '../../../sim/well/yield';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const DAY_s = 86400;
const SAND: Intake = {
  T_m2s: 1e-3,
  S_ratio: 0.1,
  radius_m: 0.03,
  skin_ratio: 0,
  wellLoss_s2m5: 0,
  freeThickness_m: 0,
};
const intake = fc.record({
  T_m2s: between(1e-6, 1e-2),
  S_ratio: between(1e-4, 0.3),
  radius_m: between(0.02, 0.06),
  skin_ratio: between(-1, 60),
  wellLoss_s2m5: between(0, 1e6),
  freeThickness_m: fc.oneof(fc.constant(0), between(2, 40)),
});

describe('the largest yield', () => {
  it('draws down just what is allowed', () => {
    fc.assert(
      fc.property(intake, between(0.05, 1), (well, share) => {
        const allowed_m = share * (well.freeThickness_m > 0 ? (2 / 3) * well.freeThickness_m : 10);
        const response = responseAfter_sm2(well, DAY_s);
        const flow_m3s = largestYield_m3s(well, allowed_m, response);
        expect(flow_m3s).toBeGreaterThan(0);
        expect(drawdownOf_m(well, flow_m3s, response) / allowed_m).toBeCloseTo(1, 6);
      }),
      { seed: 17 },
    );
  });
  it('falls with skin, well loss and time, grows with what is allowed and with T', () => {
    fc.assert(
      fc.property(intake, between(0.5, 5), (well, allowed_m) => {
        const of = (change: Partial<Intake>, metres = allowed_m, time_s = DAY_s): number => {
          const changed = { ...well, freeThickness_m: 0, ...change };
          return largestYield_m3s(changed, metres, responseAfter_sm2(changed, time_s));
        };
        const base = of({}) * (1 + 1e-7);
        expect(of({ skin_ratio: well.skin_ratio + 0.5 })).toBeLessThan(base);
        expect(of({ wellLoss_s2m5: 2 * well.wellLoss_s2m5 + 1 })).toBeLessThanOrEqual(base);
        expect(of({ freeThickness_m: 20 })).toBeLessThan(base);
        expect(of({}, allowed_m, 3 * DAY_s)).toBeLessThan(base);
        expect(of({}, 1.1 * allowed_m)).toBeGreaterThan(of({}));
        expect(of({ T_m2s: 1.5 * well.T_m2s })).toBeGreaterThan(of({}));
      }),
      { seed: 17 },
    );
  });
  test('nothing allowed, or nothing that flows, yields nothing', () => {
    expect(largestYield_m3s(SAND, 0, 1000)).toBe(0);
    expect(largestYield_m3s(SAND, -1, 1000)).toBe(0);
    expect(largestYield_m3s({ ...SAND, T_m2s: 0 }, 3, 1000)).toBe(0);
  });
  test('worked values', () => {
    const well = { ...SAND, wellLoss_s2m5: 1e5, freeThickness_m: 6 };
    const drawn_m = drawdownOf_m(well, 1e-3, 1200);
    expect(drawn_m).toBeCloseTo(1.4524, 4);
    expect(largestYield_m3s(well, drawn_m, 1200)).toBeCloseTo(1e-3, 9);
    expect(wayLogOf(1e-3, 0.1, 0.03, DAY_s)).toBeCloseTo(7.2919, 4);
    expect(responseAfter_sm2({ ...SAND, skin_ratio: 2 }, DAY_s)).toBeCloseTo(1478.85, 1);
  });
  test('a skin of 0 is reached from both sides alike, and a skin below it is a wider well', () => {
    const at = (skin_ratio: number): number => responseAfter_sm2({ ...SAND, skin_ratio }, DAY_s);
    expect(at(-1e-9) / at(1e-9)).toBeCloseTo(1, 8);
    expect(at(-0.7)).toBeCloseTo(responseAfter_sm2({ ...SAND, radius_m: 0.03 * Math.exp(0.7) }, DAY_s), 9);
  });
  test('a season of pumping without pause is one long day; with pauses it costs less', () => {
    const season_s = 180 * DAY_s;
    expect(seasonResponse_sm2(SAND, DAY_s, season_s)).toBeCloseTo(responseAfter_sm2(SAND, season_s), 9);
    const eight = seasonResponse_sm2(SAND, 8 * 3600, season_s);
    expect(eight).toBeLessThan(responseAfter_sm2(SAND, season_s));
    expect(eight).toBeGreaterThan(responseAfter_sm2(SAND, 8 * 3600));
  });
  test('mud to .12 m at a tenth of K leaves less than half of a clean well', () => {
    const mud = ringSkin_ratio(1, 0.1, 0.05, 0.12);
    const flow = (skin_ratio: number): number => 1 / responseAfter_sm2({ ...SAND, skin_ratio }, DAY_s);
    expect(flow(mud) / flow(0)).toBeLessThan(0.5);
  });
});

describe('a free table', () => {
  it('the correction and its inverse undo each other, and the free level falls further', () => {
    fc.assert(
      fc.property(between(1, 50), between(0.001, 0.99), (b_m, share) => {
        const free_m = share * b_m;
        const covered_m = coveredDrawdown_m(free_m, b_m);
        expect(covered_m).toBeLessThan(free_m);
        expect(freeDrawdown_m(covered_m, b_m)).toBeCloseTo(free_m, 6);
      }),
      { seed: 17 },
    );
  });
  test('from half the thickness on the well is dry', () => expect(freeDrawdown_m(7, 12)).toBe(12));
});

describe('a screen in a part of the aquifer', () => {
  it('costs less the more of it there is, and nothing when it is whole', () => {
    fc.assert(
      fc.property(between(0.02, 0.98), between(1, 40), between(0.02, 0.08), fc.boolean(), (p, b_m, r_m, atAnEnd) => {
        fc.pre((p * b_m) / 2 > 5 * r_m);
        const skin = partialSkin_ratio(p, b_m, r_m, atAnEnd, 7);
        expect(skin).toBeGreaterThanOrEqual(0);
        expect(partialSkin_ratio(Math.min(1, p + 0.02), b_m, r_m, atAnEnd, 7)).toBeLessThanOrEqual(skin + 1e-9);
        expect(partialSkin_ratio(p, b_m, r_m, false, 7)).toBeLessThanOrEqual(
          partialSkin_ratio(p, b_m, r_m, true, 7) + 1e-9,
        );
      }),
      { seed: 17 },
    );
    expect(partialSkin_ratio(1, 10, 0.05, true, 7)).toBeCloseTo(0, 12);
  });
  test('Kozeny lies between the share of the thickness and the whole', () => {
    fc.assert(
      fc.property(between(0.01, 1), between(1, 40), (p, b_m) => {
        const share = kozenyShare_ratio(p, b_m, 0.05);
        expect(share).toBeGreaterThanOrEqual(p - 1e-12);
        expect(share).toBeLessThanOrEqual(1);
      }),
      { seed: 17 },
    );
    expect(kozenyShare_ratio(0, 10, 0.05)).toBe(0);
  });
  test('the cosine stands outside the root', () => {
    expect(kozenyShare_ratio(0.3, 10, 0.055)).toBeCloseTo(0.4791, 4);
    expect(Math.abs(kozenyShare_ratio(0.3, 10, 0.055) - 0.4898)).toBeGreaterThan(0.01);
    expect(huismanSkin_ratio(0.3, 10, 0.055)).toBeCloseTo(8.499, 3);
  });
});

describe('skins', () => {
  test('a ring like the ground is none; mud costs, gravel saves; rings add up', () => {
    expect(ringSkin_ratio(1e-4, 1e-4, 0.05, 0.1)).toBe(0);
    expect(ringSkin_ratio(1e-4, 1e-5, 0.05, 0.1)).toBeGreaterThan(0);
    expect(ringSkin_ratio(1e-4, 1e-2, 0.03, 0.05)).toBeLessThan(0);
    const both = ringSkin_ratio(1, 0.2, 0.05, 0.07) + ringSkin_ratio(1, 0.2, 0.07, 0.1);
    expect(both).toBeCloseTo(ringSkin_ratio(1, 0.2, 0.05, 0.1), 12);
  });
  it('cells that share a screen lie between the best and the worst, and are alike when all are', () => {
    fc.assert(
      fc.property(fc.array(between(-1, 40), { minLength: 1, maxLength: 12 }), (skins) => {
        const T = Float64Array.from(skins, (_, i) => 1e-4 * (1 + i));
        const joint = sharedSkin_ratio(T, Float64Array.from(skins), skins.length, 7);
        expect(joint).toBeGreaterThanOrEqual(Math.min(...skins) - 1e-9);
        expect(joint).toBeLessThanOrEqual(Math.max(...skins) + 1e-9);
        expect(sharedSkin_ratio(T, new Float64Array(T.length).fill(3), T.length, 7)).toBeCloseTo(3, 9);
      }),
      { seed: 17 },
    );
    expect(sharedSkin_ratio(Float64Array.of(0), Float64Array.of(5), 1, 7)).toBe(0);
  });
  test('slots: half the open area, four times the loss', () => {
    expect(slotLoss_s2m5(0.003)).toBeCloseTo(15731, 0);
    expect(slotLoss_s2m5(0.0015) / slotLoss_s2m5(0.003)).toBeCloseTo(4, 12);
    expect(wellLoss_m(1e5, -1e-3)).toBe(-wellLoss_m(1e5, 1e-3));
  });
});

describe('beds', () => {
  const bed = fc
    .tuple(between(0.1, 5), between(-9, -2))
    .map(([thick_m, log]) => ({ thick_m, K_ms: Math.pow(10, log) }));
  it('across them is never easier than along them, and T adds up', () => {
    fc.assert(
      fc.property(fc.array(bed, { minLength: 1, maxLength: 8 }), between(0, 1), (parts, cut) => {
        let at_m = 2;
        const beds = parts.map(({ thick_m, K_ms }) => ({ top_m: at_m, bottom_m: (at_m += thick_m), K_ms }));
        const middle_m = 2 + cut * (at_m - 2);
        expect(acrossBeds_ms(beds, 2, at_m)).toBeLessThanOrEqual(alongBeds_ms(beds, 2, at_m) * (1 + 1e-12));
        const whole = transmissivity_m2s(beds, 0, 99);
        const halves = transmissivity_m2s(beds, 0, middle_m) + transmissivity_m2s(beds, middle_m, 99);
        expect(halves / whole).toBeCloseTo(1, 9);
      }),
      { seed: 17 },
    );
    expect(shared_m({ top_m: 2, bottom_m: 5, K_ms: 1 }, 4, 9)).toBe(1);
    expect([alongBeds_ms([], 0, 9), acrossBeds_ms([], 0, 9)]).toEqual([0, 0]);
  });
});

describe('lift and need', () => {
  it("what is allowed never grows as the water falls, and stays within the pump's reach", () => {
    fc.assert(
      fc.property(
        between(1, 30),
        between(0, 3),
        between(1, 20),
        between(5, 45),
        (top_m, fall_m, level_m, deepest_m) => {
          const at = (level: number): number => allowedDrawdown_m(level, top_m, top_m + 3, 0, deepest_m);
          expect(at(level_m + fall_m)).toBeLessThanOrEqual(at(level_m) + 1e-12);
          expect(at(level_m)).toBeGreaterThanOrEqual(0);
          expect(level_m + at(level_m)).toBeLessThanOrEqual(Math.max(level_m, deepest_m) + 1e-12);
        },
      ),
    );
  });
  test('a level below the suction limit leaves a suction pump nothing, a deep pump all', () => {
    const suction_m = deepestDraw_m(WELL_PUMPS.suction, 0, 25);
    expect(allowedDrawdown_m(8, 15, 18, 0, suction_m)).toBe(0);
    expect(allowedDrawdown_m(8, 15, 18, 0, WELL_PUMPS.deepPiston.deepest_m)).toBe(7);
    expect(allowedDrawdown_m(19, 15, 18, 0, 45)).toBe(0);
  });
  test('no flow serves nobody', () => {
    expect(peopleServed(0, 28800, 0.015)).toBe(0);
  });
});
