// Sand through slot, cloth and pack: never more for a finer barrier, and the figures that the doc comments give.
import { describe, expect, it } from 'vitest';
import { clothFines_frac, clothLeft_frac } from '../../../sim/completion/cloth';
import { held_frac, packFit } from '../../../sim/completion/packFit';
import { openingTo_mm, packThroat_mm, passing_frac, staysLoose_frac } from '../../../sim/completion/passing';
import { finerThan_frac, fractionsOf, sizeAt_mm } from '../../../sim/ground/gradation';
import { CLOTH_NAMES, CLOTHS } from '../../../sim/materials/cloths';
import { PACK_NAMES, PACKS } from '../../../sim/materials/packs';
import { SIZE_CLASSES } from '../../../sim/materials/sizes';
import { SOILS, SOIL_KINDS } from '../../../sim/materials/soils';

const SLOTS_mm = Array.from({ length: 60 }, (_, i) => 0.05 * 1.08 ** i);
const barriers = [
  {},
  ...CLOTH_NAMES.map((name) => ({ cloth_mm: CLOTHS[name].O95_mm })),
  ...PACK_NAMES.map((name) => ({ pack: PACKS[name] })),
  { cloth_mm: CLOTHS.coarse.O95_mm, pack: PACKS.pack2 },
];

describe('what passes', () => {
  it.each(SOIL_KINDS)('%s: a wider slot never passes less, whatever stands behind it', (kind) => {
    for (const barrier of barriers) {
      let before = 0;
      for (const slotWidth_mm of SLOTS_mm) {
        const passing = passing_frac(SOILS[kind], { slotWidth_mm, ...barrier });
        expect(passing).toBeGreaterThanOrEqual(before);
        expect(passing).toBeLessThanOrEqual(1);
        before = passing;
      }
    }
  });

  it('has no jump: a hair more slot lets hardly more by', () => {
    for (const barrier of barriers)
      for (const slotWidth_mm of SLOTS_mm) {
        const at = (slot_mm: number): number => passing_frac(SOILS.mediumSand, { slotWidth_mm: slot_mm, ...barrier });
        expect(at(1.00001 * slotWidth_mm) - at(slotWidth_mm)).toBeLessThan(0.001);
      }
  });

  it('cloth and pack never let more by than the slot alone, and a finer one less than a coarser one', () => {
    const through = (barrier: object): number => passing_frac(SOILS.mediumSand, { slotWidth_mm: 1, ...barrier });
    for (const barrier of barriers) expect(through(barrier)).toBeLessThanOrEqual(through({}));
    const cloths = CLOTH_NAMES.map((name) => through({ cloth_mm: CLOTHS[name].O95_mm }));
    expect(cloths).toEqual([...cloths].sort((a, b) => a - b));
    expect(cloths[0]).toBeLessThan(cloths[2]);
  });

  it('a pack that runs out through a wide slot holds nothing', () => {
    const sand = SOILS.fineSand;
    expect(passing_frac(sand, { slotWidth_mm: 2, pack: PACKS.pack04 })).toBe(passing_frac(sand, { slotWidth_mm: 2 }));
    expect(passing_frac(sand, { slotWidth_mm: 0.4, pack: PACKS.pack04 })).toBeLessThan(0.5);
  });

  it('a saw cut of .8 mm pumps medium sand for ever; cloth or the right pack stops it', () => {
    const loose = (barrier: object): number =>
      staysLoose_frac(passing_frac(SOILS.mediumSand, { slotWidth_mm: 0.8, ...barrier }));
    expect(loose({})).toBeGreaterThan(0.9);
    expect(loose({ cloth_mm: CLOTHS.medium.O95_mm })).toBe(0);
    expect(loose({ pack: PACKS.pack1 })).toBe(0);
    expect(loose({ pack: PACKS.pack4 })).toBeGreaterThan(0.9);
  });

  it('gives the worked values', () => {
    const pack = { d10_mm: 1, d30_mm: 1.265625, d50_mm: 1.5, d60_mm: 1.6, d85_mm: 1.9 };
    expect(packThroat_mm(pack)).toBeCloseTo(sizeAt_mm(pack, 0.15) / 4.5, 12);
    expect(openingTo_mm({ slotWidth_mm: 0.5, pack })).toBeCloseTo(packThroat_mm(pack), 12);
    expect([staysLoose_frac(0.6), staysLoose_frac(0.75), staysLoose_frac(0.9)]).toEqual([
      0,
      expect.closeTo(0.5, 12),
      1,
    ]);
    expect(passing_frac(SOILS.coarseSand, { slotWidth_mm: SOILS.coarseSand.d50_mm })).toBe(0.5);
    expect(held_frac(PACKS.pack1, PACKS.pack1.d10_mm)).toBeCloseTo(0.9, 12);
    const fit = packFit(PACKS.pack1, { ...SOILS.mediumSand, d50_mm: 0.25, d30_mm: 0.2, d10_mm: 0.15 });
    expect([fit.median_ratio, fit.word]).toEqual([expect.closeTo(5.64, 12), 'fits']);
  });
});

describe('the curve of a gradation', () => {
  const curve = { d10_mm: 0.1, d30_mm: 0.2, d50_mm: 0.4, d60_mm: 0.5, d85_mm: 1 };
  it('reads the same both ways, and agrees with the size classes', () => {
    expect(finerThan_frac(curve, 0.2)).toBeCloseTo(0.3, 12);
    expect(sizeAt_mm(curve, 0.3)).toBeCloseTo(0.2, 12);
    for (let share = 0.02; share < 1; share += 0.07)
      expect(finerThan_frac(curve, sizeAt_mm(curve, share))).toBeCloseTo(share, 12);
    let sum = 0;
    fractionsOf(curve).fractions.forEach((share, k) => {
      sum += share;
      expect(finerThan_frac(curve, SIZE_CLASSES[k].upper_mm)).toBeCloseTo(sum, 12);
    });
  });
});

describe('cloth', () => {
  it('keeps its flow on grains it does not catch, and loses it to grains of its own size', () => {
    expect(clothLeft_frac(CLOTHS.fine, PACKS.pack2)).toBe(1);
    expect(clothLeft_frac(CLOTHS.fine, SOILS.siltySand)).toBeLessThan(clothLeft_frac(CLOTHS.fine, SOILS.mediumSand));
    for (const name of CLOTH_NAMES)
      for (const kind of SOIL_KINDS) {
        expect(clothLeft_frac(CLOTHS[name], SOILS[kind])).toBeGreaterThanOrEqual(0.1 - 1e-12);
        expect(clothLeft_frac(CLOTHS[name], SOILS[kind])).toBeLessThanOrEqual(1);
      }
  });
  it('counts as fines what is below .075 mm', () =>
    expect(clothFines_frac({ ...SOILS.siltySand, d10_mm: 0.03, d30_mm: 0.075 })).toBeCloseTo(0.3, 12));
});
