// Screen, cloth and filter pack: openings, entrance, retention, sizes.
import { describe } from 'vitest';
import { largestPiece_mm } from '../../sim/completion/bridging';
import { retentionFactor_ratio, standardCloth, widestCloth_mm } from '../../sim/completion/cloth';
import { naturalFit, slotHolding_mm } from '../../sim/completion/naturalFit';
import { held_frac, MEDIAN_RATIOS, packFit, packFor_mm } from '../../sim/completion/packFit';
import { openingTo_mm, passing_frac, screenOpening_mm, staysLoose_frac } from '../../sim/completion/passing';
import { planFigures } from '../../sim/completion/planFigures';
import type { NoteKey } from '../../sim/completion/planNote';
import { planNotes } from '../../sim/completion/planNotes';
import { withAllowance_m3 } from '../../sim/completion/quantities';
import {
  ENTRANCE_LIMIT_ms,
  entrance_ms,
  entranceFor_ms,
  leastScreen_m,
  leftOpen_m2,
  openPerMetre_m,
  openShare_frac,
} from '../../sim/completion/slots';
import type { WellPlan } from '../../sim/completion/plan';
import { uniformity_ratio } from '../../sim/ground/conductivity';
import type { Gradation } from '../../sim/ground/gradation';
import { PACK_NAMES, PACKS, type PackName } from '../../sim/materials/packs';
import { SOILS } from '../../sim/materials/soils';
import { FACTS, PLAN } from '../sim/completion/plans';
import { row } from './row';

const HAND_PUMP_m3s = 17 / 60000;
const FT_m = 0.3048;
const GPD_FT2_ms = 4.716e-7;
const TI814 = 'TI 814-01, 1998';
const DRILLER = 'Driscoll 1986, from memory';

/** Slots that open 5 % of a pipe of 63 mm. */
const FIVE_PER_CENT = { slotWidth_mm: 1, slotRows: 3, slotArc_mm: (0.05 * Math.PI * 63 * 10) / 3, slotSpacing_mm: 10 };

describe('entrance', () => {
  row({
    id: 'S-01',
    mark: 'V',
    about: 'limit of .1 ft/s, m/s',
    source: `${TI814}; Montana ARM 36.21.652`,
    expected: 0.1 * FT_m,
    tolerance: { rel: 0.02 },
    compute: () => ENTRANCE_LIMIT_ms,
  });
  const WALTON = [
    [5001, 10],
    [4001, 9],
    [3001, 8],
    [2501, 7],
    [2001, 6],
    [1501, 5],
    [1001, 4],
    [501, 3],
    [400, 2],
  ] as const;
  for (const [K_gpdft2, limit_ftmin] of WALTON)
    row({
      id: `S-02/${limit_ftmin}`,
      mark: 'V',
      about: `ground of ${K_gpdft2} gpd/ft2: ${limit_ftmin} ft/min in m/s`,
      source: 'Walton 1962 via TI 814-01 p. 5-16',
      expected: (limit_ftmin * FT_m) / 60,
      tolerance: { rel: 1e-9 },
      compute: () => entranceFor_ms(K_gpdft2 * GPD_FT2_ms),
    });
  row({
    id: 'S-04',
    mark: 'M',
    about: 'half the slots are blocked: effective open area beside the open area',
    source: `Walton 1962; ${DRILLER}`,
    expected: 0.5,
    tolerance: 'exact',
    compute: () => leftOpen_m2(1),
  });
  row({
    id: 'S-R1/1',
    mark: 'R',
    about: '63 mm, 2 m, 5 % open: area, m2',
    source: 'geometry',
    expected: 0.019792,
    tolerance: { rel: 1e-3 },
    compute: () => openShare_frac(FIVE_PER_CENT, 0.063) * Math.PI * 0.063 * 2,
  });
  row({
    id: 'S-R1/2',
    mark: 'R',
    about: 'the same at 17 L/min: entrance velocity, m/s',
    source: 'Q/A',
    expected: 0.01432,
    tolerance: { rel: 1e-3 },
    compute: () => entrance_ms(HAND_PUMP_m3s, 2 * openPerMetre_m(FIVE_PER_CENT)),
  });
  row({
    id: 'S-R2',
    mark: 'R',
    about: 'least length of that screen for .03 m/s, m',
    source: 'Q/(.03 a)',
    expected: 0.954,
    tolerance: { rel: 1e-3 },
    compute: () => leastScreen_m(HAND_PUMP_m3s, openPerMetre_m(FIVE_PER_CENT)),
  });
});

describe('slot against bare sand', () => {
  const sand = SOILS.mediumSand;
  row({
    id: 'S-05/1',
    mark: 'M',
    about: 'slots that hold 40 % and 50 % of a sand are its d60 and d50, mm',
    source: `${DRILLER}, ch. 13`,
    expected: [0.42, 0.36],
    tolerance: { rel: 1e-9 },
    compute: () => [slotHolding_mm(sand, 0.4), slotHolding_mm(sand, 0.5)],
  });
  row({
    id: 'S-05/2',
    mark: 'M',
    about: 'a slot that holds 40 to 60 % soon stops the sand (share that goes on for ever)',
    source: `${DRILLER}, ch. 13`,
    expected: [0, 0, 0],
    tolerance: { abs: 1e-9 },
    compute: () =>
      [0.4, 0.5, 0.6].map((held) => staysLoose_frac(passing_frac(sand, { slotWidth_mm: slotHolding_mm(sand, held) }))),
  });
  row({
    id: 'S-08/1',
    mark: 'V',
    about:
      'a pack is needed where the slot would be under .010 in: fine sand needs one, coarse sand does not (1: needs)',
    source: 'UFGS 02521',
    expected: [1, 0],
    tolerance: 'exact',
    compute: () => [SOILS.fineSand, SOILS.coarseSand].map((soil) => Number(naturalFit(soil).needsPack)),
  });
  row({
    id: 'S-08/2',
    mark: 'V',
    about: 'Cu of every pack on offer at most 2.5',
    source: 'UFGS 02521',
    expected: { from: 1, to: 2.5 },
    compute: () => PACK_NAMES.map((name) => uniformity_ratio(PACKS[name].d60_mm, PACKS[name].d10_mm)),
  });
});

describe('slot against pack', () => {
  const HELD = [
    { slot_mm: 0.25, pack: 'pack04' },
    { slot_mm: 0.5, pack: 'pack07' },
    { slot_mm: 0.5, pack: 'pack1' },
    { slot_mm: 1, pack: 'pack2' },
    { slot_mm: 2, pack: 'pack4' },
  ] as const;
  for (const { slot_mm, pack } of HELD)
    row({
      id: `S-06/${pack}`,
      mark: 'V',
      about: `slot of ${slot_mm} mm holds 85-100 % of ${PACKS[pack].from_mm}-${PACKS[pack].to_mm} mm`,
      source: `${TI814}; TM 5-813-1; EPA 1992: 90-100 % at monitoring wells`,
      expected: { from: 0.85, to: 1 },
      compute: () => held_frac(PACKS[pack], slot_mm),
    });
  row({
    id: 'S-12',
    mark: 'V',
    about: 'slots of .5 or 1 mm with a pack of 2-4 mm: held and left in place (share that runs out)',
    source: "a relief agency's page on boreholes",
    expected: [0, 0],
    tolerance: { abs: 1e-9 },
    compute: () => [0.5, 1].map((slot_mm) => 1 - held_frac(PACKS.pack2, slot_mm)),
  });
  const D5092: readonly { slot_mm: number; pack: PackName; d10: [number, number]; cu: [number, number] }[] = [
    { slot_mm: 0.25, pack: 'pack04', d10: [0.4, 0.5], cu: [1.1, 1.6] },
    { slot_mm: 0.5, pack: 'pack1', d10: [1, 1.2], cu: [1.1, 1.6] },
  ];
  for (const { slot_mm, pack, d10, cu } of D5092) {
    row({
      id: `D5092/${slot_mm}/d10`,
      mark: 'M',
      about: `pack for a slot of ${slot_mm} mm: d10, mm`,
      source: 'ASTM D5092 table of packs, from memory',
      expected: { from: d10[0], to: d10[1] },
      compute: () => PACKS[pack].d10_mm,
    });
    row({
      id: `D5092/${slot_mm}/cu`,
      mark: 'M',
      about: `pack for a slot of ${slot_mm} mm: Cu`,
      source: 'ASTM D5092 table of packs, from memory',
      expected: { from: cu[0], to: cu[1] },
      compute: () => uniformity_ratio(PACKS[pack].d60_mm, PACKS[pack].d10_mm),
    });
  }
  row({
    id: 'D5092/0.5/d30',
    mark: 'M',
    about: 'pack for a slot of .5 mm: d30, mm',
    source: 'ASTM D5092 table of packs, from memory',
    expected: { from: 1.2, to: 1.5 },
    compute: () => PACKS.pack1.d30_mm,
  });
});

describe('pack against sand', () => {
  row({
    id: 'S-R6',
    mark: 'V',
    about: 'd30 .20 mm: d30 of the pack for even and for uneven sand, mm',
    source: `${TI814}; ASTM D5092 6.3.3.1: x 4 and x 6; which Cu counts as even is ours`,
    expected: [0.8, 1.2],
    tolerance: { rel: 1e-12 },
    compute: () => [packFor_mm(0.2, 2), packFor_mm(0.2, 6)],
  });
  row({
    id: 'S-R7',
    mark: 'M',
    about: 'd50 .25 mm: usual medians of the pack, mm',
    source: `${DRILLER}; 4-6 also seen at second hand`,
    expected: [1, 1.5],
    tolerance: 'exact',
    compute: () => [0.25 * MEDIAN_RATIOS.least, 0.25 * MEDIAN_RATIOS.most],
  });
  /** Very even sand with a median of .28 mm, and a pack of the same shape so many times as coarse. */
  const even: Gradation = { d10_mm: 0.22, d30_mm: 0.255, d50_mm: 0.28, d60_mm: 0.295, d85_mm: 0.345 };
  const times = (x: number): Gradation => ({
    d10_mm: even.d10_mm * x,
    d30_mm: even.d30_mm * x,
    d50_mm: even.d50_mm * x,
    d60_mm: even.d60_mm * x,
    d85_mm: even.d85_mm * x,
  });
  const loose = (ratio: number): number => staysLoose_frac(passing_frac(even, { slotWidth_mm: 1, pack: times(ratio) }));
  row({
    id: 'S-10/1',
    mark: 'M',
    about: 'medians 4 and 5 apart: no sand goes on coming (share)',
    source: DRILLER,
    expected: [0, 0],
    tolerance: { abs: 1e-9 },
    compute: () => [loose(4), loose(5)],
  });
  row({
    id: 'S-10/2',
    mark: 'M',
    about: 'medians 10 apart: sand passes (share that never stops)',
    source: `${DRILLER}: beyond 10 sand passes`,
    expected: { from: 0.9, to: 1 },
    compute: () => loose(10),
  });
  row({
    id: 'S-10/3',
    mark: 'M',
    about: 'words at medians 3, 5, 8, 9, 11 apart: 0 tight, 1 fits, 2 coarse, 3 sand passes',
    source: DRILLER,
    expected: [0, 1, 1, 2, 3],
    tolerance: 'exact',
    compute: () =>
      [3, 5, 7.99, 9, 11].map((ratio) =>
        ['tight', 'fits', 'coarse', 'sandPasses'].indexOf(packFit(times(ratio), even).word),
      ),
  });
  row({
    id: 'S-11/1',
    mark: 'M',
    about: 'medians 4 apart: d15 of the pack over d85 of the sand below 4 to 5',
    source: 'Terzaghi and Peck 1948, from memory',
    expected: { from: 0, to: 4 },
    compute: () => [packFit(times(4), even).holds_ratio, packFit(PACKS.pack1, SOILS.mediumSand).holds_ratio],
  });
  row({
    id: 'S-11/2',
    mark: 'M',
    about: 'medians 5 apart in even sand, and 1-2 mm on medium sand: d15 of the pack over d15 of the sand above 4 to 5',
    source: 'Terzaghi and Peck 1948, from memory',
    expected: { from: 5 * (1 - 1e-9), to: 20 },
    compute: () => [packFit(times(5), even).drains_ratio, packFit(PACKS.pack1, SOILS.mediumSand).drains_ratio],
  });
  row({
    id: 'S-24',
    mark: 'M',
    about: 'pack to buy beside the neat volume: 1.1 to 1.25',
    source: 'practice, from memory',
    expected: { from: 1.1, to: 1.25 },
    compute: () => withAllowance_m3(1),
  });
  row({
    id: 'S-25',
    mark: 'V',
    about: 'largest grain for gaps of 18.5, 30 and 43.5 mm: a fifth, mm',
    source: 'California Bulletin 74-90 section 9, for pellets and aggregate',
    expected: [3.7, 6, 8.7],
    tolerance: { rel: 1e-9 },
    compute: () => [0.0185, 0.03, 0.0435].map(largestPiece_mm),
  });
});

describe('cloth', () => {
  const CLASSES = [
    { fines: 0.1, O95: 0.43, psi: 0.5, about: 'under 15 %' },
    { fines: 0.3, O95: 0.25, psi: 0.2, about: '15 to 50 %' },
    { fines: 0.7, O95: 0.22, psi: 0.1, about: 'over 50 %' },
  ];
  for (const c of CLASSES)
    row({
      id: `S-27/${c.fines}`,
      mark: 'V',
      about: `${c.about} below .075 mm: openings at most, mm, permittivity at least, 1/s`,
      source: 'AASHTO M288 via UFGS',
      expected: [c.O95, c.psi],
      tolerance: 'exact',
      compute: () => {
        const { O95_mm, permittivity_1s } = standardCloth(c.fines);
        return [O95_mm, permittivity_1s];
      },
    });
  row({
    id: 'S-28/1',
    mark: 'M',
    about: 'B for Cu 3, 5, 1.8',
    source: 'Christopher and Holtz, FHWA, from memory; recomputed',
    expected: [1.5, 1.6, 1],
    tolerance: { rel: 1e-12 },
    compute: () => [3, 5, 1.8].map(retentionFactor_ratio),
  });
  row({
    id: 'S-28/2',
    mark: 'M',
    about: 'B is continuous at Cu 2, 4, 8 and 1 beyond',
    source: 'Christopher and Holtz, FHWA, from memory',
    expected: [1, 2, 1, 1],
    tolerance: { rel: 1e-9 },
    compute: () => [2 + 1e-12, 4 + 1e-12, 8 - 1e-12, 20].map(retentionFactor_ratio),
  });
  const GEOTEXTILES = [
    { cu: 3, O95: 0.45 },
    { cu: 5, O95: 0.48 },
    { cu: 1.8, O95: 0.3 },
  ];
  for (const g of GEOTEXTILES)
    row({
      id: `S-R9/${g.cu}`,
      mark: 'R',
      about: `d85 .30 mm, Cu ${g.cu}: widest openings, mm`,
      source: 'O95 <= B d85',
      expected: g.O95,
      tolerance: { rel: 1e-12 },
      compute: () => widestCloth_mm({ d10_mm: 0.2 / g.cu, d30_mm: 0.15, d50_mm: 0.18, d60_mm: 0.2, d85_mm: 0.3 }),
    });
  row({
    id: 'S-28/3',
    mark: 'V2',
    about: 'even sand is just held by openings of its d85 (share that goes on for ever)',
    source: 'B about 1 for uniform sand, guidance on cloths read at second hand; our kinds of clean sand',
    expected: { from: 0, to: 0.01 },
    compute: () =>
      [SOILS.fineSand, SOILS.mediumSand].map((sand) =>
        staysLoose_frac(passing_frac(sand, { slotWidth_mm: 1, cloth_mm: sand.d85_mm })),
      ),
  });
  row({
    id: 'S-26',
    mark: 'V',
    about: 'polyester cloth over slots in old river sand, no gravel: medium cloth on medium sand goes on letting by',
    source: 'Naugle 1996, practice note from Niger: works to 12 m',
    expected: 0,
    tolerance: { abs: 1e-9 },
    compute: () => staysLoose_frac(passing_frac(SOILS.mediumSand, { slotWidth_mm: 1, cloth_mm: 0.25 })),
  });
  row({
    id: 'PASS-1',
    mark: 'D',
    about: 'what the sand meets: slot, cloth, pack, mm',
    source: 'slot .8; .65 x .25; d15 over 4.5, d15 a quarter of the way in the logarithm from 1.07 to 1.23 mm',
    expected: [0.8, 0.1625, 0.2462],
    tolerance: { rel: 0.001 },
    compute: () => [
      screenOpening_mm({ slotWidth_mm: 0.8 }),
      screenOpening_mm({ slotWidth_mm: 0.8, cloth_mm: 0.25 }),
      openingTo_mm({ slotWidth_mm: 0.8, pack: PACKS.pack1 }),
    ],
  });
});

describe('remarks on a plan', () => {
  /** What a remark asks for; fails where it is not made. */
  function want(change: Partial<WellPlan>, note: NoteKey): number {
    const plan = { ...PLAN, ...change };
    const found = planNotes(plan, planFigures(plan, FACTS), FACTS).find((remark) => remark.note === note);
    return found?.want ?? NaN;
  }
  const CASES: readonly (readonly [string, 'V' | 'M', string, string, number, () => number])[] = [
    [
      'S-15',
      'V',
      'gap to place stuff in: 2 in',
      'ASTM D5092; California Bulletin 74-90',
      2 * 0.0254,
      () => want({}, 'gapBelow50'),
    ],
    [
      'S-19',
      'V',
      'blank casing below the lowest level: 5 ft',
      TI814,
      5 * FT_m,
      () => want({ screenFrom_m: 7 }, 'screenNearLevel') - FACTS.lowest_m!,
    ],
    [
      'Q-08',
      'V',
      'casing above the ground: 12 in',
      'EPA-570/9-75-001 via a US Navy manual',
      12 * 0.0254,
      () => want({ stickUp_m: 0.1 }, 'stickUpLow'),
    ],
    [
      'A-08/note',
      'M',
      'depth of the seal of a hand-made well: 3 m',
      'RWSN code 2010 and others, from memory',
      3,
      () => want({ sealTo_m: 2 }, 'sealShallow'),
    ],
    [
      'S-06/note',
      'V',
      'share of the pack that the slot holds: 85 %',
      `${TI814}; TM 5-813-1`,
      0.85,
      () => want({ pack: 'pack04', packTop_m: 12, cloth: 'none' }, 'packRunsOut'),
    ],
    [
      'S-13',
      'M',
      'pack above the screen: .6 m',
      'ASTM D5092 and practice, from memory',
      0.6,
      () => want({ pack: 'pack1', packTop_m: 14 }, 'packLow'),
    ],
    ['S-22', 'M', 'sump: .5 m', 'common practice, no source', 0.5, () => want({ sump_m: 0 }, 'sumpShort')],
    [
      'S-23',
      'M',
      'a casing of 18.5 m takes a centraliser each 6 m',
      'Driscoll and state rules, from memory',
      4,
      () => want({ centralisers: 1 }, 'centralisersFew'),
    ],
  ];
  for (const [id, mark, about, source, expected, compute] of CASES)
    row({ id, mark, about, source, expected, tolerance: { rel: 0.02 }, compute });
});
