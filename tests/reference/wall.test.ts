// Stability of the wall: earth pressure round a hole, closure of clay, swab, seepage, erosion.
import { describe } from 'vitest';
import { activePressure_ratio, archingPower, createNeedTable, readNeed } from '../../sim/hole/wall/need';
import { createWallPath, readPath, supportShare_frac } from '../../sim/hole/wall/support';
import { bitGapPressure_Pa, swabVelocity_ms } from '../../sim/hole/wall/swab';
import { closure_ratio, overload_ratio } from '../../sim/hole/wall/squeeze';
import {
  createWashTable,
  erodibility_m3Ns,
  pickUp_ms,
  wallShear_Pa,
  washThreshold_Pa,
} from '../../sim/hole/wall/washout';
import { createWallGround, capillaryCohesion_kPa } from '../../sim/hole/wallGround';
import { createConduit } from '../../sim/hydraulics/pipe';
import { SOILS } from '../../sim/materials/soils';
import { groundOf } from '../sim/hole/wall/site';
import { row } from './row';

/** Ground of any weight, friction and cohesion: what a hole of radius_m needs at a depth, kPa. */
function need_kPa(
  weight_kNm3: number,
  phi_deg: number,
  cohesion_kPa: number,
  depth_m: number,
  radius_m: number,
): number {
  const ground = createWallGround(groundOf([['fineSand', 4 * depth_m]], 0), 2 * depth_m, 2);
  ground.unitWeight_Nm3.fill(1000 * weight_kNm3);
  ground.phi_deg.fill(phi_deg);
  const table = createNeedTable(ground, 2 * depth_m);
  readNeed(table, 0, radius_m);
  return table.friction_Pa[0] / 1000 - cohesion_kPa * table.cohesionShare_ratio[0];
}

/** A wall so wide that it is straight. */
const STRAIGHT_m = 1e7;

describe('earth pressure round a hole', () => {
  row({
    id: 'WALL-1',
    mark: 'M',
    about: 'active pressure ratio of Rankine for 20, 25, 30, 35, 40 degrees',
    source: 'tables of every soil mechanics textbook (Rankine 1857), from memory',
    expected: [0.49, 0.406, 0.333, 0.271, 0.217],
    tolerance: { abs: 6e-4 },
    compute: () => [20, 25, 30, 35, 40].map(activePressure_ratio),
  });
  row({
    id: 'WALL-2',
    mark: 'M',
    about: 'thrust on a straight wall 5 m high, sand of 17 kN/m3 and 35 degrees, no water: the wide hole, kN/m',
    source: 'Craig, Soil Mechanics, first example on active pressure: 57.5, from memory',
    expected: 57.5,
    tolerance: { rel: 0.01 },
    compute: () => (need_kPa(17, 35, 0, 5, STRAIGHT_m) * 5) / 2,
  });
  row({
    id: 'WALL-3',
    mark: 'D',
    about: 'a very wide hole needs gamma z Ka - 2 c sqrt(Ka) of Rankine-Bell: 18 kN/m3, 30 degrees, c 4 kPa, 3 m, kPa',
    source: 'Rankine 1857 and Bell 1915 (forms from memory), derived: 18 - 4.619',
    expected: 13.381,
    tolerance: { rel: 1e-4 },
    compute: () => need_kPa(18, 30, 4, 3, STRAIGHT_m),
  });
  row({
    id: 'WALL-4',
    mark: 'D',
    about:
      'a deep narrow hole needs no more than gamma r sqrt(Ka)/(m-1), however deep: 100 mm, 9.388 kN/m3, 30 degrees, 20 and 40 m, kPa',
    source: 'Berezantzev 1958 (form from memory), derived',
    expected: [0.2698, 0.2704],
    tolerance: { abs: 2e-4 },
    compute: () => [20, 40].map((depth_m) => need_kPa(9.388, 30, 0, depth_m, 0.05)),
  });
  row({
    id: 'WALL-5',
    mark: 'D',
    about: 'm of Berezantzev for 20, 30, 40 degrees',
    source: 'Berezantzev 1958, 2 tan(phi) tan(45 + phi/2) (from memory), derived',
    expected: [1.0396, 2, 3.5989],
    tolerance: { abs: 1e-4 },
    compute: () => [20, 30, 40].map(archingPower),
  });
  row({
    id: 'WALL-6',
    mark: 'D',
    about: 'share of the head that bare ground turns into support, hole of 100 mm, 5 m of influence',
    source: 'Thiem 1906 in the ring r to 2r: ln 2/ln(R/r), derived',
    expected: 0.15051,
    tolerance: { abs: 1e-5 },
    compute: () => {
      const path = createWallPath();
      readPath(path, {
        radius_m: 0.05,
        logRadius: Math.log(0.05),
        K_ms: 1e-4,
        porosity_frac: 0.4,
        room_frac: 0,
        saturated: true,
        lost_m2: 0,
        cakeResistance_s: 0,
        conductance_ms: 0,
      });
      return supportShare_frac(path);
    },
  });
  row({
    id: 'WALL-7',
    mark: 'M',
    about: 'capillary rise .1 to .5 cm2/(e d10) of the three sands of the table, over ours: 1 lies between',
    source: 'Terzaghi & Peck, Soil Mechanics in Engineering Practice, from memory',
    expected: { from: 0, to: 1 },
    compute: () =>
      (['fineSand', 'mediumSand', 'coarseSand'] as const).map((kind) => {
        const { porosity_frac: n, d10_mm, capillaryRise_m, phi_deg } = SOILS[kind];
        const one_m = 0.01 / ((n / (1 - n)) * (d10_mm / 10));
        const rise_m = capillaryCohesion_kPa(capillaryRise_m, phi_deg!) / capillaryCohesion_kPa(1, phi_deg!);
        return (rise_m - 0.1 * one_m) / (0.4 * one_m);
      }),
  });
});

describe('clay round a hole', () => {
  row({
    id: 'ST-2',
    mark: 'D',
    about: 'stability ratio at 20 m, ground 18 and mud 10.3 kN/m3, su 25 kPa',
    source: 'Broms & Bennermark 1967 (form from memory), derived',
    expected: 6.16,
    tolerance: { abs: 0.005 },
    compute: () => overload_ratio(360e3, 206e3, 25),
  });
  row({
    id: 'WALL-8',
    mark: 'M',
    about:
      'pressure over su at which a cylinder in clay of G/su 100 grows, or shrinks, by its own volume: 1 + ln(G/su) = 5.6',
    source: 'Gibson & Anderson 1961, limit pressure of the pressuremeter, from memory',
    expected: 1,
    tolerance: { rel: 1e-9 },
    // Small movements: the volume changes by twice the radius.
    compute: () => 2 * closure_ratio(1 + Math.log(100)),
  });
  row({
    id: 'WALL-9',
    mark: 'M',
    about: 'closure of the radius at N 2, 4, 5, 6.3 with G/su 100: small to N 2-3, large from 5, all of it about 6-7',
    source:
      'cylinder of Mair & Taylor 1993, exp(N-1) su/(2G); Peck 1969, Broms & Bennermark 1967 for the bands, from memory',
    expected: [0.0136, 0.1004, 0.273, 1.0017],
    tolerance: { abs: 5e-4 },
    compute: () => [2, 4, 5, 6.3].map(closure_ratio),
  });
});

describe('swab', () => {
  row({
    id: 'SWAB-1',
    mark: 'M',
    about: 'fluid speed beside 4.5 in pipe in a 7.875 in hole, and beside 6.25 in collars, at 270 ft/min, ft/min',
    source: 'Lapeyrouse, Formulas and Calculations, swab and surge example: 253 and 581, from memory',
    expected: [253, 581],
    tolerance: { rel: 0.003 },
    compute: () => [4.5, 6.25].map((rod) => swabVelocity_ms(270, 7.875, rod)),
  });
  row({
    id: 'SWAB-2',
    mark: 'D',
    about: 'pressure at a bit that fills .6 of the hole, water, .1, .15, .3 m/s, Pa',
    source: 'orifice of coefficient .7, rho/2 (v .6/.4/.7)^2, derived',
    expected: [22.96, 51.66, 206.6],
    tolerance: { rel: 1e-3 },
    compute: () => [0.1, 0.15, 0.3].map((v) => bitGapPressure_Pa(1000, v)),
  });
});

describe('seepage and erosion', () => {
  const sand = createWallGround(groundOf([['fineSand', 10]], 0), 0.25, 40);
  row({
    id: 'WALL-10',
    mark: 'M',
    about:
      'inward gradient that floats grains of 2.65 at a void ratio of .65: 1.0; the wall then stands no shear at all',
    source: 'Terzaghi, critical gradient (Gs - 1)/(1 + e), textbook example, from memory',
    expected: [1, 0],
    tolerance: { abs: 1e-9 },
    compute: () => {
      sand.porosity_frac[0] = 0.65 / 1.65;
      const table = createWashTable(sand);
      return [table.heavy_ratio[0], washThreshold_Pa(sand, table, 0, -1, 0, 0)];
    },
  });
  row({
    id: 'JET-kd-wall',
    mark: 'D',
    about: 'erodibility of clay of tau_c .1, 1, 5, 10 Pa, cm3/(N s)',
    source: 'Hanson & Simon 2001, .2 tau_c^-.5, from memory',
    expected: [0.632, 0.2, 0.089, 0.063],
    tolerance: { abs: 5e-4 },
    compute: () => [0.1, 1, 5, 10].map((tauC_Pa) => erodibility_m3Ns(tauC_Pa) * 1e6),
  });
  row({
    id: 'WALL-11',
    mark: 'D',
    about: 'pick-up of sand .15, .36 mm at a transport stage of 1, in kg/(m2 s)',
    source: 'van Rijn 1984, .00033 rho_s sqrt((s-1) g d) D*^.3 T^1.5 (from memory), derived',
    expected: [0.06438, 0.1297],
    tolerance: { rel: 0.002 },
    compute: () => [0.15, 0.36].map((d50_mm) => pickUp_ms(d50_mm, 0) * 2650),
  });
  row({
    id: 'WALL-12',
    mark: 'D',
    about:
      'shear stress at the wall of a 100 mm hole round 33.7 mm rods, water 20 C, 150 L/min: Blasius on the equivalent diameter, Pa',
    source: 'tau = rho v^2 f/(2 x .816), f .0791/Re^.25, Re .816 x 23717 (slot row of the annulus), derived',
    expected: 0.5286,
    tolerance: { rel: 0.04 },
    compute: () =>
      wallShear_Pa(createConduit(), 0.0025, 0.1, 0.0337, { density_kgm3: 998.2, K_Pasn: 1.002e-3, n_ratio: 1 }),
  });
});
