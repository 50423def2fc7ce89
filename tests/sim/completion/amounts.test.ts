// Amounts: the ring by cells of its own width, pack, seal, backfill, what they cost.
import { describe, expect, it } from 'vitest';
import {
  amountsOf,
  casingCost_marks,
  handsHours_h,
  madeReady_h,
  packCost_marks,
  piecesFor,
  sealCost_marks,
  sealMass_kg,
  sealWater_L,
  waitHours_h,
} from '../../../sim/completion/amounts';
import { casingLength_m, shoe_m } from '../../../sim/completion/plan';
import {
  annulus_m2,
  annulusVolume_m3,
  gap_m,
  leastGap_m,
  nominalHole,
  packMass_kg,
  withAllowance_m3,
} from '../../../sim/completion/quantities';
import { CASINGS } from '../../../sim/materials/pipes';
import { createStream } from '../../../sim/numeric/stream';
import { PLAN } from './plans';

const OUTSIDE_m = CASINGS.pvc63.outside_m;
const stream = createStream('holes');
const rough = { dz_m: 0.25, radius_m: Array.from({ length: 80 }, () => 0.05 + 0.05 * stream.uniform()) };

describe('room in the ring', () => {
  it('is the sum of thin slices of the cells they lie in', () => {
    const slice_m = 0.001;
    for (const [from_m, to_m] of [
      [0, 3],
      [2.13, 2.2],
      [1.25, 7.77],
      [17, 20],
    ]) {
      let sum_m3 = 0;
      for (let z = from_m + slice_m / 2; z < to_m; z += slice_m) {
        const r_m = rough.radius_m[Math.min(79, Math.floor(z / 0.25))];
        sum_m3 += slice_m * (z < 18.5 ? annulus_m2(r_m, OUTSIDE_m) : Math.PI * r_m * r_m);
      }
      expect(annulusVolume_m3(rough, OUTSIDE_m, 18.5, from_m, to_m) / sum_m3).toBeCloseTo(1, 3);
    }
  });

  it('adds up: two stretches are the whole', () => {
    const room = (from_m: number, to_m: number): number => annulusVolume_m3(rough, OUTSIDE_m, 18.5, from_m, to_m);
    expect(room(0, 11.1) + room(11.1, 19.9)).toBeCloseTo(room(0, 19.9), 12);
    expect(room(5, 5)).toBe(0);
  });

  it('a hole tighter than the casing leaves none', () => {
    expect(annulus_m2(0.03, OUTSIDE_m)).toBe(0);
    expect(gap_m(0.03, OUTSIDE_m)).toBeLessThan(0);
    expect(leastGap_m(nominalHole(0.1), OUTSIDE_m, 0, 18)).toBeCloseTo(0.0185, 12);
    expect(leastGap_m(rough, OUTSIDE_m, 3, 9)).toBe(
      Math.min(...rough.radius_m.slice(12, 36).map((radius_m) => gap_m(radius_m, OUTSIDE_m))),
    );
  });
});

describe('amounts of a plan', () => {
  const packed = { ...PLAN, pack: 'pack1', packTop_m: 12 } as const;
  it('pack, seal and backfill fill the ring from the bottom of the hole to the ground', () => {
    for (const plan of [PLAN, packed, { ...packed, seal: 'none' } as const]) {
      const { pack_m3, seal_m3, backfill_m3 } = amountsOf(plan, rough, 19);
      expect(pack_m3 + seal_m3 + backfill_m3).toBeCloseTo(annulusVolume_m3(rough, OUTSIDE_m, 18.5, 0, 19), 12);
    }
  });

  it('a wider hole takes more of everything', () => {
    const narrow = amountsOf(packed, nominalHole(0.1), 19);
    const wide = amountsOf(packed, nominalHole(0.12), 19);
    expect(wide.pack_m3).toBeGreaterThan(narrow.pack_m3);
    expect(wide.seal_kg).toBeGreaterThan(narrow.seal_kg);
    expect(wide.pieces).toBe(narrow.pieces);
  });

  it('gives the worked values', () => {
    expect([shoe_m(PLAN), casingLength_m(PLAN)]).toEqual([18.5, 19]);
    expect([piecesFor(19), piecesFor(18), piecesFor(0.1)]).toEqual([7, 6, 1]);
    expect(withAllowance_m3(0.1)).toBeCloseTo(0.115, 12);
    expect(packMass_kg('pack1', 0.01)).toBeCloseTo(15.9, 9);
    expect(sealMass_kg('bentoniteGranules', 0.01)).toBe(10);
    expect(sealMass_kg('cement', 0.03896)).toBeCloseTo(50, 1);
    expect(sealWater_L('cement', 50)).toBeCloseTo(23.1, 1);
    expect([sealWater_L('bentoniteGranules', 10), sealWater_L('clay', 10)]).toEqual([expect.closeTo(41.7, 9), 0]);
    const amounts = amountsOf({ ...PLAN, centralisers: 3 }, nominalHole(0.1), 19);
    expect([amounts.pieces, amounts.joints, amounts.cloth_m]).toEqual([7, 6, 4]);
    expect(amounts.slots).toBe(3 * 333);
    expect(casingCost_marks({ ...PLAN, centralisers: 3 }, amounts)).toBeCloseTo(58.8 + 4.8 + 1 + 2.4 + 1.8, 9);
    expect(packCost_marks(0.1)).toBeCloseTo(5, 12);
    expect(sealCost_marks('cement', 50)).toBeCloseTo(10.23, 2);
    expect(waitHours_h(PLAN, 6)).toBe(1.5);
    expect(madeReady_h(amounts)).toBeCloseTo(3.663, 3);
    expect(handsHours_h({ ...amounts, pack_m3: 0, seal_m3: 0, backfill_m3: 0.18 })).toBeCloseTo(0.6, 12);
  });
});
