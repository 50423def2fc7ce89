// Loss to the ground, inflow and cake: wells of the textbooks, filter presses, and the project's own scale.
import { describe } from 'vitest';
import { capture_frac, grownResistance_s } from '../../sim/hole/loss/cake';
import {
  createLossLaw,
  flowPerMetre_m2s,
  indexLogOf,
  permeability_m2,
  poreLogOf,
  reachLogOf,
} from '../../sim/hole/loss/conductance';
import { ln, pow } from '../../sim/numeric/functions';
import { SOILS } from '../../sim/materials/soils';
import { alongLogY } from '../../sim/numeric/curve';
import { sandHole, tick } from '../sim/hole/loss/sandHole';
import { row } from './row';

const L_PER_MIN = 60000;
const DAY_s = 86400;
const FOOT_m = 0.3048;

/** Flow per metre for water, m2/s, through ground between two radii under a difference of head: the law of the tick without a ring of lost fluid. */
function between(K_ms: number, inner_m: number, outer_m: number, head_m: number): number {
  const law = { ...createLossLaw(), radius_m: inner_m, K_ms, reachLog: ln(outer_m / inner_m) };
  return flowPerMetre_m2s(head_m, law, 0);
}

describe('flow to and from a hole in water', () => {
  row({
    id: 'W-01',
    mark: 'V',
    about: 'confined: K 45 m/d, 20 m thick, r .15 m, drawdown 3 m, R 300 m: m3/d',
    source: 'Subramanya, Engineering Hydrology, chapter 9 (Thiem)',
    expected: 2231.92,
    tolerance: { rel: 1e-4 },
    compute: () => 20 * between(45 / DAY_s, 0.15, 300, 3) * DAY_s,
  });
  row({
    id: 'W-03',
    mark: 'V',
    about: 'confined: 5e-5 m/s, 20 m thick, drawdowns 2.0 and .2 m at .1 and 100 m: m3/s',
    source: 'soil-mechanics course solution (Thiem), there the other way round: K from the flow',
    expected: 1.637e-3,
    tolerance: { rel: 1e-3 },
    compute: () => 20 * between(5e-5, 0.1, 100, 1.8),
  });
  row({
    id: 'L-1',
    mark: 'M',
    about: 'confined: .05 m3/s from 25 m, drawdowns 3 and 1.2 m at 50 and 150 m: K 1.94e-4 m/s gives that flow',
    source: 'Todd & Mays, Groundwater Hydrology, example on the Thiem equation (from memory)',
    expected: 0.05,
    tolerance: { rel: 5e-3 },
    compute: () => 25 * between(1.94e-4, 50, 150, 1.8),
  });
  row({
    id: 'L-2',
    mark: 'M',
    about:
      'confined: wells at 26 and 73 ft stand at 29.34 and 32.56 ft, T about 2200 ft2/d: 220 gal/min (42,400 ft3/d)',
    source: 'Fetter, Applied Hydrogeology, example on steady flow (from memory; T rounded there)',
    expected: 42400,
    tolerance: { rel: 0.02 },
    compute: () =>
      (between((2200 * FOOT_m) / DAY_s, 26 * FOOT_m, 73 * FOOT_m, (32.56 - 29.34) * FOOT_m) * DAY_s) /
      (FOOT_m * FOOT_m),
  });
  row({
    id: 'L-3',
    mark: 'M',
    about: 'a well twice as wide, 6 to 12 in, R 400 ft, gives a tenth more',
    source: 'Driscoll 1986, Groundwater and Wells: table of well diameter and yield (from memory)',
    expected: 1.1,
    tolerance: { abs: 0.01 },
    compute: () => between(1e-4, 0.5 * FOOT_m, 400 * FOOT_m, 1) / between(1e-4, 0.25 * FOOT_m, 400 * FOOT_m, 1),
  });
  row({
    id: 'W-F13',
    mark: 'M',
    about: 'transmissivity is 1.22 times the flow per drawdown, where log10(R/r) is 3.32',
    source: 'Logan 1964 (from memory)',
    expected: 1.22,
    tolerance: { abs: 0.005 },
    compute: () => 1 / between(1, 1, pow(10, 3.32), 1),
  });
  row({
    id: 'L-4',
    mark: 'D',
    about: 'K 1e-4, 2 m of head, R 1 m, r .05 m: L/min per metre',
    source: 'Thiem 1906',
    expected: 25.17,
    tolerance: { rel: 1e-3 },
    compute: () => between(1e-4, 0.05, 1, 2) * L_PER_MIN,
  });
  row({
    id: 'L-5',
    mark: 'D',
    about: 'one metre, 2 m of head, r .05 m, K 1e-6 to 1e-2: L/min; coarse sand and gravel take the whole pump',
    source: 'Hvorslev 1951, L/r above 8: 2 pi K L H/ln(L/r)',
    expected: [0.2517, 2.517, 25.17, 251.7, 2517],
    tolerance: { rel: 1e-3 },
    compute: () => [1e-6, 1e-5, 1e-4, 1e-3, 1e-2].map((K) => between(K, 0.05, 1, 2) * L_PER_MIN),
  });
  row({
    id: 'L-6',
    mark: 'M',
    about:
      'a level off the water table comes back to 37 % in the time lag A ln(R/r)/(2 pi K L); level of the whole hole, 10 ms steps',
    source: 'Hvorslev 1951: basic time lag (from memory), with the radius of influence of this model',
    expected: 0.368,
    tolerance: { abs: 0.01 },
    compute: () => {
      const K_ms = 6.4e-5;
      const bench = sandHole({
        depth_m: 12,
        table_m: 4,
        // All open length below the table, so that the lag does not change with the level.
        sand: (z) => ({ K_ms: z < 6 ? 1e-12 : K_ms, porosity_frac: 0.42, Sy_frac: 0.21, d15_mm: 0.1 }),
      });
      bench.input.dt_s = 0.01;
      const area_m2 = Math.PI * (0.05 * 0.05 - 0.01685 * 0.01685);
      const lag_s = (area_m2 * reachLogOf(0.05)) / (2 * Math.PI * K_ms * 6);
      // The fluid in the hole is a little lighter than the reference of the heads.
      const rest_m = 12 - ((9 - 4) * 1000) / 998.2 - 3;
      let from_m = 0;
      let time_s = 0;
      while (time_s < 3 * lag_s) {
        if (time_s <= 1.5 * lag_s) from_m = bench.work.level_m;
        tick(bench);
        time_s += 0.01;
        if (time_s >= 2.5 * lag_s) break;
      }
      return (rest_m - bench.work.level_m) / (rest_m - from_m);
    },
  });
});

describe('pores', () => {
  row({
    id: 'L-7',
    mark: 'M',
    about: 'a darcy (9.87e-13 m2) lets water of 20 C through at 9.66e-6 m/s',
    source: 'Freeze & Cherry 1979, Groundwater, table 2.3 (from memory)',
    expected: 9.87e-13,
    tolerance: { rel: 5e-3 },
    compute: () => permeability_m2(9.66e-6),
  });
  row({
    id: 'L-8',
    mark: 'D',
    about: 'K 1e-4 m/s is 1.02e-11 m2',
    source: 'k = K mu/(rho g)',
    expected: 1.023e-11,
    tolerance: { rel: 3e-3 },
    compute: () => permeability_m2(1e-4),
  });
  row({
    id: 'L-9',
    mark: 'M',
    about:
      'power law in sand: thickness in the pores beside (K/12)(9 + 3/n)^n (150 k phi)^((1-n)/2), n .5, .7, .9, 1; two published forms differ by a third at n .5',
    source: 'Christopher & Middleman 1965, Ind. Eng. Chem. Fund. 4:422 (from memory)',
    expected: { from: 0.64, to: 1.001 },
    compute: () =>
      [0.5, 0.7, 0.9, 1].map((n) => {
        const [K_ms, phi, v_ms] = [1e-3, 0.37, 1e-3];
        const k = permeability_m2(K_ms);
        // Pore shear by the law: poreLogOf and indexLogOf at radius 1 turn a velocity into a rate.
        const rate_1s = v_ms / pow(Math.E, poreLogOf(1, K_ms, phi) + indexLogOf(n));
        const ours = pow(rate_1s, n - 1);
        const theirs = (1 / 12) * pow(9 + 3 / n, n) * pow(150 * k * phi, (1 - n) / 2) * pow(v_ms, n - 1);
        return ours / theirs;
      }),
  });
});

describe('cake', () => {
  const filtrate = (time_s: number, head_m: number, c: number, K_c: number): number =>
    (grownResistance_s(0, 0, head_m, c, K_c, time_s) * K_c) / c;
  const API_m = 690e3 / 9810;
  row({
    id: 'FL-2',
    mark: 'V',
    about: 'filter press without spurt: 30 min give twice the filtrate of 7.5 min',
    source: 'theory of static filtration, V ~ sqrt t; API fluid-loss test, 690 kPa',
    expected: 2,
    tolerance: { rel: 1e-9 },
    compute: () => filtrate(1800, API_m, 0.05, 1e-9) / filtrate(450, API_m, 0.05, 1e-9),
  });
  row({
    id: 'L-10',
    mark: 'M',
    about: 'high-pressure press: 6.5 cm3 in 1 min, 14.2 in 7.5 min: spurt 2.07 cm3, after 30 min 26.33 cm3',
    source: 'Bourgoyne et al. 1986, Applied Drilling Engineering, chapter 2, example on filtration (from memory)',
    expected: [2.07, 26.33],
    tolerance: { abs: 0.01 },
    compute: () => {
      const of = (minutes: number): number => filtrate(minutes * 60, API_m, 0.05, 1e-9);
      const spurt = 6.5 - ((14.2 - 6.5) / (of(7.5) - of(1))) * of(1);
      return [spurt, spurt + ((14.2 - spurt) / of(7.5)) * of(30)];
    },
  });
  row({
    id: 'L-11',
    mark: 'D',
    about: 'cake of 1e-18 m2, 20 kPa, solids .6 in the cake, .05 in the mud, water of 1 mPa s, an hour: m3 per m2',
    source: 'V/A = sqrt(2 k_c dp (f_sc/f_sm - 1) t/mu) (Bourgoyne et al. 1986)',
    expected: 1.259e-3,
    tolerance: { rel: 1e-3 },
    compute: () => filtrate(3600, 20e3 / 9810, 1 / (0.6 / 0.05 - 1), (1e-18 * 9810) / 1e-3),
  });
  const d15_mm = (kind: 'fineSand' | 'mediumSand' | 'coarseSand' | 'coarseGravel'): number =>
    alongLogY([0.1, 0.3], [SOILS[kind].d10_mm, SOILS[kind].d30_mm], 0.15);
  row({
    id: 'CAKE-1',
    mark: 'V',
    about: 'sands with d15 below .4 mm take a cake',
    source: 'Filz et al. 1997, J. Geotech. Geoenv. Eng.',
    expected: [1, 1, 1],
    tolerance: 'exact',
    compute: () => [d15_mm('fineSand'), d15_mm('mediumSand'), 0.39].map(capture_frac),
  });
  row({
    id: 'CAKE-2',
    mark: 'V',
    about: 'coarser ground is invaded deeply instead: less than a fifth stays at d15 .6 mm, nothing in coarse gravel',
    source: 'Filz et al. 1997; the shares themselves are ASSUMED',
    expected: { from: 0, to: 0.2 },
    compute: () => [capture_frac(0.6), capture_frac(d15_mm('coarseGravel'))],
  });
});

describe('the scale of the job', () => {
  const clean = (kind: 'fineSand' | 'mediumSand' | 'coarseSand' | 'fineGravel'): number =>
    flowPerMetre_m2s(1, { ...createLossLaw(), radius_m: 0.05, K_ms: SOILS[kind].K_ms, reachLog: reachLogOf(0.05) }, 0) *
    L_PER_MIN;
  row({
    id: 'L-12',
    mark: 'D',
    about: 'clean fine, medium, coarse sand and fine gravel, 100 mm, a metre of head: L/min per metre',
    source: 'Thiem 1906 with R 5 m',
    expected: [5.24, 26.5, 73.7, 663],
    tolerance: { rel: 2e-3 },
    compute: () => (['fineSand', 'mediumSand', 'coarseSand', 'fineGravel'] as const).map(clean),
  });
});
