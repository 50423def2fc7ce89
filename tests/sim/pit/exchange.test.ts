// Flows of the pit: nothing lost between chambers, the notch, the strainer and the shovel.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { createMakeup } from '../../../sim/fluid/makeup';
import { SOAKED } from '../../../sim/fluid/substances';
import { createParcel, type Parcel } from '../../../sim/hole/parcel';
import { CLASS_COUNT } from '../../../sim/materials/sizes';
import { digOut } from '../../../sim/pit/dig';
import { createPitWork, drawThroughStrainer, levelOut, pourInto } from '../../../sim/pit/exchange';
import { floorRise_m, levelBelowRim_m, readChamber } from '../../../sim/pit/level';
import { createPit, type Chamber, type PitState } from '../../../sim/pit/pit';
import { settlePit } from '../../../sim/pit/settle';
import { stirPit } from '../../../sim/pit/stir';
import {
  blockStrainer,
  clearStrainer,
  clearance_m,
  floorSlurry_frac,
  strainerCovered,
} from '../../../sim/pit/strainer';

const SHAPE = {
  settling: { area_m2: 0.6, depth_m: 0.8 },
  suction: { area_m2: 0.45, depth_m: 0.8 },
  notch_m: 0.15,
  strainer_m: 0.2,
};
const MESH_m2 = 0.02;

function pitWith(settling_m3: number, suction_m3: number): PitState {
  const pit = createPit(SHAPE);
  pit.settling.water_m3 = settling_m3;
  pit.suction.water_m3 = suction_m3;
  return pit;
}

const chamberStores = (c: Chamber): number[] => [
  c.water_m3,
  ...c.dissolved_kg,
  ...Array.from({ length: CLASS_COUNT }, (_, k) => c.solids_m3[k] + c.deposit_m3[k]),
];
const stores = (pit: PitState): number[] => {
  const other = chamberStores(pit.suction);
  return chamberStores(pit.settling).map((x, i) => x + other[i]);
};
const carried = (p: Parcel): number[] => [p.water_m3, ...p.dissolved_kg, ...p.solids_m3];

const unit = fc.double({ min: 0, max: 1, noNaN: true });
const second = fc.record({
  act: fc.constantFrom('flow', 'flow', 'flow', 'dig', 'stir', 'strainer'),
  flow_m3s: fc.double({ min: 0, max: 0.003, noNaN: true }),
  load: fc.array(unit, { minLength: CLASS_COUNT, maxLength: CLASS_COUNT }),
  amount: unit,
});

test('random days in the pit lose nothing and leave nothing negative', () => {
  fc.assert(
    fc.property(fc.array(second, { minLength: 1, maxLength: 80 }), (seconds) => {
      const pit = pitWith(0.35, 0.25);
      pit.suction.dissolved_kg[SOAKED] = 0.3;
      const work = createPitWork();
      const parcel = createParcel();
      const came = stores(pit);
      const went = came.map(() => 0);
      for (const s of seconds) {
        if (s.act === 'strainer') pit.strainer_m = 0.5 * s.amount;
        if (s.act === 'stir') stirPit(pit);
        if (s.act === 'dig') {
          digOut(s.amount > 0.5 ? pit.settling : pit.suction, 0.02 * s.amount, parcel);
          carried(parcel).forEach((x, i) => (went[i] += x));
        }
        if (s.act === 'flow') {
          const drawn_m3 = drawThroughStrainer(pit, s.flow_m3s, parcel);
          expect(drawn_m3).toBeLessThanOrEqual(s.flow_m3s + 1e-15);
          carried(parcel).forEach((x, i) => (went[i] += x));
          // What was drawn comes back with cuttings.
          for (let k = 0; k < CLASS_COUNT; k++) parcel.solids_m3[k] += 0.02 * s.flow_m3s * s.load[k];
          carried(parcel).forEach((x, i) => (came[i] += x));
          pourInto(pit.settling, parcel);
          settlePit(pit, work, 25, 1);
          levelOut(pit, work);
        }
        for (const chamber of [pit.settling, pit.suction]) {
          expect(
            Math.min(...chamberStores(chamber), ...chamber.solids_m3, ...chamber.deposit_m3),
          ).toBeGreaterThanOrEqual(0);
        }
      }
      stores(pit).forEach((x, i) => {
        expect(Math.abs(came[i] - went[i] - x)).toBeLessThanOrEqual(1e-12 * Math.max(came[i], 1e-3));
      });
    }),
    { seed: 14, numRuns: 200 },
  );
});

describe('the notch', () => {
  it('levels the chambers out above it', () => {
    const pit = pitWith(0.46, 0.3);
    levelOut(pit, createPitWork());
    expect(levelBelowRim_m(pit.settling)).toBeCloseTo(levelBelowRim_m(pit.suction), 12);
  });
  it('lets the settling chamber down to its own height and no further', () => {
    const pit = pitWith(0.45, 0.1);
    for (let t = 0; t < 5; t++) levelOut(pit, createPitWork());
    expect(levelBelowRim_m(pit.settling)).toBeCloseTo(SHAPE.notch_m, 12);
  });
  it('passes nothing while both stand below it', () => {
    const pit = pitWith(0.38, 0.1);
    levelOut(pit, createPitWork());
    expect(pit.settling.water_m3).toBe(0.38);
  });
});

describe('the strainer', () => {
  it('draws what the chamber holds, evenly', () => {
    const pit = pitWith(0.4, 0.25);
    pit.suction.solids_m3[1] = 0.0025;
    pit.suction.dissolved_kg[SOAKED] = 0.25;
    const out = createParcel();
    const drawn_m3 = drawThroughStrainer(pit, 0.002, out);
    expect(drawn_m3).toBeCloseTo(0.002, 15);
    expect(out.solids_m3[1] / drawn_m3).toBeCloseTo(0.0025 / 0.2525, 9);
    expect(out.dissolved_kg[SOAKED] / out.water_m3).toBeCloseTo(1, 9);
  });
  it('draws deposit when it stands near the floor, and none when well clear', () => {
    for (const [height_m, draws] of [
      [0, true],
      [0.08, true],
      [0.25, false],
    ] as const) {
      const pit = pitWith(0.4, 0.25);
      pit.strainer_m = height_m;
      pit.suction.deposit_m3[3] = 0.002;
      const out = createParcel();
      drawThroughStrainer(pit, 0.002, out);
      expect(out.solids_m3[3] > 0).toBe(draws);
    }
  });
  it('stands nearer to the floor as deposit rises', () => {
    const pit = pitWith(0.4, 0.25);
    expect(clearance_m(pit)).toBe(0.2);
    pit.suction.deposit_m3[2] = 0.02;
    expect(clearance_m(pit)).toBeCloseTo(0.2 - floorRise_m(pit.suction), 12);
    expect(floorSlurry_frac(pit)).toBe(0);
    pit.suction.deposit_m3[2] = 0.06;
    expect(clearance_m(pit)).toBe(0);
    expect(floorSlurry_frac(pit)).toBe(0.5);
  });
  it('draws nothing that stands below it', () => {
    const pit = pitWith(0.4, 0.091);
    expect(strainerCovered(pit)).toBe(true);
    const out = createParcel();
    expect(drawThroughStrainer(pit, 0.002, out)).toBeCloseTo(0.001, 12);
    expect(strainerCovered(pit)).toBe(false);
    expect(drawThroughStrainer(pit, 0.002, out)).toBe(0);
  });
  it('on the floor blocks within half an hour, well clear of it not in a day (common practice, no source)', () => {
    const minutesToHalf = (height_m: number): number => {
      const pit = pitWith(0.4, 0.3);
      pit.strainer_m = height_m;
      for (let t = 1; t <= 10 * 3600; t++) {
        blockStrainer(pit, 0.002, MESH_m2, 1);
        if (pit.blockage_frac > 0.5) return t / 60;
      }
      return Infinity;
    };
    expect(minutesToHalf(0)).toBeLessThan(30);
    expect(minutesToHalf(0.2)).toBe(Infinity);
  });
  it('does not block without flow, never beyond whole, and clears', () => {
    const pit = pitWith(0.4, 0.3);
    pit.strainer_m = 0;
    blockStrainer(pit, 0, MESH_m2, 1);
    expect(pit.blockage_frac).toBe(0);
    for (let t = 0; t < 7200; t++) blockStrainer(pit, 0.002, MESH_m2, 1);
    expect(pit.blockage_frac).toBe(1);
    clearStrainer(pit);
    expect(pit.blockage_frac).toBe(0);
  });
  it('worked value: half grains at the mesh, 2 L/s', () => {
    const pit = pitWith(0.4, 0.3);
    pit.strainer_m = 0;
    blockStrainer(pit, 0.002, MESH_m2, 1);
    expect(pit.blockage_frac).toBeCloseTo(0.00101, 12);
  });
});

describe('the shovel', () => {
  it('takes deposit with its pore water, and washes some fines off', () => {
    const pit = pitWith(0.4, 0.3);
    pit.settling.deposit_m3[1] = 0.01;
    pit.settling.deposit_m3[3] = 0.03;
    const out = createParcel();
    expect(digOut(pit.settling, 0.02, out)).toBeCloseTo(0.02, 12);
    expect(out.water_m3).toBeCloseTo(0.02 * 0.45, 12);
    expect(out.solids_m3[3]).toBeCloseTo(0.02 * 0.55 * 0.75, 12);
    expect(pit.settling.solids_m3[1]).toBeGreaterThan(0);
    expect(pit.settling.solids_m3[3]).toBe(0);
  });
  it('takes no more than there is', () => {
    const pit = pitWith(0.4, 0.3);
    pit.suction.deposit_m3[3] = 0.0055;
    const out = createParcel();
    expect(digOut(pit.suction, 1, out)).toBeCloseTo(0.01, 12);
    expect(floorRise_m(pit.suction)).toBe(0);
    expect(digOut(pit.suction, 1, out)).toBe(0);
  });
});

test('stirring brings the dose of the two chambers together and lifts fines', () => {
  const pit = pitWith(0.42, 0.32);
  pit.suction.dissolved_kg[SOAKED] = 0.4;
  pit.suction.deposit_m3[0] = 0.001;
  for (let t = 0; t < 900; t++) stirPit(pit);
  const settling = pit.settling.dissolved_kg[SOAKED] / pit.settling.water_m3;
  const suction = pit.suction.dissolved_kg[SOAKED] / pit.suction.water_m3;
  expect(Math.abs(settling / suction - 1)).toBeLessThan(0.01);
  expect(pit.suction.solids_m3[0]).toBeGreaterThan(0);
  const reading = { ...createMakeup(), density_kgm3: 0, load_frac: 0 };
  readChamber(pit.suction, reading);
  expect(reading.soaked_gL).toBeCloseTo(suction, 12);
  expect(reading.fines_frac).toBeGreaterThan(0);
});

test('a pit without size is refused', () => {
  expect(() => createPit({ ...SHAPE, suction: { area_m2: 0, depth_m: 0.8 } })).toThrow(RangeError);
});
