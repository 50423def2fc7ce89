// Published and derived values for the ground: grain limits, conductivity, yield, strength, the chain of beds.
import { describe } from 'vitest';
import { FIRST_VISIBLE_CLASS, SIZE_CLASSES } from '../../sim/materials/sizes';
import { SOILS, type SoilKind } from '../../sim/materials/soils';
import { nextState, sharesOf } from '../../sim/ground/chain';
import { hazenConductivity_ms, layerConductivity_ms, uniformity_ratio } from '../../sim/ground/conductivity';
import { ground } from '../../sim/ground/generate';
import { fractionsOf } from '../../sim/ground/gradation';
import type { Ground } from '../../sim/ground/ground';
import { saturationAt } from '../../sim/ground/lookup';
import { createStream } from '../../sim/numeric/stream';
import { row } from './row';

const ISO = 'ISO 14688-1';
const upperOf = (id: string): number => SIZE_CLASSES.find((c) => c.id === id)!.upper_mm;
const lowerOf = (id: string): number => SIZE_CLASSES.find((c) => c.id === id)!.lower_mm;

/** K of a kind at its finest, middle and coarsest variation. */
const conductivities_ms = (...kinds: SoilKind[]): number[] =>
  kinds.flatMap((kind) => [0.7, 1, 1.4].map((size) => layerConductivity_ms(SOILS[kind], size)));

describe('grain sizes', () => {
  const limit = (id: string, mark: 'V' | 'M', finer: string, coarser: string, expected: number) =>
    row({
      id,
      mark,
      about: `${coarser} begins where ${finer} ends, mm`,
      source: ISO,
      expected: [expected, expected],
      tolerance: 'exact',
      compute: () => [upperOf(finer), lowerOf(coarser)],
    });
  limit('GS-1', 'V', 'clay', 'silt', 0.002);
  limit('GS-2', 'V', 'silt', 'fineSand', 0.063);
  limit('GS-3', 'V', 'coarseSand', 'fineGravel', 2);
  limit('GS-5', 'M', 'fineSand', 'mediumSand', 0.2);
  limit('GS-6', 'M', 'mediumSand', 'coarseSand', 0.63);
  limit('GS-7', 'M', 'fineGravel', 'mediumGravel', 6.3);
  limit('GS-8', 'M', 'mediumGravel', 'coarseGravel', 20);
  row({
    id: 'GS-4',
    mark: 'V',
    about: 'gravel ends and cobbles begin at 63 mm: grains of 64-190 mm count as cobbles only',
    source: ISO,
    expected: 1,
    tolerance: { abs: 1e-12 },
    compute: () => fractionsOf({ d10_mm: 70, d30_mm: 80, d50_mm: 100, d60_mm: 120, d85_mm: 160 }).cobble_frac,
  });
  row({
    id: 'VG-1',
    mark: 'V',
    about: 'grains from about .07 mm up are seen singly: the first visible class holds .07-.2 mm',
    source: 'US Air Force handbook 10-222 vol. 14, 2008, A3.3',
    expected: [1, 1],
    tolerance: 'exact',
    compute: () => [
      SIZE_CLASSES[FIRST_VISIBLE_CLASS].lower_mm <= 0.07 && SIZE_CLASSES[FIRST_VISIBLE_CLASS].upper_mm > 0.075 ? 1 : 0,
      SIZE_CLASSES[FIRST_VISIBLE_CLASS - 1].d_mm < 0.07 ? 1 : 0,
    ],
  });
  const fines_frac = (kind: SoilKind): number => {
    const { fractions } = fractionsOf(SOILS[kind]);
    return fractions[0] + fractions[1];
  };
  const FIELD = 'New Zealand field description guide, as used by NZ MfE 2011';
  row({
    id: 'FD-1',
    mark: 'V',
    about: 'ground named sand or gravel has over 65 % of it, so under 35 % fines',
    source: FIELD,
    expected: { from: 0, to: 0.35 },
    compute: () =>
      (['siltySand', 'fineSand', 'mediumSand', 'coarseSand', 'fineGravel', 'coarseGravel'] as const).map(fines_frac),
  });
  row({
    id: 'FD-2',
    mark: 'V',
    about: 'ground named clay or silt has over 35 % of clay and silt',
    source: FIELD,
    expected: { from: 0.35, to: 1 },
    compute: () => (['softClay', 'firmClay', 'stiffClay', 'swellingClay', 'silt'] as const).map(fines_frac),
  });
  row({
    id: 'FD-3',
    mark: 'V',
    about: 'silty sand has 20-50 % of silt',
    source: FIELD,
    expected: { from: 0.2, to: 0.5 },
    compute: () => fractionsOf(SOILS.siltySand).fractions[1],
  });
});

describe('conductivity', () => {
  const CARRIER = 'Hazen 1892, 1911; Carrier 2003, J. Geotech. Geoenv. Eng. 129(11):1054';
  const WOESSNER =
    'The Groundwater Project, Hydrogeologic properties of earth materials (Woessner & Poeter 2020), exercise 6b';
  const VENTING = 'soil-venting guidance after Johnson et al., K by material';
  row({
    id: 'K-F1',
    mark: 'V',
    about: 'Hazen at C 100: K in cm/s is 1.0 times d10 in mm squared, .1, .5, 1, 2.5 mm',
    source: CARRIER,
    expected: [0.01, 0.25, 1, 6.25],
    tolerance: { rel: 1e-12 },
    compute: () => [0.1, 0.5, 1, 2.5].map((d10_mm) => hazenConductivity_ms(d10_mm) * 100),
  });
  row({
    id: 'K-F1b',
    mark: 'V',
    about: 'river sand with d10 .1-.7 mm: the coefficient lies between 100 and 1000 (K in cm/s, d10 in cm)',
    source: CARRIER,
    expected: { from: 100 - 1e-9, to: 1000 },
    compute: () =>
      Array.from({ length: 40 }, (_, seed) => ground('flood-plain', seed))
        .flatMap((g) => g.layers)
        .filter((l) => l.d10_mm >= 0.1 && l.d10_mm <= 0.7 && l.d60_mm / l.d10_mm < 5)
        .map((l) => (l.K_ms * 100) / ((l.d10_mm / 10) * (l.d10_mm / 10))),
  });
  row({
    id: 'K-01',
    mark: 'R',
    about: 'Hazen, d10 .20 mm, C 100',
    source: 'recomputed from K-F1',
    expected: 4e-4,
    tolerance: { rel: 1e-6 },
    compute: () => hazenConductivity_ms(0.2),
  });
  row({
    id: 'K-02',
    mark: 'R',
    about: 'Hazen, d10 .10 and .30 mm',
    source: 'recomputed from K-F1',
    expected: [1e-4, 9e-4],
    tolerance: { rel: 1e-12 },
    compute: () => [hazenConductivity_ms(0.1), hazenConductivity_ms(0.3)],
  });
  row({
    id: 'K-03',
    mark: 'V',
    about: 'Cu of a coarse sand, d60 1.3, d10 .66 mm',
    source: WOESSNER,
    expected: 1.96,
    tolerance: { abs: 0.02 },
    compute: () => uniformity_ratio(1.3, 0.66),
  });
  row({
    id: 'K-04',
    mark: 'V',
    about: 'Cu of a fine sand, d60 .27, d10 .058 mm',
    source: WOESSNER,
    expected: 4.6,
    tolerance: { abs: 0.06 },
    compute: () => uniformity_ratio(0.27, 0.058),
  });
  row({
    id: 'K-05',
    mark: 'R',
    about: 'Hazen at C 100 for the sands of K-03 and K-04',
    source: 'recomputed from K-F1',
    expected: [4.356e-3, 3.364e-5],
    tolerance: { rel: 1e-3 },
    compute: () => [hazenConductivity_ms(0.66), hazenConductivity_ms(0.058)],
  });
  const envelope = (id: string, material: string, from: number, to: number, ...kinds: SoilKind[]) =>
    row({
      id,
      mark: 'V',
      about: `K of ${material} over all its variation, ${from} to ${to} m/s`,
      source: VENTING,
      expected: { from, to },
      compute: () => conductivities_ms(...kinds),
    });
  envelope('KM-1', 'clayey silt', 1e-9, 1e-6, 'silt');
  envelope('KM-2', 'silty sand', 7e-8, 9e-4, 'siltySand');
  envelope('KM-3', 'clean sand', 1e-6, 1e-2, 'fineSand', 'mediumSand', 'coarseSand');
  envelope('KM-4', 'gravel', 1e-3, 1, 'fineGravel', 'coarseGravel');
  const DOMENICO = 'Domenico & Schwartz 1990, table 3.2';
  const range = (id: string, source: string, material: string, from: number, to: number, ...kinds: SoilKind[]) =>
    row({
      id,
      mark: 'M',
      about: `K of ${material}, ${from} to ${to} m/s`,
      source,
      expected: { from, to },
      compute: () => kinds.map((kind) => layerConductivity_ms(SOILS[kind], 1)),
    });
  range('KM-5', DOMENICO, 'coarse sand', 9e-7, 6e-3, 'coarseSand');
  range('KM-6', DOMENICO, 'medium sand', 9e-7, 5e-4, 'mediumSand');
  range('KM-7', DOMENICO, 'fine sand', 2e-7, 2e-4, 'fineSand');
  range('KM-8', DOMENICO, 'silt', 1e-9, 2e-5, 'silt');
  range('KM-9', DOMENICO, 'clay', 1e-11, 4.7e-9, 'softClay', 'firmClay', 'stiffClay', 'swellingClay');
  range('KM-10', 'Freeze & Cherry 1979, table 2.2', 'gravel', 1e-3, 1, 'fineGravel', 'coarseGravel', 'cobbles');
  range('KM-11', 'Freeze & Cherry 1979, table 2.2', 'silty sand', 1e-7, 1e-3, 'siltySand');

  /** K along the beds of the thickest aquifer that starts within 40 m, middle value of many flood plains. */
  const middleAquiferK_ms = (): number => {
    const values = Array.from({ length: 300 }, (_, seed) => thickestAquiferK_ms(ground('flood-plain', seed)));
    return values.sort((a, b) => a - b)[150];
  };
  const thickestAquiferK_ms = (g: Ground): number => {
    let best = { thick_m: 0, K_ms: 0 };
    for (const head of g.heads.filter((h) => h.top_m < 40)) {
      const beds = g.layers.filter((l) => l.top_m >= head.top_m && l.bottom_m <= head.bottom_m);
      const thick_m = beds.reduce((sum, l) => sum + l.bottom_m - l.top_m, 0);
      const through = beds.reduce((sum, l) => sum + (l.bottom_m - l.top_m) * l.K_ms, 0);
      if (thick_m > best.thick_m) best = { thick_m, K_ms: through / thick_m };
    }
    return best.K_ms;
  };
  row({
    id: 'K-10',
    mark: 'V',
    about: 'field K of a river-plain sand aquifer, 92 pumping tests: the middle flood plain of 300 seeds',
    source: 'Shahinuzzaman et al. 2020, JGEP 8:222',
    expected: { from: 3.76e-4, to: 7.12e-4 },
    compute: middleAquiferK_ms,
  });
  row({
    id: 'K-11',
    mark: 'V',
    about: 'K from monitoring wells in the first aquifer of a flood plain: the middle flood plain of 300 seeds',
    source: 'Islam et al. 2016, JHPN 35:26',
    expected: { from: 3.9e-4, to: 4.4e-3 },
    compute: middleAquiferK_ms,
  });
});

describe('porosity and yield', () => {
  const JOHNSON = 'Johnson 1967, USGS WSP 1662-D table 29';
  const yieldOf = (id: string, material: string, average: number, from: number, to: number, ...kinds: SoilKind[]) =>
    row({
      id,
      mark: 'V2',
      about: `specific yield of ${material}, ${from} to ${to} (average ${average})`,
      source: JOHNSON,
      expected: { from, to },
      compute: () => kinds.map((kind) => SOILS[kind].Sy_frac),
    });
  yieldOf('SY-1', 'clay', 0.02, 0, 0.05, 'softClay', 'firmClay', 'stiffClay', 'swellingClay');
  yieldOf('SY-2', 'silt', 0.18, 0.03, 0.19, 'silt');
  const averageYield = (id: string, material: string, expected: number, kind: SoilKind) =>
    row({
      id,
      mark: 'V2',
      about: `specific yield of ${material}, average`,
      source: JOHNSON,
      expected,
      tolerance: { abs: 0.005 },
      compute: () => SOILS[kind].Sy_frac,
    });
  averageYield('SY-3', 'fine sand', 0.21, 'fineSand');
  averageYield('SY-4', 'medium sand', 0.26, 'mediumSand');
  averageYield('SY-5', 'coarse sand', 0.27, 'coarseSand');
  averageYield('SY-6', 'fine gravel', 0.25, 'fineGravel');
  averageYield('SY-7', 'coarse gravel', 0.22, 'coarseGravel');
  averageYield('SY-8', 'peat', 0.44, 'peat');
  const porosity = (id: string, material: string, from: number, to: number, ...kinds: SoilKind[]) =>
    row({
      id,
      mark: 'M',
      about: `porosity of ${material} over all its variation, ${from} to ${to}`,
      source: 'Morris & Johnson 1967, USGS WSP 1839-D',
      expected: { from, to },
      compute: () => kinds.flatMap((kind) => [SOILS[kind].porosity_frac - 0.03, SOILS[kind].porosity_frac + 0.03]),
    });
  porosity('PO-1', 'clay', 0.34, 0.57, 'softClay', 'firmClay', 'stiffClay', 'swellingClay');
  porosity('PO-2', 'silt', 0.34, 0.61, 'silt');
  porosity('PO-3', 'fine sand', 0.26, 0.53, 'fineSand');
  porosity('PO-4', 'medium sand', 0.29, 0.49, 'mediumSand');
  porosity('PO-5', 'coarse sand', 0.31, 0.46, 'coarseSand');
  porosity('PO-6', 'fine gravel', 0.25, 0.39, 'fineGravel');
  porosity('PO-7', 'coarse gravel', 0.24, 0.36, 'coarseGravel');
  row({
    id: 'HE-1',
    mark: 'M',
    about: 'water that stays after drainage, per bulk volume: soil, clay, sand, gravel',
    source: 'Heath 1983, USGS WSP 2220, p. 9',
    expected: [0.15, 0.48, 0.03, 0.01],
    tolerance: { abs: 1e-12 },
    compute: () =>
      [
        [0.55, 0.4],
        [0.5, 0.02],
        [0.25, 0.22],
        [0.2, 0.19],
      ].map(([porosity_frac, Sy_frac]) => {
        const g = ground('terrace', 1);
        g.layers[0] = { ...g.layers[0], porosity_frac, Sy_frac };
        return saturationAt(g, 0) * porosity_frac;
      }),
  });
});

describe('strength felt by the finger', () => {
  const GUIDE = 'New Zealand field description guide, as used by NZ MfE 2011';
  const strength = (id: string, word: string, from: number, to: number, kind: SoilKind) =>
    row({
      id,
      mark: 'V',
      about: `undrained strength of ${word} clay, ${from} to ${to} kPa`,
      source: GUIDE,
      expected: { from, to },
      compute: () => SOILS[kind].su_kPa!,
    });
  strength('FS-1', 'very soft to soft', 0, 50, 'softClay');
  strength('FS-2', 'firm', 50, 100, 'firmClay');
  strength('FS-3', 'stiff', 100, 200, 'stiffClay');
});

describe('patterns', () => {
  row({
    id: 'FG-1',
    mark: 'V2',
    about: 'pattern numbers: gravel, massive sand, bedded sand, clayey sand, silt, clay, peat',
    source: 'FGDC-STD-013-2006 section 37 (USGS TM 11-A2)',
    expected: [601, 607, 608, 612, 616, 620, 657],
    tolerance: 'exact',
    compute: () =>
      (['fineGravel', 'coarseSand', 'fineSand', 'siltySand', 'silt', 'firmClay', 'peat'] as const).map(
        (kind) => SOILS[kind].fgdc!,
      ),
  });
});

describe('the chain that draws the beds', () => {
  const DAVIS = 'Davis, Statistics and Data Analysis in Geology, ch. 4';
  const P = [
    [0.78, 0, 0.22, 0],
    [0, 0.71, 0.29, 0],
    [0.18, 0.07, 0.64, 0.11],
    [0, 0, 0.6, 0.4],
  ];
  const DRAWS = 400_000;

  /** Long walk over P: how often each state is seen two steps after each state, and at all. */
  const walk = (): { twoSteps: number[]; seen: number[]; runs: number[] } => {
    const stream = createStream('chain of four');
    const two = [0, 1, 2, 3].map(() => [0, 0, 0, 0]);
    const seen = [0, 0, 0, 0];
    const runs = [0, 0, 0, 0];
    let before = 0;
    let now = 0;
    for (let i = 0; i < DRAWS; i++) {
      const next = nextState(P, now, stream.uniform());
      two[before][next]++;
      seen[next]++;
      if (next !== now) runs[now]++;
      before = now;
      now = next;
    }
    return {
      twoSteps: two.flatMap((from) => from.map((n) => n / from.reduce((a, b) => a + b, 0))),
      seen: seen.map((n) => n / DRAWS),
      runs: seen.map((n, i) => n / runs[i]),
    };
  };
  row({
    id: 'T-R1',
    mark: 'V',
    about: 'shares two steps on, all 16',
    source: DAVIS,
    expected: [0.64, 0.02, 0.31, 0.02, 0.05, 0.52, 0.39, 0.03, 0.26, 0.09, 0.54, 0.11, 0.11, 0.04, 0.62, 0.23],
    // Published to two digits; its first value is .008 off the exact .648.
    tolerance: { abs: 0.01 },
    compute: () => walk().twoSteps,
  });
  row({
    id: 'T-R2',
    mark: 'V',
    about: 'shares in the long run, third and fourth state',
    source: DAVIS,
    expected: [0.44, 0.08],
    tolerance: { abs: 0.01 },
    compute: () => walk().seen.slice(2),
  });
  row({
    id: 'T-R3',
    mark: 'D',
    about: 'mean run length in steps, 1/(1 - Pii)',
    source: 'derived',
    expected: [4.545, 3.448, 2.778, 1.667],
    tolerance: { rel: 0.02 },
    compute: () => walk().runs,
  });
  row({
    id: 'T-R4',
    mark: 'V',
    about: 'shares from tallies of a log of five beds: A to E, B to A, C to D, D to C, E to A',
    source: DAVIS,
    expected: [0.433, 0.763, 0.479, 0.571, 0.388],
    tolerance: { abs: 0.001 },
    compute: () => {
      const shares = sharesOf([
        [0, 13, 36, 19, 52],
        [29, 0, 5, 4, 0],
        [35, 2, 0, 45, 12],
        [29, 1, 44, 0, 3],
        [26, 23, 9, 9, 0],
      ]);
      return [shares[0][4], shares[1][0], shares[2][3], shares[3][2], shares[4][0]];
    },
  });
  const median_m = (...kinds: SoilKind[]): number => {
    const thick = Array.from({ length: 100 }, (_, seed) => ground('flood-plain', seed))
      .flatMap((g) => g.layers)
      .filter((l) => kinds.includes(l.kind))
      .map((l) => l.bottom_m - l.top_m)
      .sort((a, b) => a - b);
    return thick[Math.floor(thick.length / 2)];
  };
  const bed = (id: string, what: string, from: number, to: number, ...kinds: SoilKind[]) =>
    row({
      id,
      mark: 'M',
      about: `usual thickness of ${what}, ${from} to ${to} m: middle of 100 flood plains`,
      source: 'facies texts (Allen 1965; Miall 1985)',
      expected: { from, to },
      compute: () => median_m(...kinds),
    });
  bed('T-05a', 'channel sand', 2, 20, 'mediumSand', 'coarseSand');
  bed('T-05b', 'bank sand and silt', 0.5, 3, 'silt', 'siltySand');
  bed('T-05c', 'basin clay', 1, 10, 'softClay', 'firmClay');
  bed('T-05d', 'gravel', 0.2, 1.5, 'fineGravel');
  row({
    id: 'T-08',
    mark: 'M',
    about: 'water table of flood plains 1-8 m deep, all of 100 seeds',
    source: 'BGS/DPHE 2001 and similar',
    expected: { from: 1, to: 8 },
    compute: () => Array.from({ length: 100 }, (_, seed) => ground('flood-plain', seed).waterTable_m),
  });
  row({
    id: 'T-08b',
    mark: 'M',
    about: 'seasonal fall of the water table in flood plains up to 1-6 m, all of 100 seeds',
    source: 'BGS/DPHE 2001 and similar',
    expected: { from: 1, to: 6 },
    compute: () =>
      Array.from({ length: 100 }, (_, seed) => ground('flood-plain', seed)).map(
        (g) => Math.round((g.lowestWater_m - g.waterTable_m) * 100) / 100,
      ),
  });
});
