// Level and loss on whole holes: nothing is made or lost, nothing swings, and the sizes are those of the trade.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { SALT } from '../../../../sim/fluid/substances';
import { fluidLevel_m } from '../../../../sim/hole/hole';
import { holeCapacity_m3, holeContent_m3 } from '../holds';
import { CLASS_COUNT } from '../../../../sim/materials/sizes';
import {
  CLAY,
  oneMetre,
  COARSE,
  FINE,
  GRAVEL,
  L_PER_MIN,
  leaves_m3,
  MEDIUM,
  sandHole,
  tick,
  type SandHole,
} from './sandHole';

const SANDS = [FINE, MEDIUM, COARSE, GRAVEL, CLAY];

/** Any hole: layers, water table, fill, grains in it and on its bottom, stem part of the way down, flow, strength. */
const anyHole = fc
  .record({
    depth_m: fc.double({ min: 1, max: 24, noNaN: true }),
    table_m: fc.double({ min: 0, max: 20, noNaN: true }),
    upper: fc.constantFrom(...SANDS),
    lower: fc.constantFrom(...SANDS),
    edge_m: fc.double({ min: 0, max: 24, noNaN: true }),
    full_frac: fc.double({ min: 0, max: 1, noNaN: true }),
    soaked_gL: fc.constantFrom(0, 0.3, 1.3, 2.5),
    bit_frac: fc.double({ min: 0, max: 1, noNaN: true }),
    load_frac: fc.double({ min: 0, max: 0.3, noNaN: true }),
    bed_frac: fc.double({ min: 0, max: 0.4, noNaN: true }),
    inflow_m3: fc.constantFrom(0, 0.0005, 0.002, 0.006),
    surge_Pa: fc.constantFrom(0, -3000, 500, 3000),
    washed: fc.constantFrom(1, 1.4, 0.3),
  })
  .map((g) => {
    const bench = sandHole({ ...g, sand: (z) => (z < g.edge_m ? g.upper : g.lower) });
    const { hole, input, work } = bench;
    input.bit_m = g.depth_m * g.bit_frac;
    for (let i = 0; i < hole.used; i += 2) hole.radius_m[i] *= g.washed;
    const room_m3 = Math.max(0, holeCapacity_m3(hole, input));
    for (let i = 0; i < hole.used; i++)
      hole.solids_m3[3 * hole.cells + i] = (g.load_frac * g.full_frac * hole.water_m3) / hole.used;
    hole.bed_m3[4] = 0.55 * g.bed_frac * room_m3;
    const rest_m3 = (room_m3 - holeContent_m3(hole) + hole.water_m3) * g.full_frac;
    hole.water_m3 = Math.max(0, rest_m3);
    hole.shortfall_m3 = Math.max(0, holeCapacity_m3(hole, input) - holeContent_m3(hole));
    work.surge_Pa.fill(g.surge_Pa);
    return { bench, inflow_m3: g.inflow_m3, narrow: g.washed < 1 };
  });

/** What is wrong with one tick, in words. Plain comparisons: it runs thousands of times. */
function faultsOf({ bench, inflow_m3, narrow }: { bench: SandHole; inflow_m3: number; narrow: boolean }): string[] {
  const found: string[] = [];
  const { hole, work, input } = bench;
  const before_m3 = holeContent_m3(hole);
  const water_m3 = hole.water_m3;
  tick(bench, inflow_m3);
  const after_m3 = holeContent_m3(hole);
  const capacity_m3 = holeCapacity_m3(hole, input);
  const gap_m3 = before_m3 + inflow_m3 - leaves_m3(bench) - work.returns_m3 - after_m3;
  if (!(Math.abs(gap_m3) < 1e-12)) found.push(`off by ${gap_m3} m3`);
  if (!(hole.water_m3 >= -1e-15)) found.push(`water is ${hole.water_m3}`);
  if (!(work.returns_m3 >= 0)) found.push(`returns are ${work.returns_m3}`);
  if (!(work.level_m >= 0 && work.level_m <= hole.depth_m)) found.push(`level is ${work.level_m}`);
  if (work.returns_m3 > 0 && work.level_m !== 0) found.push(`returns from a level of ${work.level_m}`);
  let out_m3 = 0;
  let back_m3 = 0;
  for (let i = 0; i < hole.cells; i++) {
    const leaves = work.leave_m3[i];
    if (!Number.isFinite(leaves)) found.push(`cell ${i} loses ${leaves}`);
    if (i >= hole.used && leaves !== 0) found.push(`cell ${i} below the bed loses ${leaves}`);
    if (leaves > 0) out_m3 += leaves;
    else back_m3 -= leaves;
    for (const field of [hole.wall.lost_m2, hole.wall.cake_m, hole.wall.cakeResistance_s, hole.wall.conductance_ms])
      if (!(field[i] >= 0 && field[i] < 1e9)) found.push(`the wall of cell ${i} has ${field[i]}`);
    if (!(hole.wall.cake_m[i] <= 0.003 * (1 + 1e-9))) found.push(`cake of ${hole.wall.cake_m[i]} m`);
  }
  if (!(out_m3 <= water_m3 + inflow_m3 + back_m3 + 1e-12)) found.push(`${out_m3} leaves of ${water_m3} m3`);
  // The level is the one that the volume left stands at.
  if (!narrow && work.level_m > 0 && work.level_m < work.bottom_m) {
    const stands_m = fluidLevel_m(hole, input);
    if (!(Math.abs(work.level_m - stands_m) < 1e-8)) found.push(`level ${work.level_m}, but it stands at ${stands_m}`);
  }
  if (!narrow && !(after_m3 <= capacity_m3 + 1e-12)) found.push(`${after_m3} in ${capacity_m3} m3`);
  return found;
}

describe('one tick', () => {
  it('loses and makes nothing, takes no more than there is, in any hole', () => {
    fc.assert(
      fc.property(anyHole, (any) => {
        for (let t = 0; t < 12; t++) expect(faultsOf(any)).toEqual([]);
      }),
      { numRuns: 400 },
    );
  });
  it('finds the level at which hole and ground agree', () => {
    for (const sand of SANDS) {
      const bench = sandHole({ depth_m: 10.2, table_m: 3.3, sand });
      for (let t = 0; t < 20; t++) {
        tick(bench);
        const { hole, work } = bench;
        for (let i = 0; i < work.cells; i++) {
          const wetted = Math.min(1, Math.max(0, (i * 0.25 + work.height_m[i] - work.level_m) / work.height_m[i]));
          const middle_m = i * 0.25 + work.height_m[i] - 0.5 * wetted * work.height_m[i];
          const inside_Pa = 998.2 * 9.81 * (middle_m - work.level_m) * wetted;
          expect(work.pressure_Pa[i]).toBeCloseTo(inside_Pa, 6);
          const flow_m3 = (hole.wall.conductance_ms[i] * work.height_m[i] * (inside_Pa - work.ground_Pa[i])) / 9810;
          expect(work.leave_m3[i]).toBeCloseTo(flow_m3, 12);
        }
      }
    }
  });
  it('does not jump as the level passes from cell to cell', () => {
    let before = -1;
    for (let full = 0.5; full < 0.7; full += 0.0005) {
      const bench = sandHole({ depth_m: 8, table_m: 6, sand: COARSE, full_frac: full });
      tick(bench);
      if (before > 0) {
        expect(leaves_m3(bench)).toBeGreaterThan(before);
        expect(leaves_m3(bench) - before).toBeLessThan(0.001 * holeCapacity_m3(bench.hole, bench.input));
      }
      before = leaves_m3(bench);
    }
  });
  it('leaves an empty hole in dry ground empty, and fills one that stands in water', () => {
    const dry = sandHole({ depth_m: 5, table_m: 9, sand: FINE, full_frac: 0 });
    tick(dry);
    expect(leaves_m3(dry)).toBe(0);
    expect(dry.work.level_m).toBe(5);
    const wet = sandHole({ depth_m: 5, table_m: 1, sand: FINE, full_frac: 0 });
    for (let t = 0; t < 300; t++) tick(wet);
    expect(wet.work.level_m).toBeGreaterThan(0.99);
    expect(wet.work.level_m).toBeLessThan(1.01);
  });
  it('lets artesian water run over the sill', () => {
    const bench = oneMetre(COARSE);
    for (let i = 0; i < bench.hole.cells; i++) bench.ground.pore_Pa[i] += 9810 * 2;
    tick(bench);
    expect(bench.work.level_m).toBe(0);
    expect(bench.work.returns_m3 * L_PER_MIN).toBeGreaterThan(60);
    expect(bench.hole.wall.lost_m2[17]).toBe(0);
  });
  it('does not drain a bed, and takes nothing through it', () => {
    const bench = sandHole({ depth_m: 10, table_m: 9.5, sand: COARSE });
    const { hole, work, input } = bench;
    hole.bed_m3[4] = 0.55 * 0.5 * holeCapacity_m3(hole, input);
    hole.water_m3 -= hole.bed_m3[4];
    for (let t = 0; t < 200; t++) tick(bench);
    expect(work.level_m).toBeCloseTo(work.bottom_m, 1);
    expect(work.level_m).toBeLessThanOrEqual(work.bottom_m);
    expect(hole.wall.lost_m2[Math.ceil(work.bottom_m / 0.25)]).toBe(0);
    expect(hole.water_m3).toBeGreaterThan(0.45 * work.bed_m3 * 0.999);
  });
  it('shuts off what lies below a closed cell', () => {
    const bench = sandHole({ depth_m: 10, table_m: 4, sand: COARSE });
    bench.hole.radius_m[20] = 0;
    tick(bench);
    expect(bench.work.leave_m3[19]).toBeGreaterThan(0);
    for (let i = 20; i < bench.hole.cells; i++) expect(bench.work.leave_m3[i]).toBe(0);
  });
  it('finds no weight of salt in a closed cell, which has no water', () => {
    const bench = sandHole({ depth_m: 10, table_m: 4, sand: COARSE });
    const { hole, work } = bench;
    for (let i = 0; i < hole.used; i++) hole.dissolved_kg[SALT * hole.cells + i] = 0.01;
    hole.radius_m[20] = 0;
    hole.dissolved_kg[SALT * hole.cells + 20] = 0;
    tick(bench);
    for (const value of [...work.density_kgm3, ...work.leave_m3, work.level_m])
      expect(Number.isFinite(value)).toBe(true);
  });
  it('leaves grains where they are, with their pores', () => {
    const bench = sandHole({ depth_m: 6, table_m: 20, sand: GRAVEL });
    const { hole } = bench;
    for (let i = 0; i < hole.used; i++) hole.solids_m3[4 * hole.cells + i] = 0.3 * (hole.water_m3 / hole.used);
    let grains = 0;
    for (let j = 0; j < CLASS_COUNT * hole.cells; j++) grains += hole.solids_m3[j];
    hole.water_m3 -= grains;
    for (let t = 0; t < 50; t++) tick(bench);
    expect(hole.water_m3).toBeGreaterThan((0.45 / 0.55) * grains * 0.99);
  });
});
