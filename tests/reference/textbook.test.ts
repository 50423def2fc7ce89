// Worked examples and tables of textbooks and standards, recalled from memory: each to be held against the book before it is called published.
import { describe } from 'vitest';
import { hangingWeight_N } from '../../sim/drilling/weight';
import { dragCoefficient, dragLawOf } from '../../sim/hole/drag';
import { unitWeight_Nm3 } from '../../sim/hole/wallGround';
import { haaland, wallPart } from '../../sim/hydraulics/friction';
import { nozzlePressure_Pa, nozzleVelocity_ms } from '../../sim/hydraulics/nozzle';
import { circleArea_m2, conduitLoss_Pa, createConduit, setPipe } from '../../sim/hydraulics/pipe';
import { airPressure_Pa } from '../../sim/hydraulics/suction';
import { DEFAULT_KIT } from '../../sim/materials/kit';
import { SOILS } from '../../sim/materials/soils';
import { buildGround } from '../../sim/ground/generate';
import { row } from './row';

const FT_m = 0.3048;
const IN_m = 0.0254;
const PSI_Pa = 6894.76;
const GPM_m3s = 6.30902e-5;
const PPG_kgm3 = 119.826;
const GRAVITY_ms2 = 9.81;

describe('pipes', () => {
  const headLoss_m = (
    length_m: number,
    bore_m: number,
    rough_m: number,
    v_ms: number,
    rho: number,
    nu: number,
  ): number => {
    const pipe = createConduit();
    setPipe(pipe, length_m, bore_m, rough_m, { density_kgm3: rho, K_Pasn: rho * nu, n_ratio: 1 });
    return conduitLoss_Pa(pipe, v_ms * circleArea_m2(bore_m)) / (rho * GRAVITY_ms2);
  };
  row({
    id: 'TB-1',
    mark: 'M',
    about: '200 ft of 6 in asphalted cast iron (.0004 ft), water at 6 ft/s: 4.5 ft of head, f taken as .02',
    source: 'White, Fluid Mechanics, chapter 6, example on the Moody chart, from memory',
    expected: 4.5 * FT_m,
    tolerance: { rel: 0.03 },
    compute: () => headLoss_m(200 * FT_m, 6 * IN_m, 0.0004 * FT_m, 6 * FT_m, 1000, 1.11e-5 * FT_m * FT_m),
  });
  row({
    id: 'TB-2',
    mark: 'M',
    about: 'oil of 900 kg/m3 and 1e-5 m2/s, 0.2 m3/s through 500 m of 200 mm cast iron (.26 mm): 117 m of head',
    source: 'White, Fluid Mechanics, chapter 6, example with f .0225, from memory',
    expected: 117,
    tolerance: { rel: 0.02 },
    compute: () => headLoss_m(500, 0.2, 0.00026, 0.2 / circleArea_m2(0.2), 900, 1e-5),
  });
  const BORES_m = [0.02093, 0.02664, 0.0351, 0.0409, 0.0525, 0.0779, 0.1023, 0.1541];
  row({
    id: 'TB-3',
    mark: 'M',
    about: 'friction factor at complete turbulence in clean steel pipe of 3/4, 1, 1 1/4, 1 1/2, 2, 3, 4, 6 in',
    source: 'Crane Technical Paper 410, table of f_T, from memory; given to the third place, so 5 %',
    expected: [0.025, 0.023, 0.022, 0.021, 0.019, 0.018, 0.017, 0.015],
    tolerance: { rel: 0.055 },
    compute: () => BORES_m.map((bore_m) => haaland(1e8, wallPart(4.57e-5 / bore_m))),
  });
  const TIPS = [
    { tip_in: 7 / 8, gpm: 161 },
    { tip_in: 15 / 16, gpm: 185 },
    { tip_in: 1, gpm: 210 },
    { tip_in: 1.125, gpm: 266 },
  ];
  row({
    id: 'TB-4',
    mark: 'M',
    about: 'smooth nozzles of 7/8, 15/16, 1, 1 1/8 in at 161, 185, 210, 266 gpm want 50 psi, within 2 %',
    source: 'fire service: gpm = 29.7 d^2 sqrt(psi), which is Cd .995 (NFPA handbook), from memory',
    expected: { from: 49, to: 51 },
    compute: () =>
      TIPS.map(
        ({ tip_in, gpm }) =>
          nozzlePressure_Pa(998.2, nozzleVelocity_ms(gpm * GPM_m3s, 1, tip_in * IN_m), 0.995) / PSI_Pa,
      ),
  });
});

describe('air', () => {
  row({
    id: 'TB-5',
    mark: 'M',
    about: 'pressure of the standard atmosphere at 0, 500, 1000, 2000, 3000, 4000 m, Pa',
    source: 'US Standard Atmosphere 1976 (ISO 2533), tables by geopotential height, from memory',
    expected: [101325, 95461, 89875, 79495, 70109, 61640],
    tolerance: { rel: 0.0005 },
    compute: () => [0, 500, 1000, 2000, 3000, 4000].map(airPressure_Pa),
  });
});

describe('grains', () => {
  const SPHERE = dragLawOf(1);
  row({
    id: 'TB-6',
    mark: 'M',
    about: 'drag of a sphere at Re .1, 1, 10, 100, 1000, 10000 along the standard curve',
    source: "Lapple & Shepherd 1940 (in Perry, Chemical Engineers' Handbook), from memory",
    expected: [240, 26.5, 4.1, 1.07, 0.46, 0.405],
    tolerance: { rel: 0.08 },
    compute: () => [0.1, 1, 10, 100, 1000, 10000].map((re) => dragCoefficient(SPHERE, re)),
  });
});

describe('soils', () => {
  const [layer] = buildGround(
    { layers: [{ kind: 'fineSand', thickness_m: [40, 40] }], waterTable_m: [1, 1] },
    1,
  ).layers;
  const saturated_kNm3 = (porosity_frac: number): number => unitWeight_Nm3({ ...layer, porosity_frac }, 1) / 1000;
  const dry_kNm3 = (porosity_frac: number): number => unitWeight_Nm3({ ...layer, porosity_frac }, 0) / 1000;
  const POROSITIES = [0.46, 0.34, 0.4, 0.3, 0.55, 0.37];
  row({
    id: 'TB-7',
    mark: 'M',
    about: 'saturated: uniform sand loose, dense; mixed-grained sand loose, dense; soft, stiff glacial clay, kN/m3',
    source: 'Terzaghi & Peck 1948, table of porosity and unit weight of typical soils, from memory',
    expected: [1.89, 2.09, 1.99, 2.16, 1.77, 2.07].map((tm3) => tm3 * GRAVITY_ms2),
    tolerance: { rel: 0.02 },
    compute: () => POROSITIES.map(saturated_kNm3),
  });
  row({
    id: 'TB-8',
    mark: 'M',
    about: 'dry: uniform sand loose, dense; mixed-grained sand loose, dense, kN/m3',
    source: 'the same table',
    expected: [1.43, 1.75, 1.59, 1.86].map((tm3) => tm3 * GRAVITY_ms2),
    tolerance: { rel: 0.01 },
    compute: () => POROSITIES.slice(0, 4).map(dry_kNm3),
  });
  row({
    id: 'SH-1',
    mark: 'D',
    about:
      'shear that moves grains of .15, .36, .95, 3.6, 18 mm, Pa, against the strength given to our sands and gravels',
    source:
      'Soulsby & Whitehouse 1997 (form read in a public text), s 2.65, water 20 C; ours are rounded, the coarse ones lie up to a seventh lower',
    expected: [0.1409, 0.1998, 0.4762, 2.838, 16.15],
    tolerance: { rel: 0.15 },
    compute: () =>
      (['fineSand', 'mediumSand', 'coarseSand', 'fineGravel', 'coarseGravel'] as const).map(
        (kind) => SOILS[kind].tauC_Pa,
      ),
  });
  row({
    id: 'SH-2',
    mark: 'M',
    about: 'fine sand stands about what sand of .2 mm stood in the example, .176 Pa',
    source: 'Soulsby 1997, Dynamics of Marine Sands, example of the threshold of motion (sea water), from memory',
    expected: 0.176,
    tolerance: { rel: 0.25 },
    compute: () => SOILS.fineSand.tauC_Pa,
  });
});

describe('weight in the fluid', () => {
  const buoyancy_ratio = (density_kgm3: number): number => {
    const rods = (density: number): number =>
      hangingWeight_N(DEFAULT_KIT, 30, density) - hangingWeight_N(DEFAULT_KIT, 0, density);
    return rods(density_kgm3) / rods(0);
  };
  row({
    id: 'TB-9',
    mark: 'M',
    about: 'buoyancy factor of steel in mud of 8.33, 9, 10, 12 lbm/gal',
    source: 'API tables and Lapeyrouse, Formulas and Calculations (1 - ppg/65.5), from memory',
    expected: [0.873, 0.863, 0.847, 0.817],
    tolerance: { rel: 0.001 },
    compute: () => [8.33, 9, 10, 12].map((ppg) => buoyancy_ratio(ppg * PPG_kgm3)),
  });
});
