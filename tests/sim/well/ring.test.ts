// Laws of the ring round the screen: skins, washing, sand, chlorine.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { breakPace } from '../../../sim/fluid/chlorine';
import { SOILS } from '../../../sim/materials/soils';
import {
  cakeSkin_ratio,
  clothSkin_ratio,
  fillSkin_ratio,
  mudRing_ratio,
  patchedSkin_ratio,
  ringFill_ms,
  washable_frac,
} from '../../../sim/well/cellSkin';
import { breakRing, ringPolymer_kg, ringWater_m3, rotRing } from '../../../sim/well/ringChlorine';
import { carriedAt, sandByClass } from '../../../sim/well/sand';
import { emptyFill, standingOf, type Standing } from '../../../sim/well/standing';
import { mudAfter_frac, mudToCome_frac, wash, WASH_METHODS, washPace_ratio } from '../../../sim/well/washing';
import { unfilled_frac } from '../../../sim/well/leakVerdict';
import type { Run } from '../../../sim';
import type { Layer } from '../../../sim/ground/layer';
import { packedAndSealed, setWell } from '../../setWell';

const close = (a: number, b: number, tol = 5e-4): void => expect(Math.abs(a / b - 1)).toBeLessThan(tol);
const share = fc.double({ min: 0, max: 1, noNaN: true });
const sand = { ...SOILS.mediumSand, top_m: 0, bottom_m: 40 } as unknown as Layer;
const stand = (run: Run): Standing => standingOf(run.state.completion)!;

describe('worked values', () => {
  it('mud in the ring', () => {
    expect(mudRing_ratio(1, 1, 1)).toBe(10);
    close(mudRing_ratio(1, 1, 0), 1.72);
    expect(mudRing_ratio(0, 1, 1)).toBe(1);
  });
  it('cake, cloth, cake in patches', () => {
    close(cakeSkin_ratio(3e-4, 1e4, 0.05), 60);
    close(clothSkin_ratio(3e-4, 0.0315, 0.5, 1), 0.01905);
    close(patchedSkin_ratio(60, 0.5, 6), 5);
    expect(patchedSkin_ratio(60, 0, 6)).toBe(0);
    close(patchedSkin_ratio(60, 1, 6), 60);
  });
  it('pace and decay of washing', () => {
    close(washPace_ratio('surge', 20, 0.0064), 0.64);
    close(mudAfter_frac(1, 1, 1), 0.3995);
  });
});

describe('skins', () => {
  it('never fall with more mud, a wider reach or less broken polymer', () =>
    fc.assert(
      fc.property(share, share, share, share, (dose, mud, whole, more) => {
        const here = mudRing_ratio(dose, mud, whole);
        expect(mudRing_ratio(Math.min(1, dose + more), mud, whole)).toBeGreaterThanOrEqual(here);
        expect(mudRing_ratio(dose, mud, Math.min(1, whole + more))).toBeGreaterThanOrEqual(here);
        expect(here).toBeGreaterThanOrEqual(1);
        expect(here).toBeLessThanOrEqual(10);
      }),
    ));
  it('a cake in patches lies between none and whole, and grows with its cover', () =>
    fc.assert(
      fc.property(fc.double({ min: 0, max: 1e5, noNaN: true }), share, share, (cake, a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)];
        const low = patchedSkin_ratio(cake, less, 6);
        const high = patchedSkin_ratio(cake, more, 6);
        expect(low).toBeGreaterThanOrEqual(-1e-9);
        expect(high).toBeGreaterThanOrEqual(low - 1e-9 * (1 + cake));
        expect(high).toBeLessThanOrEqual(cake * (1 + 1e-9) + 1e-9);
      }),
    ));
  it('pack helps, cement shuts, sand that has closed in changes nothing', () => {
    const packed = { ...emptyFill(), pack: 'pack1' as const, pack_frac: 1 };
    expect(fillSkin_ratio(packed, sand, 0.0315, 0.05)).toBeLessThan(0);
    expect(fillSkin_ratio(emptyFill(), sand, 0.0315, 0.05)).toBe(0);
    expect(fillSkin_ratio({ ...emptyFill(), seal_frac: 1, seal_ms: 1e-9 }, sand, 0.0315, 0.05)).toBeGreaterThan(1e4);
    expect(ringFill_ms({ ...packed, clogged_frac: 1 }, sand)).toBe(0);
    expect(fillSkin_ratio(packed, sand, 0.0315, 0.0315)).toBe(0);
  });
  it('only grains that pass a filter which holds can be washed out for good', () => {
    expect(washable_frac(sand, { slotWidth_mm: 0.01 })).toBe(0);
    expect(washable_frac(sand, { slotWidth_mm: sand.d50_mm })).toBeCloseTo(0.5, 6);
    expect(washable_frac(sand, { slotWidth_mm: 5 })).toBe(0);
  });
});

describe('washing', () => {
  const ring = () => {
    const run = setWell({ fill: packedAndSealed(), invaded_m: 0.13, dose_ratio: 1 });
    return { ring: run.state.well!.ring, standing: stand(run) };
  };
  it.each(WASH_METHODS)('%s keeps every share within 0 and 1, and mud never comes back', (method) => {
    const { ring: r, standing } = ring();
    let mud = 1;
    for (let i = 0; i < 500; i++) {
      wash(r, standing, method, 1 + (i % 40), 60);
      for (const values of [r.mud_frac, r.caked_frac, r.washed_frac, r.bridged_frac])
        for (const value of values) expect(value >= 0 && value <= 1).toBe(true);
      expect(r.mud_frac[4]).toBeLessThanOrEqual(mud);
      mud = r.mud_frac[4];
    }
    expect(mud).toBeGreaterThanOrEqual(0.05);
  });
  it('twice the time in two goes is the same as once', () => {
    const [a, b] = [ring(), ring()];
    wash(a.ring, a.standing, 'surge', 20, 1200);
    wash(b.ring, b.standing, 'surge', 20, 600);
    wash(b.ring, b.standing, 'surge', 20, 600);
    close(a.ring.mud_frac[4], b.ring.mud_frac[4], 1e-12);
    close(a.ring.washed_frac[4], b.ring.washed_frac[4], 1e-12);
  });
  it('a cell that draws more is washed more', () => {
    const { ring: r, standing } = ring();
    r.flow_frac.fill(0.5 / (r.count - 1));
    r.flow_frac[4] = 0.5;
    wash(r, standing, 'surge', 20, 1800);
    expect(r.mud_frac[4]).toBeLessThan(r.mud_frac[6]);
    expect(r.mud_frac[6]).toBeLessThan(1);
  });
  it('mud to come: none when only what stays is left', () => {
    expect(mudToCome_frac(0.05, 1)).toBe(0);
    expect(mudToCome_frac(1, 1)).toBe(1);
    close(mudToCome_frac(1, 0), 0.2);
  });
});

describe('sand', () => {
  const carried = (slotWidth_mm: number, flow_m3s = 2.5e-4) => {
    const run = setWell({ plan: { slotWidth_mm, pack: 'none' } });
    return carriedAt(stand(run), run.state.well!.ring, run.scenario.ground, flow_m3s);
  };
  it('a wider slot lets more by, at first and for ever', () => {
    let before = carried(0.02);
    for (const slot of [0.1, 0.2, 0.3, 0.5, 0.8, 1.5]) {
      const now = carried(slot);
      expect(now.forEver_gL).toBeGreaterThanOrEqual(before.forEver_gL);
      before = now;
    }
    expect(before.forEver_gL).toBeGreaterThan(0.05);
    // S-05: the slot that holds 40 % of the sand stops it.
    expect(carried(0.35).forEver_gL).toBe(0);
  });
  it('more is drawn, more comes', () => {
    expect(carried(1.5, 2e-4).forEver_gL).toBeGreaterThan(carried(1.5, 5e-5).forEver_gL);
  });
  it('by class it adds up to one, nothing coarser than the opening', () => {
    const run = setWell({ plan: { slotWidth_mm: 0.2, pack: 'none' } });
    const classes = new Float64Array(8);
    sandByClass(stand(run), run.state.well!.ring, run.scenario.ground, classes);
    expect(classes.reduce((sum, part) => sum + part)).toBeCloseTo(1, 12);
    expect(classes[4] + classes[5] + classes[6] + classes[7]).toBe(0);
  });
});

describe('chlorine in the ring', () => {
  const made = () => {
    const run = setWell({ fill: packedAndSealed(), invaded_m: 0.13, dose_ratio: 1 });
    const { ring } = run.state.well!;
    return { ring, ground: run.scenario.ground, water_m3: ringWater_m3(ring, 0.0315, run.scenario.ground) };
  };
  it('the ring holds the pores of its volume', () => {
    const { water_m3, ground } = made();
    const n = ground.layers[0].porosity_frac;
    close(water_m3, n * Math.PI * (0.13 * 0.13 - 0.0315 * 0.0315) * 3, 1e-6);
  });
  it('breaks most of it in six hours at 1000 mg/L, little at 50 (Y-10)', () => {
    const left = (dose_gL: number): number => {
      const { ring, ground, water_m3 } = made();
      let chlorine_kg = dose_gL * water_m3;
      for (let t = 0; t < 6 * 3600; t++)
        chlorine_kg = breakRing(ring, ground, chlorine_kg, water_m3, 100, breakPace(25, 1));
      expect(chlorine_kg).toBeGreaterThanOrEqual(0);
      return ring.whole_frac[4];
    };
    expect(left(1)).toBeLessThan(0.05);
    expect(left(0.05)).toBeGreaterThan(0.5);
  });
  it('does nothing without chlorine or water; polymer rots by itself', () => {
    const { ring, ground } = made();
    expect(breakRing(ring, ground, 0, 1, 0, breakPace(25, 1))).toBe(0);
    expect(breakRing(ring, ground, 1, 0, 0, breakPace(25, 1))).toBe(0);
    const before = ringPolymer_kg(ring, 4, 0.4);
    rotRing(ring, 0.5);
    close(ringPolymer_kg(ring, 4, 0.4), before / 2, 1e-12);
  });
});

describe('a pipe off the middle', () => {
  it('leaves no narrow side while a piece is smaller than the narrowest gap', () => {
    expect(unfilled_frac(0.0185, 0, 0.008)).toBe(0);
    expect(unfilled_frac(0.0185, 0.5, 0.008)).toBe(0);
    expect(unfilled_frac(0.0185, 1, 0.008)).toBeGreaterThan(0);
    expect(unfilled_frac(0.005, 0, 0.008)).toBe(1);
  });
  it('the bigger the piece, the more is left; against the wall more than in the middle', () =>
    fc.assert(
      fc.property(share, fc.double({ min: 0.001, max: 0.018, noNaN: true }), (off, piece_m) => {
        const narrow = unfilled_frac(0.0185, off, piece_m);
        expect(unfilled_frac(0.0185, off, piece_m * 1.2)).toBeGreaterThanOrEqual(narrow);
        expect(unfilled_frac(0.0185, 0, piece_m)).toBe(0);
        expect(unfilled_frac(0.0185, 1, Math.max(0.002, piece_m))).toBeGreaterThan(0);
      }),
    ));
});
