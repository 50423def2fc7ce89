// Grains in the hole: they settle when all is still, lie in the bed, are picked up, and climb from where they were cut.
import { describe, expect, it, test } from 'vitest';
import { SOAKED } from '../../../sim/fluid/substances';
import { cutGround } from '../../../sim/hole/cut';
import { bedHeight_m, buried_m, type HoleState } from '../../../sim/hole/hole';
import { createParcel } from '../../../sim/hole/parcel';
import { readHole } from '../../../sim/hole/sweep';
import { CLASS_COUNT } from '../../../sim/materials/sizes';
import { RING_m2, ROD_m, faults, fullHole, suspended, sweep } from './fullHole';

describe('still fluid', () => {
  it('lets all sand settle on the bed, which buries the bit', () => {
    const bench = fullHole(10);
    const { hole } = bench;
    for (let i = 0; i < hole.used; i++) {
      hole.solids_m3[3 * hole.cells + i] = 0.02 * RING_m2 * 0.25;
      hole.moment_m4[3 * hole.cells + i] = 0.02 * RING_m2 * 0.25 * 10;
      hole.water_m3 -= 0.02 * RING_m2 * 0.25;
    }
    const grains = suspended(hole, 3);
    for (let t = 0; t < 600; t++) sweep(bench, 0);
    expect(hole.bed_m3[3] / grains).toBeGreaterThan(0.999);
    expect(bedHeight_m(hole, bench.input)).toBeCloseTo(grains / 0.55 / RING_m2, 3);
    expect(buried_m(hole, bench.input)).toBeCloseTo(bedHeight_m(hole, bench.input), 9);
    expect(faults(bench)).toEqual([]);
  });

  it('lets the coarser grains down first', () => {
    const bench = fullHole(10);
    const { hole } = bench;
    for (const k of [1, 2, 3, 4, 5]) hole.solids_m3[k * hole.cells + 10] = 1e-6;
    hole.water_m3 -= 5e-6;
    for (let t = 0; t < 60; t++) sweep(bench, 0);
    const left = [1, 2, 3, 4, 5].map((k) => hole.bed_m3[k]);
    left.slice(1).forEach((bed, i) => expect(bed).toBeGreaterThanOrEqual(left[i]));
    expect(left[4]).toBeCloseTo(1e-6, 12);
    expect(left[0]).toBeLessThan(1e-8);
  });
});

describe('the bed', () => {
  function buried(flow_m3s: number, bit_m: number, k: number, time_s: number): HoleState {
    const bench = fullHole(10);
    const grains = 0.55 * RING_m2 * 0.3;
    bench.hole.bed_m3[k] = grains;
    bench.hole.bedMoment_m4[k] = grains * 10;
    bench.hole.water_m3 -= grains;
    bench.input.bit_m = bit_m;
    for (let t = 0; t < time_s; t++) sweep(bench, flow_m3s);
    return bench.hole;
  }
  it('of sand is picked up again by the jets, with its origin', () => {
    const hole = buried(0.002, 10, 3, 120);
    expect(hole.bed_m3[3]).toBeLessThan(0.03 * 0.55 * RING_m2 * 0.3);
    expect(hole.bedMoment_m4[3]).toBeCloseTo(hole.bed_m3[3] * 10, 12);
  });
  it('of coarse gravel stays', () =>
    expect(buried(0.002, 10, 7, 120).bed_m3[7]).toBeGreaterThan(0.99 * 0.55 * RING_m2 * 0.3));
  it('stays without flow', () => expect(buried(0, 10, 3, 60).bed_m3[3]).toBeCloseTo(0.55 * RING_m2 * 0.3, 9));
  it('out of reach of the jets stays', () =>
    expect(buried(0.002, 9, 3, 60).bed_m3[3]).toBeCloseTo(0.55 * RING_m2 * 0.3, 9));
});

describe('grains on the way up', () => {
  it('come from where they were cut, with the lag of their own climb', () => {
    const bench = fullHole(8, 12);
    const { hole, input, mouth } = bench;
    const cut = createParcel();
    const soil = { porosity_frac: 0.4, saturation_frac: 1, fractions: [0, 0, 0.5, 0.5, 0, 0, 0, 0], salt_gL: 0 };
    let origin_m = 0;
    for (let t = 0; t < 240; t++) {
      cutGround(hole, 0.005, 0.1, soil, cut);
      input.bit_m = hole.depth_m;
      sweep(bench, 0.002);
      if (mouth.solids_m3[3] > 0) origin_m = mouth.moment_m4[3] / mouth.solids_m3[3];
    }
    // Medium sand climbs at about .24 m/s over 9 m: some 38 s, in which the bit went .19 m.
    expect(hole.depth_m - origin_m).toBeGreaterThan(0.15);
    expect(hole.depth_m - origin_m).toBeLessThan(0.24);
    expect(faults(bench)).toEqual([]);
  });

  it('8 mm and coarser pile up at the bottom in plain water while sand leaves', () => {
    const bench = fullHole(6);
    const { hole } = bench;
    for (const k of [3, 6]) {
      hole.solids_m3[k * hole.cells + hole.used - 1] = 1e-5;
      hole.water_m3 -= 1e-5;
    }
    for (let t = 0; t < 60; t++) sweep(bench, 130 / 60000);
    expect(suspended(hole, 3)).toBeLessThan(1e-8);
    expect(suspended(hole, 6) + hole.bed_m3[6]).toBeCloseTo(1e-5, 12);
  });
});

test('readings: the annulus weighs and holds what is in it', () => {
  const bench = fullHole(10);
  const { hole, work } = bench;
  for (let i = 0; i < hole.used; i++) {
    hole.solids_m3[1 * hole.cells + i] = 0.01 * RING_m2 * 0.25;
    hole.solids_m3[3 * hole.cells + i] = 0.02 * RING_m2 * 0.25;
    hole.dissolved_kg[SOAKED * hole.cells + i] = 1.3 * 0.97 * RING_m2 * 0.25;
  }
  readHole(hole, 10, ROD_m, 25, work);
  expect(work.density_kgm3).toBeCloseTo(998.2 + 0.03 * (2650 - 998.2), 6);
  expect(work.fines_frac).toBeCloseTo(0.01, 9);
  expect(work.soaked_gL).toBeCloseTo(1.3, 9);
  expect(work.bottomLoad_frac).toBeCloseTo(0.03, 9);
  expect(work.suspended_m3).toBeCloseTo(0.03 * RING_m2 * 10, 9);
  expect(work.coarse_m3).toBeCloseTo(0.02 * RING_m2 * 10, 9);
  expect(work.diameter_m).toBeCloseTo(0.1, 12);
  expect(work.K_Pasn).toBeGreaterThan(0.07);
});

test('a slug of thicker fluid lifts better where it is', () => {
  const bench = fullHole(10);
  const { hole, work } = bench;
  for (let i = 20; i < hole.used; i++) hole.dissolved_kg[SOAKED * hole.cells + i] = 2.5 * RING_m2 * 0.25;
  sweep(bench, 0.002);
  const stretch = (s: number): number => work.slip_ms[s * CLASS_COUNT + 4];
  expect(stretch(3)).toBeLessThan(0.6 * stretch(0));
});
