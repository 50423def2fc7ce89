// Annular seal: cement and bentonite, gaps, depths that codes ask for.
import { describe } from 'vitest';
import { sealMass_kg, sealWater_L } from '../../sim/completion/amounts';
import { largestPiece_mm } from '../../sim/completion/bridging';
import { cementIn_kg, slurryDensity_kgm3, slurryYield_m3 } from '../../sim/completion/cement';
import { annulus_m2, gap_m, nominalHole, annulusVolume_m3 } from '../../sim/completion/quantities';
import {
  DEPTH_RULES,
  GAP_RULES,
  ON_PACK_RULES,
  ringSeepage_m3s,
  type SealRule,
  type SealRuleId,
} from '../../sim/completion/sealRules';
import { CEMENT, SEALS } from '../../sim/materials/seals';
import { row } from './row';

const GAL_L = 3.78541;
const SACK_kg = 42.638;
const FT_m = 0.3048;
const IN_m = 0.0254;
const LB_GAL_kgm3 = 119.8264;
const RECOMPUTED = 'recomputed with cement of 3.15, litre of mixing water a kilogram';

/** Water to cement by weight for US gallons to a sack of 94 lb. */
const ratioOf = (gal: number): number => (gal * GAL_L) / SACK_kg;

describe('cement slurry', () => {
  const MIXES = [
    { id: 'A-R1', gal: 5.2, ratio: 0.4617, water_L: 23.08, density: 1876, yield_L: 38.96 },
    { id: 'A-R3', gal: 5, ratio: 0.4439, water_L: 22.2, density: 1896, yield_L: 38.07 },
  ];
  for (const mix of MIXES) {
    row({
      id: `${mix.id}/1`,
      mark: 'R',
      about: `${mix.gal} gal to 94 lb: density, kg/m3`,
      source: RECOMPUTED,
      expected: mix.density,
      tolerance: { rel: 0.002 },
      compute: () => slurryDensity_kgm3(ratioOf(mix.gal)),
    });
    row({
      id: `${mix.id}/2`,
      mark: 'R',
      about: `${mix.gal} gal to 94 lb: slurry from 50 kg, L, and the cement in that slurry, kg`,
      source: RECOMPUTED,
      expected: [mix.yield_L, 50],
      tolerance: { rel: 0.002 },
      compute: () => [50000 * slurryYield_m3(ratioOf(mix.gal)), cementIn_kg(mix.yield_L / 1000, ratioOf(mix.gal))],
    });
  }
  row({
    id: 'A-R1/3',
    mark: 'M',
    about: '5.2 gal to 94 lb: 15.6 lb/gal and 1.18 cubic feet a sack',
    source: 'cement tables for wells, from memory',
    expected: [15.6, 1.18],
    tolerance: { rel: 0.006 },
    compute: () => [
      slurryDensity_kgm3(ratioOf(5.2)) / LB_GAL_kgm3,
      (SACK_kg * slurryYield_m3(ratioOf(5.2))) / (FT_m * FT_m * FT_m),
    ],
  });
  row({
    id: 'A-R6/1',
    mark: 'R',
    about: '6 gal to 94 lb, wetter than the 5.2 that Ohio allows, still reaches its 15 lb/gal, kg/m3',
    source: 'OAC 3745-9-07; 1797.4 kg/m3',
    expected: { from: 1797.4 * 0.999, to: 1810 },
    compute: () => slurryDensity_kgm3(ratioOf(6)),
  });
  row({
    id: 'A-R6/2',
    mark: 'R',
    about: '6 gal to 94 lb: 15.05 lb/gal',
    source: RECOMPUTED,
    expected: 15.05,
    tolerance: { rel: 0.001 },
    compute: () => slurryDensity_kgm3(ratioOf(6)) / LB_GAL_kgm3,
  });
  row({
    id: 'A-16/1',
    mark: 'V',
    about: "the kit's mix: water to 50 kg, L, not over 5.2 gal to 94 lb",
    source: 'OAC 3745-9-07',
    expected: (5.2 * GAL_L * 50) / SACK_kg,
    tolerance: { rel: 0.001 },
    compute: () => sealWater_L('cement', 50),
  });
  row({
    id: 'A-16/2',
    mark: 'V',
    about: "the kit's mix weighs at least 15 lb/gal",
    source: 'OAC 3745-9-07',
    expected: { from: 15 * LB_GAL_kgm3, to: 2000 },
    compute: () => slurryDensity_kgm3(CEMENT.water_ratio),
  });
  row({
    id: 'A-15',
    mark: 'V',
    about: "neat cement: the kit's water to 50 kg within 5 to 6 gal to 94 lb, L",
    source: 'California Bulletin 74-90; Kern County',
    expected: { from: 22.2, to: 26.6 },
    compute: () => sealWater_L('cement', 50),
  });
  row({
    id: 'A-P',
    mark: 'D',
    about: 'dry cement in a cubic metre of seal as the table of seals has it, kg',
    source: '1/(1/3150 + .4617/1000)',
    expected: SEALS.cement.placed_kgm3,
    tolerance: { rel: 0.001 },
    compute: () => sealMass_kg('cement', 1),
  });
});

describe('bentonite', () => {
  row({
    id: 'A-11',
    mark: 'V',
    about: 'water for 2 lb of bentonite, US gal',
    source: 'Kern County: about 1 gal',
    expected: 1,
    tolerance: { rel: 0.005 },
    compute: () => sealWater_L('bentoniteGranules', 2 * 0.453592) / GAL_L,
  });
  row({
    id: 'A-06',
    mark: 'V',
    about: 'not above 800 ppm of salt, g/L',
    source: 'Oregon, OAR 690-210-0340',
    expected: [0.8, 0.8],
    tolerance: 'exact',
    compute: () => [SEALS.bentoniteGranules.saltLimit_gL!, SEALS.bentonitePellets.saltLimit_gL!],
  });
  row({
    id: 'A-10',
    mark: 'V',
    about: 'largest pellet for a gap of 50 mm: a fifth, mm',
    source: 'California Bulletin 74-90; Kern County',
    expected: 10,
    tolerance: { rel: 1e-12 },
    compute: () => largestPiece_mm(0.05),
  });
  row({
    id: 'A-12',
    mark: 'V',
    about: 'wait before the next layer, h: half an hour to an hour is usual, 4 to 24 by stricter guidance',
    source: 'regulator plan; EPA RCRA draft guidance 1992',
    expected: { from: 0.5, to: 24 },
    compute: () => [SEALS.bentoniteGranules.ready_s / 3600, SEALS.bentonitePellets.ready_s / 3600],
  });
  row({
    id: 'A-13',
    mark: 'V',
    about: 'bentonite is unfit where it dries out, cement is not (1: dries out)',
    source: 'California Bulletin 74-90; EPA 1992',
    expected: [1, 1, 0],
    tolerance: 'exact',
    compute: () =>
      [SEALS.bentoniteGranules, SEALS.bentonitePellets, SEALS.cement].map(({ driesOut }) => Number(driesOut)),
  });
});

describe('how tight', () => {
  const RANGES = [
    { id: 'A-20/1', what: 'good bentonite', from: 1e-11, to: 1e-9, seals: ['bentoniteGranules', 'bentonitePellets'] },
    { id: 'A-20/2', what: 'neat cement', from: 1e-10, to: 1e-8, seals: ['cement'] },
    { id: 'A-20/3', what: 'clay cuttings', from: 1e-8, to: 1e-6, seals: ['clay'] },
  ] as const;
  for (const r of RANGES)
    row({
      id: r.id,
      mark: 'M',
      about: `K of ${r.what}, m/s`,
      source: 'handbooks, from memory',
      expected: { from: r.from, to: r.to },
      compute: () => r.seals.map((name) => SEALS[name].K_ms),
    });
  row({
    id: 'A-21',
    mark: 'M',
    about: 'cement: a day until it may be worked on, h',
    source: 'practice, from memory',
    expected: 24,
    tolerance: 'exact',
    compute: () => SEALS.cement.ready_s / 3600,
  });
  row({
    id: 'A-R5/ring',
    mark: 'R',
    about: 'ring of 150 mm round 63 mm under a full gradient, L a day: seal of 1e-9, loose sand of 1e-4',
    source: 'Darcy: K A',
    expected: [0.001257, 125.7],
    tolerance: { rel: 0.002 },
    compute: () => [1e-9, 1e-4].map((K_ms) => ringSeepage_m3s(K_ms, annulus_m2(0.075, 0.063)) * 1000 * 86400),
  });
});

describe('room', () => {
  row({
    id: 'S-R4',
    mark: 'R',
    about: 'ring of 200 mm round 110 mm, m3 a metre',
    source: 'geometry',
    expected: 0.021913,
    tolerance: { rel: 1e-4 },
    compute: () => annulusVolume_m3(nominalHole(0.2), 0.11, 20, 3, 4),
  });
  row({
    id: 'S-R5',
    mark: 'R',
    about: 'gap all round, mm: 150/63, 200/110, 110/50',
    source: 'geometry',
    expected: [43.5, 45, 30],
    tolerance: { abs: 1e-9 },
    compute: () => [1000 * gap_m(0.075, 0.063), 1000 * gap_m(0.1, 0.11), 1000 * gap_m(0.055, 0.05)],
  });
});

describe('what codes ask for', () => {
  const least = (rules: readonly SealRule[], id: SealRuleId): number => rules.find((rule) => rule.id === id)!.least_m;
  const CASES: readonly (readonly [string, 'V' | 'V2' | 'M', string, string, number, () => number])[] = [
    [
      'A-01',
      'V',
      'community well: 50 ft',
      'California Bulletin 74-81/74-90 section 9A',
      50 * FT_m,
      () => least(DEPTH_RULES, 'californiaTown'),
    ],
    [
      'A-02',
      'V',
      'well of one household: 20 ft',
      'California Bulletin 74-81/74-90 section 9A',
      20 * FT_m,
      () => least(DEPTH_RULES, 'california'),
    ],
    [
      'A-03',
      'V',
      'thickness all round: 2 in',
      'California Bulletin 74-90 section 9E',
      2 * IN_m,
      () => least(GAP_RULES, 'california'),
    ],
    ['A-05/1', 'V', 'depth: 18 ft', 'Montana ARM 36.21', 18 * FT_m, () => least(DEPTH_RULES, 'montana')],
    ['A-05/2', 'V', 'thickness all round: 1.5 in', 'Montana ARM 36.21', 1.5 * IN_m, () => least(GAP_RULES, 'montana')],
    [
      'A-07',
      'V',
      'hole of casing + 4 in: half of it all round',
      'Wyoming water quality rules, chapter 26, section 6',
      2 * IN_m,
      () => least(GAP_RULES, 'wyoming'),
    ],
    [
      'A-08',
      'V2',
      'hand-made and rural wells: 3 m',
      'charity engineering page; RWSN code 2010 and others similar, from memory',
      3,
      () => least(DEPTH_RULES, 'handWells'),
    ],
    [
      'A-09/1',
      'V',
      'bentonite on the pack: .5 m',
      "a relief agency's page on boreholes",
      0.5,
      () => least(ON_PACK_RULES, 'reliefPack'),
    ],
    [
      'A-09/2',
      'V',
      'bentonite on the pack: 3 ft',
      'regulator plan; ASTM D5092 alike, from memory',
      3 * FT_m,
      () => least(ON_PACK_RULES, 'monitoringPack'),
    ],
  ];
  for (const [id, mark, about, source, expected, compute] of CASES)
    row({ id, mark, about: `${about}, m`, source, expected, tolerance: { rel: 0.016 }, compute });
});
