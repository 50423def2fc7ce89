// What the pit keeps: the trade-off between lifting and settling, on the pit's own functions.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { SOAKED } from '../../../sim/fluid/substances';
import { rheologyInto } from '../../../sim/fluid/rheology';
import { dragLawOf } from '../../../sim/hole/drag';
import { terminalVelocity_ms } from '../../../sim/hole/fall';
import { createParcel, emptyParcel } from '../../../sim/hole/parcel';
import { CLASS_COUNT, SIZE_CLASSES } from '../../../sim/materials/sizes';
import { createPitWork, drawThroughStrainer, levelOut, pourInto } from '../../../sim/pit/exchange';
import { floorRise_m, freeVolume_m3, levelBelowRim_m } from '../../../sim/pit/level';
import { createPit, type PitState } from '../../../sim/pit/pit';
import {
  PIT_SHEAR_1s,
  SETTLING_TANKS,
  SUCTION_TANKS,
  freeDepth_m,
  outflowShare,
  settlePit,
} from '../../../sim/pit/settle';

const FLOW_m3s = 0.12 / 60;
const FINE = SIZE_CLASSES.findIndex((c) => c.id === 'fineSand');
const COARSE = SIZE_CLASSES.findIndex((c) => c.id === 'coarseSand');

function filledPit(soaked_gL: number): PitState {
  const pit = createPit({
    settling: { area_m2: 0.6, depth_m: 0.8 },
    suction: { area_m2: 0.6, depth_m: 0.8 },
    notch_m: 0.15,
    strainer_m: 0.2,
  });
  for (const chamber of [pit.settling, pit.suction]) {
    chamber.water_m3 = 0.42;
    chamber.dissolved_kg[SOAKED] = 0.42 * soaked_gL;
  }
  return pit;
}

/** Runs returns with a little of one class through the pit until steady; share that the settling chamber and the whole pit keep. */
function kept(soaked_gL: number, k: number): { settling: number; whole: number } {
  const pit = filledPit(soaked_gL);
  const work = createPitWork();
  const back = createParcel();
  const drawn = createParcel();
  let came = 0;
  let settled = 0;
  let left = 0;
  const grains = FLOW_m3s * 1e-4;
  for (let t = 0; t < 7200; t++) {
    emptyParcel(back);
    back.water_m3 = FLOW_m3s - grains;
    back.solids_m3[k] = grains;
    back.dissolved_kg[SOAKED] = (back.water_m3 * pit.suction.dissolved_kg[SOAKED]) / pit.suction.water_m3;
    pourInto(pit.settling, back);
    const before = pit.settling.deposit_m3[k];
    settlePit(pit, work, 20, 1);
    levelOut(pit, work);
    drawThroughStrainer(pit, FLOW_m3s, drawn);
    if (t < 5400) continue;
    came += grains;
    settled += pit.settling.deposit_m3[k] - before;
    left += drawn.solids_m3[k];
  }
  return { settling: settled / came, whole: 1 - left / came };
}

const WATER_gL = 0;
const WORKING_gL = 1.3;
const THICK_gL = 2.5;

describe('at 120 L/min over a settling chamber of .6 m2', () => {
  it('fine sand: over 80 % stays in water, below 20 % at the working dose, below 5 % when thick', () => {
    expect(kept(WATER_gL, FINE).settling).toBeGreaterThan(0.78);
    expect(kept(WATER_gL, FINE).whole).toBeGreaterThan(0.9);
    expect(kept(WORKING_gL, FINE).whole).toBeLessThan(0.2);
    expect(kept(THICK_gL, FINE).whole).toBeLessThan(0.05);
  });
  it('coarse sand: over 90 % stays in water', () => expect(kept(WATER_gL, COARSE).settling).toBeGreaterThan(0.9));
  it('grains of .15 mm: 89 % in water, 12 % at K .07, 3 % at K .2, within 2 in a hundred', () => {
    const cases = [
      [0, 0.89],
      [1.2, 0.12],
      [2.15, 0.03],
    ];
    for (const [dose_gL, expected] of cases) {
      const fluid = rheologyInto({ K_Pasn: 0, n_ratio: 1 }, dose_gL, 0, 0, 25);
      const fall_ms = terminalVelocity_ms(dragLawOf(0.8), 0.15e-3, 2650, 998, fluid, PIT_SHEAR_1s);
      const x = fall_ms / (FLOW_m3s / 0.6);
      expect(Math.abs(x / (x + outflowShare(x, SETTLING_TANKS)) - expected)).toBeLessThan(0.02);
    }
  });
  it('the running chamber keeps what its tanks in a row keep', () => {
    for (const [k, soaked_gL] of [
      [FINE, WATER_gL],
      [FINE, WORKING_gL],
      [1, WATER_gL],
    ]) {
      const work = createPitWork();
      settlePit(filledPit(soaked_gL), work, 20, 1);
      const x = (work.slipSettling_ms[k] * 0.6) / FLOW_m3s;
      const expected = 1 - (1 + x / SETTLING_TANKS) ** -SETTLING_TANKS;
      expect(Math.abs(kept(soaked_gL, k).settling / expected - 1)).toBeLessThan(0.02);
    }
  });
});

test('the outflow of a chamber: worked value, and never richer than its mean', () => {
  expect(outflowShare(1, 3)).toBeCloseTo(0.7297, 4);
  expect(outflowShare(3, SUCTION_TANKS)).toBe(1);
  fc.assert(
    fc.property(fc.double({ min: 0, max: 50, noNaN: true }), fc.integer({ min: 1, max: 5 }), (x, tanks) => {
      const share = outflowShare(x, tanks);
      expect(share).toBeGreaterThan(0);
      expect(share).toBeLessThanOrEqual(1);
    }),
    { seed: 13 },
  );
});

test('still water clears from the coarse end, and the floor rises by what settled with its pores', () => {
  const pit = filledPit(0);
  const work = createPitWork();
  for (let k = 0; k < CLASS_COUNT; k++) pit.settling.solids_m3[k] = 1e-3;
  const level_m = levelBelowRim_m(pit.settling);
  for (let t = 0; t < 600; t++) settlePit(pit, work, 20, 1);
  const { solids_m3, deposit_m3 } = pit.settling;
  for (let k = 1; k < CLASS_COUNT; k++) expect(solids_m3[k]).toBeLessThan(solids_m3[k - 1]);
  const settled = deposit_m3.reduce((a, b) => a + b, 0);
  expect(floorRise_m(pit.settling)).toBeCloseTo(settled / 0.55 / 0.6, 12);
  expect(levelBelowRim_m(pit.settling)).toBeCloseTo(level_m, 12);
});

test('a chamber full of sand settles less: the stream scours it', () => {
  const settledIn = (deposit_m3: number): number => {
    const pit = filledPit(0);
    pit.settling.deposit_m3[COARSE] = deposit_m3;
    pit.settling.water_m3 = 0.39 - deposit_m3;
    pit.settling.solids_m3[FINE] = 1e-4;
    const before = freeVolume_m3(pit.settling);
    expect(before).toBeGreaterThan(0);
    settlePit(pit, createPitWork(), 20, 1);
    return pit.settling.deposit_m3[FINE] * freeDepth_m(pit.settling);
  };
  // Per depth of free fluid the same, until that depth is less than .1 m.
  expect(settledIn(0.1) / settledIn(0)).toBeGreaterThan(0.98);
  expect(settledIn(0.2) / settledIn(0)).toBeLessThan(0.5);
});
