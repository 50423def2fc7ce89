// Water that leaves through the wall or comes in, a level that stands anywhere, walls of any shape: nothing is lost or made.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { BENTONITE, SALT, SOAKED, SUBSTANCE_COUNT } from '../../../sim/fluid/substances';
import { bedTop_m, cellVolume_m3, fluidLevel_m, type HoleState } from '../../../sim/hole/hole';
import { holeCapacity_m3 } from './holds';
import { emptyParcel, parcelVolume_m3, type Parcel } from '../../../sim/hole/parcel';
import { readHole, sweepHole } from '../../../sim/hole/sweep';
import { CLASS_COUNT } from '../../../sim/materials/sizes';
import { RING_m2, ROD_m, faults, fullHole, sum, suspended, type Bench } from './fullHole';

const share = fc.double({ min: 0, max: 1, noNaN: true });

/** Water, each class and its moment, each substance in the hole. */
function stores(hole: HoleState): number[] {
  const byClass = (field: Float64Array, bed: Float64Array): number[] =>
    Array.from({ length: CLASS_COUNT }, (_, k) => sum(field.subarray(k * hole.cells, (k + 1) * hole.cells)) + bed[k]);
  const dissolved = Array.from({ length: SUBSTANCE_COUNT }, (_, s) =>
    sum(hole.dissolved_kg.subarray(s * hole.cells, (s + 1) * hole.cells)),
  );
  return [
    hole.water_m3,
    ...byClass(hole.solids_m3, hole.bed_m3),
    ...byClass(hole.moment_m4, hole.bedMoment_m4),
    ...dissolved,
  ];
}
const flows = (p: Parcel): number[] => [p.water_m3, ...p.solids_m3, ...p.moment_m4, ...p.dissolved_kg];

/** One second: flow and its load, place of the bit, and for each of 8 stretches of wall what leaves or comes in, and its radius. */
const second = fc.record({
  flow_m3s: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 3e-3, noNaN: true })),
  load: share,
  bit: share,
  leave: fc.array(fc.oneof(fc.constant(0), fc.double({ min: -2e-3, max: 3e-3, noNaN: true })), {
    minLength: 8,
    maxLength: 8,
  }),
  fines: share,
  radius: fc.array(fc.oneof(fc.constant(0.05), fc.constant(0.016), fc.double({ min: 0, max: 0.2, noNaN: true })), {
    minLength: 8,
    maxLength: 8,
  }),
});
type Second = typeof second extends fc.Arbitrary<infer T> ? T : never;

function fillIn({ hole }: Bench): void {
  for (let i = 0; i < hole.used; i++) {
    for (let k = 0; k < CLASS_COUNT; k++) {
      const grains = 1e-6 * (1 + ((i * 7 + k) % 5));
      hole.solids_m3[k * hole.cells + i] = grains;
      hole.moment_m4[k * hole.cells + i] = grains * 0.25 * i;
      hole.water_m3 -= grains;
    }
    for (let s = 0; s < SUBSTANCE_COUNT; s++) hole.dissolved_kg[s * hole.cells + i] = 1e-3 * (1 + ((i + s) % 3));
  }
}

function set({ hole, input }: Bench, s: Second): void {
  input.bit_m = Math.min(hole.depth_m, Math.max(0.2, s.bit * hole.depth_m));
  for (let i = 0; i < hole.cells && i * hole.dz_m < hole.depth_m; i++) {
    const stretch = Math.floor((i * 8) / hole.cells);
    hole.radius_m[i] = s.radius[stretch];
    input.leave_m3[i] = (s.leave[stretch] * 8) / hole.cells;
    input.leaveFines_frac[i] = s.fines;
    input.saltIn_gL[i] = 5;
  }
  const { inflow } = input;
  emptyParcel(inflow);
  inflow.water_m3 = s.flow_m3s;
  for (let k = 0; k < 5; k++) {
    inflow.solids_m3[k] = s.flow_m3s * 0.01 * s.load;
    inflow.moment_m4[k] = inflow.solids_m3[k] * input.bit_m;
  }
  if (s.flow_m3s > 0) for (let q = 0; q < SUBSTANCE_COUNT; q++) inflow.dissolved_kg[q] = 1e-3 * s.load;
  input.ambient_1s = s.flow_m3s > 0 ? 30 : 0.05;
}

/** What may never be wrong, whatever the wall: no negative or endless numbers, nothing above the surface, volumes that add up. */
function wrongs(bench: Bench): string[] {
  const { hole, input } = bench;
  const found: string[] = [];
  const all = [hole.solids_m3, hole.moment_m4, hole.dissolved_kg, hole.bed_m3, hole.bedMoment_m4];
  for (const field of all) for (const x of field) if (!(x >= 0 && x < 1e3)) found.push(`a store is ${x}`);
  if (!(hole.water_m3 >= 0)) found.push(`water is ${hole.water_m3}`);
  if (!(hole.shortfall_m3 >= 0)) found.push(`shortfall is ${hole.shortfall_m3}`);
  const level_m = fluidLevel_m(hole, input);
  for (let i = 0; i < hole.used - 1; i++) {
    if ((i + 1) * hole.dz_m > level_m - 0.5 * hole.dz_m) break;
    const here = sum(Array.from({ length: CLASS_COUNT }, (_, k) => hole.solids_m3[k * hole.cells + i]));
    if (here !== 0 || hole.dissolved_kg[i] !== 0) found.push(`cell ${i} holds matter above the level of ${level_m} m`);
  }
  return found;
}

test('random walls, levels, losses and inflows: every balance closes to 1e-12 in every second', () => {
  fc.assert(
    fc.property(fc.array(second, { minLength: 3, maxLength: 25 }), fc.boolean(), (seconds, still) => {
      const bench = fullHole(6, 8);
      fillIn(bench);
      const { hole, input, mouth, work } = bench;
      for (const [t, s] of seconds.entries()) {
        set(bench, still && t > 0 ? { ...s, radius: seconds[0].radius, bit: seconds[0].bit } : s);
        const before = stores(hole);
        const into = flows(input.inflow);
        readHole(hole, input.bit_m, ROD_m, 25, work);
        sweepHole(hole, work, input, mouth);
        const out = flows(mouth);
        const left = flows(work.left);
        const came = flows(work.came);
        expect(Math.min(...out, ...left, ...came)).toBeGreaterThanOrEqual(0);
        stores(hole).forEach((x, i) => {
          const had = before[i] + into[i] + came[i];
          expect(Math.abs(had - out[i] - left[i] - x)).toBeLessThanOrEqual(1e-12 * Math.max(had, 1e-3));
        });
        expect(wrongs(bench)).toEqual([]);
        if (parcelVolume_m3(mouth) > 1e-12) expect(hole.shortfall_m3).toBe(0);
      }
    }),
    { seed: 21, numRuns: 300 },
  );
});

test('no more leaves than there is: the hole runs dry and the level stops at the bed', () => {
  const bench = fullHole(6, 8);
  fillIn(bench);
  const { hole, input, work, mouth } = bench;
  input.leave_m3.fill(1e-3);
  input.leaveFines_frac.fill(1);
  for (let t = 0; t < 30; t++) {
    sweepHole(hole, work, input, mouth);
    expect(wrongs(bench)).toEqual([]);
  }
  expect(hole.water_m3).toBeLessThan(1e-8);
  // What is left below the level is the packed bed with empty pores.
  expect(fluidLevel_m(hole, input)).toBeGreaterThanOrEqual(bedTop_m(hole, input) - 1e-6);
  for (let k = 0; k < CLASS_COUNT; k++) expect(suspended(hole, k)).toBeLessThan(1e-9);
});

describe('a loss through the wall', () => {
  it('of half the flow halves the stream above it and the returns', () => {
    const bench = fullHole(10);
    const { hole, input, work, mouth } = bench;
    input.inflow.water_m3 = 0.002;
    input.leave_m3[20] = 0.001;
    sweepHole(hole, work, input, mouth);
    expect(mouth.water_m3).toBeCloseTo(0.001, 12);
    expect(work.left.water_m3).toBeCloseTo(0.001, 12);
    expect(hole.shortfall_m3).toBe(0);
    const way = (m3s: number): number => m3s / RING_m2 / hole.dz_m;
    expect(work.flow[30]).toBeCloseTo(way(0.002), 9);
    expect(work.flow[20]).toBeCloseTo(way(0.001), 9);
    expect(work.flow[10]).toBeCloseTo(way(0.001), 9);
  });

  it('of all of it stops the returns, and the level stays where it is', () => {
    const bench = fullHole(10);
    const { hole, input, work, mouth } = bench;
    hole.water_m3 -= 3 * RING_m2;
    hole.shortfall_m3 = 3 * RING_m2;
    input.inflow.water_m3 = 0.002;
    input.inflow.dissolved_kg[SOAKED] = 0.002;
    input.leave_m3[30] = 0.002;
    for (let t = 0; t < 300; t++) sweepHole(hole, work, input, mouth);
    expect(parcelVolume_m3(mouth)).toBe(0);
    expect(fluidLevel_m(hole, input)).toBeCloseTo(3, 6);
    // Below the leak stands what is pumped, 1 g/L; above it the water of before.
    expect(hole.dissolved_kg[36] / (RING_m2 * 0.25)).toBeCloseTo(1, 6);
    expect(sum(hole.dissolved_kg.subarray(12, 28))).toBeLessThan(1e-9);
    expect(work.left.dissolved_kg[SOAKED]).toBeCloseTo(0.002, 6);
  });

  it('below the bit draws the stream down there', () => {
    const bench = fullHole(10);
    const { hole, input, work, mouth } = bench;
    input.bit_m = 5;
    hole.water_m3 = holeCapacity_m3(hole, input);
    input.inflow.water_m3 = 0.002;
    input.inflow.dissolved_kg[SOAKED] = 0.002;
    input.inflow.solids_m3[1] = 2e-6;
    input.inflow.moment_m4[1] = 1e-5;
    input.leave_m3[39] = 0.0015;
    for (let t = 0; t < 120; t++) sweepHole(hole, work, input, mouth);
    expect(parcelVolume_m3(mouth)).toBeCloseTo(0.000502, 12);
    const open_m3 = (Math.PI / 4) * 0.01 * 0.25;
    expect(hole.dissolved_kg[30] / open_m3).toBeCloseTo(0.999, 3);
    expect(hole.solids_m3[hole.cells + 30]).toBeGreaterThan(0.5e-3 * open_m3);
    expect(faults(bench)).toEqual([]);
  });

  it('keeps sand and lets as much of the clay and silt through as the wall allows', () => {
    const after = (fines_frac: number): HoleState => {
      const bench = fullHole(10);
      const { hole, input, work, mouth } = bench;
      for (const k of [0, 3]) {
        hole.solids_m3[k * hole.cells + 20] = 1e-5;
        hole.moment_m4[k * hole.cells + 20] = 1e-4;
        hole.water_m3 -= 1e-5;
      }
      input.leave_m3[20] = 5e-4;
      input.leaveFines_frac.fill(fines_frac);
      sweepHole(hole, work, input, mouth);
      expect(work.left.solids_m3[3]).toBe(0);
      expect(work.left.moment_m4[0]).toBeCloseTo(work.left.solids_m3[0] * 10, 15);
      expect(parcelVolume_m3(work.left)).toBeCloseTo(5e-4, 15);
      return hole;
    };
    const room_m3 = RING_m2 * 0.25;
    expect(suspended(after(0), 0)).toBeCloseTo(1e-5, 12);
    expect(suspended(after(1), 0)).toBeCloseTo((1e-5 * room_m3) / (room_m3 + 5e-4), 9);
    expect(suspended(after(1), 3)).toBeCloseTo(1e-5, 12);
  });
});

describe('ground water', () => {
  it('comes in with its salt and fills the hole', () => {
    const bench = fullHole(10);
    const { hole, input, work, mouth } = bench;
    hole.water_m3 -= 5 * RING_m2;
    hole.shortfall_m3 = 5 * RING_m2;
    input.leave_m3[35] = -1e-4;
    input.saltIn_gL.fill(20);
    for (let t = 0; t < 100; t++) sweepHole(hole, work, input, mouth);
    expect(work.came.water_m3).toBeCloseTo(1e-4, 15);
    expect(fluidLevel_m(hole, input)).toBeCloseTo(5 - 0.01 / RING_m2, 9);
    const salt = hole.dissolved_kg.subarray(SALT * hole.cells, (SALT + 1) * hole.cells);
    expect(sum(salt)).toBeCloseTo(0.01 * 20, 12);
    // It stands at and above where it came in; below it the water of before.
    expect(sum(salt.subarray(36))).toBeLessThan(1e-9);
    for (let i = 0; i < 36; i++) expect(salt[i] / (RING_m2 * 0.25)).toBeLessThan(20 + 1e-9);
  });
});

test('a column of one strength keeps it, whatever leaks, however the level and the flow go', () => {
  fc.assert(
    fc.property(fc.array(second, { minLength: 3, maxLength: 25 }), (seconds) => {
      const bench = fullHole(6, 8);
      const { hole, input, work, mouth } = bench;
      for (let i = 0; i < hole.cells && i * 0.25 < 6; i++) hole.radius_m[i] = 0.05 + 0.01 * (i % 5);
      hole.water_m3 = holeCapacity_m3(hole, input);
      for (let i = 0; i < hole.used; i++) {
        const room_m3 = cellVolume_m3(hole, i, (i + 1) * 0.25, input);
        hole.dissolved_kg[BENTONITE * hole.cells + i] = 30 * room_m3;
      }
      for (const s of seconds) {
        emptyParcel(input.inflow);
        input.inflow.water_m3 = s.flow_m3s;
        input.inflow.dissolved_kg[BENTONITE] = 30 * s.flow_m3s;
        for (let i = 0; i < 24; i++) input.leave_m3[i] = Math.max(0, s.leave[Math.floor(i / 3)]) / 6;
        sweepHole(hole, work, input, mouth);
        const out = [mouth, work.left];
        for (const p of out) expect(Math.abs(p.dissolved_kg[BENTONITE] - 30 * p.water_m3)).toBeLessThan(1e-9);
        for (let i = work.column.to; i < hole.used; i++) {
          const held_kg = hole.dissolved_kg[BENTONITE * hole.cells + i];
          expect(Math.abs(held_kg - 30 * work.waterAfter_m3[i])).toBeLessThan(1e-9);
        }
      }
    }),
    { seed: 22, numRuns: 200 },
  );
});
