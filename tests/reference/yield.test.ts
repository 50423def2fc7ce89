// Published, remembered and recomputed values of lift, yield, people served and the salt of the water.
import { describe } from 'vitest';
import { WELL_PUMPS } from '../../sim/materials/wellPumps';
import { conductivity_uScm, saltClass } from '../../sim/well/drinking';
import { allowedDrawdown_m, deepestDraw_m, suctionCeiling_m } from '../../sim/well/lift';
import { HAND_PUMP_M3S, NEED_m3, PEOPLE_A_PUMP, PUMPED_A_DAY_s, peopleServed } from '../../sim/well/need';
import {
  drawdownOf_m,
  largestYield_m3s,
  responseAfter_sm2,
  seasonResponse_sm2,
  type Intake,
} from '../../sim/well/yield';
import { row } from './row';

const LITRE_A_MINUTE_m3s = 1 / 60000;
const HOUR_s = 3600;
const DAY_s = 86400;

describe('how deep a pump draws', () => {
  const ALTITUDES_m = [0, 500, 1000, 1500, 2000, 2500];
  row({
    id: 'Y-R1',
    mark: 'R',
    about: 'what the air lifts at 20 C, 0 to 2500 m',
    source: 'ISO 2533 air, standard water tables, recomputed',
    expected: [10.11, 9.51, 8.94, 8.4, 7.88, 7.39],
    tolerance: { rel: 2e-3 },
    compute: () => ALTITUDES_m.map((altitude_m) => suctionCeiling_m(altitude_m, 20)),
  });
  row({
    id: 'Y-R1b',
    mark: 'R',
    about: 'seven tenths of that, 500 to 2500 m',
    source: 'handbook share .7 (from memory), recomputed',
    expected: [6.66, 6.26, 5.88, 5.52, 5.17],
    tolerance: { rel: 2e-3 },
    compute: () => ALTITUDES_m.slice(1).map((altitude_m) => deepestDraw_m(WELL_PUMPS.suction, altitude_m, 20)),
  });
  row({
    id: 'Y-22',
    mark: 'M',
    about: 'usual rule at low altitude: at most 7 m to the moving level',
    source: 'handbooks (from memory)',
    expected: 7,
    tolerance: { rel: 1e-9 },
    compute: () => deepestDraw_m(WELL_PUMPS.suction, 0, 20),
  });
  row({
    id: 'Y-21',
    mark: 'V',
    about: 'suction pumps in use: 6.40 m in the field, 8.08 m on a bench',
    source: 'Shah 2024, Birgunj, abstract',
    expected: { from: 6.4, to: 8.08 },
    compute: () => deepestDraw_m(WELL_PUMPS.suction, 80, 25),
  });
  row({
    id: 'Y-21b',
    mark: 'V',
    about: 'failure at 9.45 to 9.60 m lies just under what the air lifts',
    source: 'Shah 2024, Birgunj, abstract',
    expected: { from: 9.6, to: 10.33 },
    compute: () => suctionCeiling_m(80, 25),
  });
  row({
    id: 'Y-20',
    mark: 'V',
    about: 'a deep piston pump draws from 45 m at any altitude',
    source: 'Practical Action brief',
    expected: [45, 45],
    tolerance: 'exact',
    compute: () => [0, 2000].map((altitude_m) => deepestDraw_m(WELL_PUMPS.deepPiston, altitude_m, 20)),
  });
});

describe('what a well gives', () => {
  /** Sand of K 3.2e-4, 12 m thick with a free table, as in the worked sums below. */
  const well: Intake = {
    T_m2s: 3.84e-3,
    S_ratio: 0.2,
    radius_m: 0.0315,
    skin_ratio: 0,
    wellLoss_s2m5: 0,
    freeThickness_m: 0,
  };
  const W = (u: number): number => -0.5772156649 - Math.log(u) + u;
  const u = (time_s: number): number => (0.0315 * 0.0315 * 0.2) / (4 * 3.84e-3 * time_s);
  row({
    id: 'Y-S1',
    mark: 'D',
    about: 'drawdown of a clean full well after a day at 17 L/min',
    source: 'Theis 1935, small u',
    expected: ((17 * LITRE_A_MINUTE_m3s) / (4 * Math.PI * 3.84e-3)) * W(u(DAY_s)),
    tolerance: { rel: 1e-8 },
    compute: () => drawdownOf_m(well, 17 * LITRE_A_MINUTE_m3s, responseAfter_sm2(well, DAY_s)),
  });
  row({
    id: 'Y-S2',
    mark: 'D',
    about: 'a season of 180 days at 8 h a day: a third of the season and two thirds of the last hours',
    source: 'superposition, Theis 1935',
    expected: (W(u(180 * DAY_s)) / 3 + (2 / 3) * W(u(8 * HOUR_s))) / (4 * Math.PI * 3.84e-3),
    tolerance: { rel: 1e-8 },
    compute: () => seasonResponse_sm2(well, 8 * HOUR_s, 180 * DAY_s),
  });
  row({
    id: 'Y-S3',
    mark: 'D',
    about: 'largest rate under cover without well loss: allowed over response',
    source: 'Theis 1935, linear in Q',
    expected: 3 / 500,
    tolerance: { rel: 1e-8 },
    compute: () => largestYield_m3s(well, 3, 500),
  });
  row({
    id: 'Y-S4',
    mark: 'D',
    about: 'largest rate with a free table: (s - s2/(2b)) over response; 4 m of 12',
    source: 'Jacob 1944 (from memory)',
    expected: (4 - 16 / 24) / 500,
    tolerance: { rel: 1e-8 },
    compute: () => largestYield_m3s({ ...well, freeThickness_m: 12 }, 4, 500),
  });
  row({
    id: 'Y-S5',
    mark: 'D',
    about: 'largest rate with well loss: the root of C Q2 + B Q = s',
    source: 'Jacob 1947',
    expected: (-500 + Math.sqrt(500 * 500 + 4 * 2e5 * 3)) / (2 * 2e5),
    tolerance: { rel: 1e-8 },
    compute: () => largestYield_m3s({ ...well, wellLoss_s2m5: 2e5 }, 3, 500),
  });
  row({
    id: 'Y-S6',
    mark: 'M',
    about: "allowed: to the screen's top, two thirds of a free table, the reach of the pump",
    source: 'handbooks; Driscoll 1986 (from memory)',
    expected: [8, 3.5, 6],
    tolerance: { rel: 1e-9 },
    compute: () => [
      allowedDrawdown_m(4, 12, 18, 15, 45),
      allowedDrawdown_m(4, 12, 18, 15, 7.5),
      allowedDrawdown_m(4, 12, 18, 9, 45),
    ],
  });
});

describe('people', () => {
  row({
    id: 'Y-R2',
    mark: 'R',
    about: '17 L/min for 8 h serve 500 people with 16.3 L each, and no more',
    source: 'Sphere, as quoted; recomputed',
    expected: [500, 499],
    tolerance: 'exact',
    compute: () =>
      [0.0163, 0.01635].map((need_m3) => Math.min(PEOPLE_A_PUMP, peopleServed(HAND_PUMP_M3S, PUMPED_A_DAY_s, need_m3))),
  });
  for (const [what, people, rate_Lmin] of [
    ['hand pump', 500, 17],
    ['tap', 250, 7.5],
    ['open well', 400, 12.5],
  ] as const)
    row({
      id: `Y-12 ${what}`,
      mark: 'V2',
      about: `${people} people at a ${what} of ${rate_Lmin} L/min: about 15 L each in 8 h`,
      source: 'Sphere, as quoted',
      expected: people,
      tolerance: { rel: 0.1 },
      compute: () => peopleServed(rate_Lmin * LITRE_A_MINUTE_m3s, 8 * HOUR_s, NEED_m3),
    });
  row({
    id: 'Y-R3',
    mark: 'R',
    about: '17 L/min serves 500 people with 15 L in 7.355 h, 499 in 7.35 h',
    source: 'recomputed (7.35 h)',
    expected: [500, 499],
    tolerance: 'exact',
    compute: () => [7.355, 7.35].map((hours) => peopleServed(HAND_PUMP_M3S, hours * HOUR_s, NEED_m3)),
  });
  row({
    id: 'Y-16',
    mark: 'R',
    about: '200 people, 18 L and a tenth more, need 16.5 L/min for 4 h',
    source: 'Harvey & Reed 2004 as quoted prints 20 L/min, more than its own inputs give; recomputed',
    expected: [200, 199],
    tolerance: 'exact',
    compute: () => [16.501, 16.49].map((rate) => peopleServed(rate * LITRE_A_MINUTE_m3s, 4 * HOUR_s, 1.1 * 0.018)),
  });
  row({
    id: 'Y-R5',
    mark: 'R',
    about: '17 L/min for 8 h at 15 L and at 20 L each: 544 and 408 people',
    source: 'Sphere 2004/2011; 20 L: a course after WHO; recomputed',
    expected: [544, 408],
    tolerance: 'exact',
    compute: () => [0.015, 0.02].map((need_m3) => peopleServed(HAND_PUMP_M3S, PUMPED_A_DAY_s, need_m3)),
  });
});

describe('salt', () => {
  const CLASSES = ['fresh', 'brackish', 'saline', 'brine'];
  row({
    id: 'Q9-1',
    mark: 'M',
    about: 'fresh under 1, brackish to 10, saline to 100 g/L, brine beyond',
    source: 'Freeze & Cherry 1979, table 3.2 (from memory)',
    expected: [0, 0, 1, 1, 2, 2, 3],
    tolerance: 'exact',
    compute: () => [0.1, 0.999, 1, 9.9, 10, 99, 101].map((salt_gL) => CLASSES.indexOf(saltClass(salt_gL))),
  });
  row({
    id: 'Q9-2',
    mark: 'R',
    about: '1000 mg/L: 1562 uS/cm at .64',
    source: 'Hem 1985 (from memory), recomputed',
    expected: 1562,
    tolerance: { abs: 1 },
    compute: () => conductivity_uScm(1),
  });
  row({
    id: 'Q9-3',
    mark: 'M',
    about: 'sea water, 35 g/L, about 50 000 uS/cm; within 10 %',
    source: 'Hem 1985 (from memory)',
    expected: 50000,
    tolerance: { rel: 0.1 },
    compute: () => conductivity_uScm(35),
  });
});
