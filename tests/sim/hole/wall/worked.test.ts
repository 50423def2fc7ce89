// The worked values in the remarks over the formulas of the wall.
import { expect, test } from 'vitest';
import { createHole } from '../../../../sim/hole/hole';
import {
  activePressure_ratio,
  archingPower,
  cohesion_Pa,
  createNeedTable,
  readNeed,
} from '../../../../sim/hole/wall/need';
import { passableTo_m } from '../../../../sim/hole/wall/passage';
import { retreat_ms, wanting_ratio } from '../../../../sim/hole/wall/slough';
import { closure_ratio, comesIn_frac, overload_ratio } from '../../../../sim/hole/wall/squeeze';
import { stability_ratio, wallGradient_ratio } from '../../../../sim/hole/wall/support';
import { bitGapPressure_Pa, swabVelocity_ms } from '../../../../sim/hole/wall/swab';
import { inhibition_ratio, swollenAfter_m } from '../../../../sim/hole/wall/swelling';
import {
  createWashTable,
  erodibility_m3Ns,
  pickUp_ms,
  thinness_ratio,
  wallShear_Pa,
  washRate_ms,
  washThreshold_Pa,
} from '../../../../sim/hole/wall/washout';
import { createWallGround } from '../../../../sim/hole/wallGround';
import { createConduit } from '../../../../sim/hydraulics/pipe';
import { groundOf } from './site';

const WATER = { density_kgm3: 998.2, K_Pasn: 1.002e-3, n_ratio: 1 };

test('need', () => {
  expect(activePressure_ratio(30)).toBeCloseTo(0.3333, 4);
  expect(archingPower(30)).toBeCloseTo(2, 12);
  const sand = createWallGround(groundOf([['fineSand', 40]], 0), 10, 2);
  const table = createNeedTable(sand, 10);
  readNeed(table, 0, 0.05);
  expect(table.friction_Pa[0]).toBeCloseTo(266.7, 1);
  expect(cohesion_Pa({ ...sand, capillary_kPa: new Float64Array([1]) }, 0, 150)).toBeCloseTo(750, 9);
});

test('support', () => {
  expect(stability_ratio(542, 271, 0)).toBeCloseTo(2, 12);
  const bare = { cake: 0, near: Math.log(2), total: Math.log(100), thick_ratio: 1 };
  expect(wallGradient_ratio(bare, 1, 0.05)).toBeCloseTo(4.34, 2);
});

test('sloughing', () => {
  expect(retreat_ms(0, 0)).toBeCloseTo(2e-4, 12);
  expect(retreat_ms(0.3, 0)).toBeCloseTo(5e-5, 12);
  expect(retreat_ms(0.3, 1)).toBeCloseTo(1e-4, 12);
  expect(wanting_ratio(0.4, false)).toBeCloseTo(0.6, 12);
  expect(wanting_ratio(1.02, true)).toBeCloseTo(0.03, 12);
  expect(wanting_ratio(1.02, false)).toBe(0);
  expect(wanting_ratio(-9, true)).toBe(3);
});

test('swab', () => {
  expect(swabVelocity_ms(0.3, 0.1, 0.0337)).toBeCloseTo(0.1734, 4);
  expect(bitGapPressure_Pa(1000, 0.3)).toBeCloseTo(206.6, 1);
});

test('wash-out', () => {
  expect(pickUp_ms(0.15, 0.42)).toBeCloseTo(4.2e-5, 6);
  expect(erodibility_m3Ns(1)).toBe(2e-7);
  expect(wallShear_Pa(createConduit(), 0.002, 0.1, 0.0337, WATER)).toBeCloseTo(0.347, 3);
  expect(thinness_ratio({ ...WATER, K_Pasn: 9.982e-3 }, 0.002, 0.1, 0.0337)).toBeCloseTo(0.631, 3);
  const sand = createWallGround(groundOf([['fineSand', 40]], 0), 10, 2);
  const table = createWashTable(sand);
  expect(washThreshold_Pa(sand, table, 0, 1, 0, 0)).toBeCloseTo(0.286, 3);
  // T = 1: the pick-up itself; T = 4 counts as 3; nothing below the threshold.
  expect(washRate_ms(table, 0, 0.28, 0.14, 1)).toBeCloseTo(table.pickUp_ms[0], 12);
  expect(washRate_ms(table, 0, 0.7, 0.14, 1)).toBeCloseTo(table.pickUp_ms[0] * 3 * Math.sqrt(3), 12);
  expect(washRate_ms(table, 0, 0.14, 0.14, 1)).toBe(0);
});

test('clay', () => {
  expect(overload_ratio(360e3, 206e3, 25)).toBeCloseTo(6.16, 2);
  expect(closure_ratio(3)).toBeCloseTo(0.0369, 4);
  expect(closure_ratio(5)).toBeCloseTo(0.273, 3);
  expect(closure_ratio(6.3)).toBeCloseTo(1.002, 3);
  expect(closure_ratio(1)).toBeCloseTo(0.005, 12);
  expect(closure_ratio(-1)).toBe(0);
  expect(comesIn_frac(1800)).toBeCloseTo(0.632, 3);
  expect(inhibition_ratio(0, 0)).toBe(1);
  expect(inhibition_ratio(1, 0)).toBeCloseTo(0.35, 12);
  expect(inhibition_ratio(0, 30)).toBeCloseTo(0.5, 12);
  expect(swollenAfter_m(0, 1, 1, 4 * 3600)).toBeCloseTo(0.004, 12);
});

test('passage', () => {
  const hole = createHole({ dz_m: 0.25, maxDepth_m: 5, bit_m: 0.1, starter_m: 4 });
  hole.radius_m[8] = 0;
  expect(passableTo_m(hole, 1, 3, 0.048)).toBe(2);
});
