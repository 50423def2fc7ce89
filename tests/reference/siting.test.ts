// Published, remembered and recomputed values of what gets into a well: from a latrine, down the ring, down the ground.
import { describe } from 'vitest';
import { groundPath_s, ringLeak, type RingCells } from '../../sim/well/leak';
import { safeDistance_m, travelRisk, travelTime_s } from '../../sim/well/latrine';
import { row } from './row';

const DAY_s = 86400;
const YEAR_s = 365.25 * DAY_s;
const RING_m2 = (Math.PI / 4) * (0.15 * 0.15 - 0.063 * 0.063);

/** A ring of cells of .25 m, the lowest last: K and pores of each stretch of it. */
function ringOf(stretches: readonly (readonly [length_m: number, K_ms: number, porosity_frac: number])[]): RingCells {
  const cells = stretches.flatMap(([length_m, K_ms, n]) =>
    Array.from({ length: Math.round(length_m / 0.25) }, () => [K_ms, n] as const),
  );
  return {
    count: cells.length,
    height_m: Float64Array.from(cells, () => 0.25),
    area_m2: Float64Array.from(cells, () => RING_m2),
    K_ms: Float64Array.from(cells, ([K_ms]) => K_ms),
    porosity_frac: Float64Array.from(cells, ([, n]) => n),
  };
}

describe('the latrine', () => {
  row({
    id: 'Q-R1',
    mark: 'R',
    about: 'K 10 m/d, gradient .01, pores .2, 30 m: 60 days',
    source: 'Darcy; ARGOSS 2001 (from memory), recomputed',
    expected: 60,
    tolerance: { rel: 1e-6 },
    compute: () => travelTime_s(0.2, 30, 10 / DAY_s, 0.01) / DAY_s,
  });
  for (const [days, distances_m] of [
    [50, [2.5, 12.5, 25, 50, 125]],
    [25, [1.25, 6.25, 12.5, 25, 62.5]],
  ] as const)
    row({
      id: `Q-R2 ${days} d`,
      mark: 'R',
      about: `distance that leaves ${days} days, K 1, 5, 10, 20, 50 m/d`,
      source: 'Darcy; ARGOSS 2001 (from memory), recomputed',
      expected: distances_m,
      tolerance: { rel: 1e-6 },
      compute: () => [1, 5, 10, 20, 50].map((K_md) => safeDistance_m(0.2, K_md / DAY_s, 0.01, days * DAY_s)),
    });
  row({
    id: 'Q-R2b',
    mark: 'R',
    about: '30 m leave 50 days up to K 12 m/d, 1.4e-4 m/s, and not beyond',
    source: 'Sphere 2018 distance (from memory) with Darcy, recomputed',
    expected: 30,
    tolerance: { rel: 1e-6 },
    compute: () => safeDistance_m(0.2, 12 / DAY_s, 0.01, 50 * DAY_s),
  });
  const CLASSES = ['significant', 'low', 'veryLow'];
  row({
    id: 'Q-05',
    mark: 'M',
    about: 'classes: under 25 days significant, to 50 low, over 50 very low',
    source: 'ARGOSS 2001, BGS CR/01/142 (from memory)',
    expected: [0, 0, 1, 1, 1, 2, 2],
    tolerance: 'exact',
    compute: () => [1, 24.9, 25, 40, 50, 50.1, 60].map((days) => CLASSES.indexOf(travelRisk(days * DAY_s))),
  });
  row({
    id: 'Q-02',
    mark: 'V',
    about: 'the old 15 to 30 m are too strict in fine soil and too lax in coarse: days in K 1e-6 and 4e-3 m/s',
    source: 'Strauss 2000 review, on Wagner & Lanoix 1958',
    expected: [2, 2, 0, 0],
    tolerance: 'exact',
    compute: () =>
      [
        [15, 1e-6],
        [30, 1e-6],
        [15, 4e-3],
        [30, 4e-3],
      ].map(([distance_m, K_ms]) => CLASSES.indexOf(travelRisk(travelTime_s(0.35, distance_m, K_ms, 0.01)))),
  });
});

describe('down the ring', () => {
  row({
    id: 'A-R5',
    mark: 'R',
    about: '63 in 150 mm, unit gradient, K 1e-9 and 1e-4: litres a day',
    source: 'Darcy, recomputed',
    expected: [0.001257, 125.7],
    tolerance: { rel: 2e-3 },
    compute: () => [1e-9, 1e-4].map((K_ms) => ringLeak(ringOf([[3, K_ms, 0.4]]), 0).flow_m3s * 1000 * DAY_s),
  });
  row({
    id: 'A-R5b',
    mark: 'D',
    about: '3 m of sound seal, K 1e-9, pores .5: years',
    source: 'Darcy: n L/(K i)',
    expected: (0.5 * 3) / 1e-9 / YEAR_s,
    tolerance: { rel: 1e-9 },
    compute: () => ringLeak(ringOf([[3, 1e-9, 0.5]]), 0).time_s / YEAR_s,
  });
  row({
    id: 'A-R5c',
    mark: 'D',
    about: 'no seal, 12 m of loose sand, K 3e-4, pores .4: hours',
    source: 'Darcy: n L/(K i)',
    expected: (0.4 * 12) / 3e-4 / 3600,
    tolerance: { rel: 1e-9 },
    compute: () => ringLeak(ringOf([[12, 3e-4, 0.4]]), 0).time_s / 3600,
  });
  row({
    id: 'A-R5e',
    mark: 'D',
    about: 'the same seal under 6 m of sand: the water over it drives it three times as hard',
    source: 'Darcy in a row of cells of one section',
    expected: (0.5 + 9) / (3 / 1e-8 + 6 / 1e-5),
    tolerance: { rel: 1e-9 },
    compute: () =>
      ringLeak(
        ringOf([
          [6, 1e-5, 0.4],
          [3, 1e-8, 0.5],
          [1, 1e-2, 0.4],
        ]),
        0.5,
      ).flow_m3s / RING_m2,
  });
  row({
    id: 'A-R5d',
    mark: 'D',
    about:
      'seal over sand over gravel with a pond of .5 m: what passes the seal, (pond + 3)/(3/K), fills the pores below',
    source: 'Darcy; sand that drains freely does not suck',
    expected: (0.5 * 3 + 0.4 * 6 + 0.4 * 1) / (3.5 / (3 / 1e-8)),
    tolerance: { rel: 1e-9 },
    compute: () =>
      ringLeak(
        ringOf([
          [3, 1e-8, 0.5],
          [6, 1e-5, 0.4],
          [1, 1e-2, 0.4],
        ]),
        0.5,
      ).time_s,
  });
});

describe('down the ground beside it', () => {
  const beds = [
    { top_m: 0, bottom_m: 2, K_ms: 1e-6, porosity_frac: 0.45 },
    { top_m: 2, bottom_m: 20, K_ms: 3e-4, porosity_frac: 0.39 },
  ];
  row({
    id: 'A-G1',
    mark: 'D',
    about: 'topsoil over sand to 5 m, unit gradient: pores over the flow of the topsoil',
    source: 'Darcy with K across beds, Freeze & Cherry 1979 (from memory)',
    expected: (0.45 * 2 + 0.39 * 3) / 1e-6,
    tolerance: { rel: 1e-9 },
    compute: () => groundPath_s(beds, 0, 5, 0),
  });
  row({
    id: 'A-G2',
    mark: 'D',
    about: 'from the floor of a latrine at 3 m, in sand alone, a pond of 1 m over 2 m of way',
    source: 'Darcy',
    expected: (0.39 * 2) / (3e-4 * 1.5),
    tolerance: { rel: 1e-9 },
    compute: () => groundPath_s(beds, 3, 5, 1),
  });
});
