// Pump, engine and suction side.
import { describe } from 'vitest';
import { enginePower_frac, engineSpeed_frac } from '../../sim/hydraulics/engine';
import { pumpHead_m } from '../../sim/hydraulics/pump';
import { NPSH_LIMIT_m, airPressure_Pa, npshAvailable_m } from '../../sim/hydraulics/suction';
import { AIR_BREAKS_frac } from '../../sim/hydraulics/wear';
import { vapourPressure_Pa } from '../../sim/materials/water';
import { row } from './row';

const L_PER_MIN = 60000;
const WATER_kgm3 = 998.2;
const ALTITUDES_m = [0, 402, 805, 1207, 1609, 2012, 2414, 3219];
const barometricHead_m = (altitude_m: number): number => airPressure_Pa(altitude_m) / (WATER_kgm3 * 9.81);
/** Suction head left at a lift, without friction, water of 20 C, m. */
const left_m = (altitude_m: number, lift_m: number): number =>
  npshAvailable_m(airPressure_Pa(altitude_m), vapourPressure_Pa(20), WATER_kgm3, lift_m, 0);

describe('suction', () => {
  row({
    id: 'SU-1',
    mark: 'V',
    about:
      'practical suction lift at 0 to 3219 m: the lift at which the pump of the model has just its suction head, m',
    source: 'engineering table of practical suction lifts',
    expected: [6.7, 6.4, 6.1, 5.5, 5.2, 4.9, 4.6, 4.3],
    tolerance: { rel: 0.15 },
    compute: () => ALTITUDES_m.map((h) => left_m(h, 0) - NPSH_LIMIT_m),
  });
  row({
    id: 'SU-2',
    mark: 'D',
    about: 'barometric head at 0 to 3219 m, m of water',
    source: 'ISO 2533 standard atmosphere',
    expected: [10.35, 9.86, 9.4, 8.95, 8.52, 8.11, 7.71, 6.96],
    tolerance: { abs: 0.01 },
    compute: () => ALTITUDES_m.map(barometricHead_m),
  });
  row({
    id: 'SU-2t',
    mark: 'V',
    about: 'the same against a printed table in feet (its entry at 2414 m is off the trend and left out)',
    source: 'engineering table of barometric heads: 33.95 32.38 30.79 29.24 27.76 26.38 22.82 ft',
    expected: [33.95, 32.38, 30.79, 29.24, 27.76, 26.38, 22.82].map((ft) => ft * 0.3048),
    tolerance: { rel: 0.01 },
    compute: () => [0, 402, 805, 1207, 1609, 2012, 3219].map(barometricHead_m),
  });
  row({
    id: 'SU-3',
    mark: 'D',
    about: 'head left of the air after the vapour of water of 20 C, m',
    source: 'derived from SU-2 and 2.339 kPa',
    expected: [10.11, 9.62, 9.16, 8.71, 8.28, 7.87, 7.47, 6.72],
    tolerance: { abs: 0.01 },
    compute: () => ALTITUDES_m.map((h) => left_m(h, 0)),
  });
  row({
    id: 'SU-4',
    mark: 'V',
    about: 'at sea level no water is lifted beyond 10.33 m; at the real limit of 8 m the pump starves',
    source: 'public pump lexicon',
    expected: { from: -Infinity, to: 0 },
    compute: () => [left_m(0, 10.33), left_m(0, 8) - NPSH_LIMIT_m],
  });
  row({
    id: 'SU-5',
    mark: 'V',
    about: 'practical limit of 26 ft (7.9 m): water still boils not (head left above 0), but the pump starves',
    source: 'trade article on suction lift',
    expected: { from: 0, to: NPSH_LIMIT_m },
    compute: () => left_m(0, 7.9),
  });
  row({
    id: 'SU-6',
    mark: 'V',
    about: 'NPSH available = air - vapour - lift - friction: 101.325 kPa, 2.339 kPa, 4 m, 1.5 m',
    source: 'supplier FAQ, form read; the numbers put in here',
    expected: 10.347 - 0.239 - 4 - 1.5,
    tolerance: { abs: 0.001 },
    compute: () => npshAvailable_m(101325, 2339, WATER_kgm3, 4, 1.5),
  });
});

describe('engine and pump', () => {
  row({
    id: 'ENG-0',
    mark: 'V',
    about: 'an engine loses 3.5 % of its power per 1000 ft',
    source: 'trade article',
    expected: [0.965, 0.93],
    tolerance: { abs: 0.001 },
    compute: () => [304.8, 609.6].map(enginePower_frac),
  });
  row({
    id: 'ENG-1',
    mark: 'D',
    about: 'power left at 0, 500, 1000, 1500, 2000 m',
    source: 'linear, 3.5 % per 305 m',
    expected: [1, 0.943, 0.885, 0.828, 0.77],
    tolerance: { abs: 6e-4 },
    compute: () => [0, 500, 1000, 1500, 2000].map(enginePower_frac),
  });
  row({
    id: 'PC-2',
    mark: 'D',
    about: 'pump of 32 m and 600 L/min: head at 0 to 600 L/min, m',
    source: 'H0 (1 - (Q/Q0)^2)',
    expected: [32, 31.1, 28.4, 24.0, 17.8, 9.8, 0],
    tolerance: { abs: 0.06 },
    compute: () => [0, 100, 200, 300, 400, 500, 600].map((q) => pumpHead_m(32, 600 / L_PER_MIN, 1, q / L_PER_MIN)),
  });
  row({
    id: 'PC-5',
    mark: 'M',
    about: 'air that breaks the prime of a centrifugal pump, share of the flow',
    source: 'pump handbooks, from memory: 3 to 5 %',
    expected: { from: 0.03, to: 0.05 },
    compute: () => AIR_BREAKS_frac,
  });
  row({
    id: 'PC-4',
    mark: 'M',
    about: 'affinity: at 80 % speed the head at 80 % of a flow is 64 %; power by speed cubed gives the speed at 2000 m',
    source: 'textbook affinity laws',
    expected: [0.64, 0.77],
    tolerance: { abs: 1e-3 },
    compute: () => [
      pumpHead_m(28, 0.006, 0.8, 0.8 * 0.003) / pumpHead_m(28, 0.006, 1, 0.003),
      engineSpeed_frac(2000) ** 3,
    ],
  });
});
