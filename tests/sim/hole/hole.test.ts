// The shape of the hole: volumes, the bed round the stem, cells in use.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { fitCells } from '../../../sim/hole/cells';
import { cutGround } from '../../../sim/hole/cut';
import { bedHeight_m, bedVolume_m3, createHole, holeVolume_m3 } from '../../../sim/hole/hole';
import { holeCapacity_m3 } from './holds';
import { createParcel } from '../../../sim/hole/parcel';
import { suspensionDensity_kgm3 } from '../../../sim/hole/load';

const shape = (starter_m: number) => ({ dz_m: 0.25, maxDepth_m: 30, bit_m: 0.1, starter_m });
const sum = (values: ArrayLike<number>): number => Array.from(values).reduce((a, b) => a + b, 0);

test('worked values', () => {
  expect(holeVolume_m3(createHole(shape(20)))).toBeCloseTo(0.15708, 5);
  expect(suspensionDensity_kgm3(0.05)).toBeCloseTo(1080.8, 1);
  const hole = createHole(shape(20));
  hole.bed_m3[3] = 4.712e-4;
  expect(bedHeight_m(hole, { bit_m: 10, rodOutside_m: 0.0337 })).toBeCloseTo(0.1091, 4);
});

test('a starter hole deeper than the deepest hole is refused', () => {
  expect(() => createHole({ ...shape(0.3), starter_m: 31 })).toThrow(RangeError);
  expect(() => createHole({ ...shape(0.3), starter_m: 0 })).toThrow(RangeError);
});

test('cutting deepens the hole by the volume of the bit and adds its grains, their origin and the pore water', () => {
  const hole = createHole(shape(2));
  const out = createParcel();
  cutGround(
    hole,
    0.02,
    0.1,
    { porosity_frac: 0.4, saturation_frac: 0.5, fractions: [0, 0, 0.6, 0.3, 0, 0, 0, 0], salt_gL: 0 },
    out,
  );
  const volume_m3 = (Math.PI / 4) * 0.01 * 0.02;
  expect(hole.depth_m).toBeCloseTo(2.02, 12);
  expect(holeVolume_m3(hole)).toBeCloseTo((Math.PI / 4) * 0.01 * 2.02, 12);
  expect(sum(hole.solids_m3)).toBeCloseTo(volume_m3 * 0.6 * 0.9, 15);
  expect(sum(out.moment_m4) / sum(out.solids_m3)).toBeCloseTo(2.01, 9);
  expect(hole.water_m3).toBeCloseTo(volume_m3 * 0.4 * 0.5, 15);
  expect(() =>
    cutGround(
      hole,
      40,
      0.1,
      { porosity_frac: 0.4, saturation_frac: 1, fractions: new Array(8).fill(0), salt_gL: 0 },
      out,
    ),
  ).toThrow(RangeError);
});

describe('the bed', () => {
  it('stands higher round the stem than under the bit, and fills just its volume', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 1e-6, max: 0.03, noNaN: true }),
        fc.double({ min: 0.5, max: 10, noNaN: true }),
        (grains_m3, bit_m) => {
          const hole = createHole(shape(10));
          hole.bed_m3[2] = grains_m3;
          const stem = { bit_m, rodOutside_m: 0.0337 };
          const height_m = bedHeight_m(hole, stem);
          const steel_m = Math.max(0, bit_m - (10 - height_m));
          const room_m3 = (Math.PI / 4) * (0.01 * height_m - 0.0337 * 0.0337 * steel_m);
          expect(room_m3).toBeCloseTo(bedVolume_m3(hole), 10);
        },
      ),
      { seed: 11 },
    );
  });
});

test('cells follow the bed without losing anything', () => {
  fc.assert(
    fc.property(fc.array(fc.double({ min: 0, max: 0.02, noNaN: true }), { minLength: 1, maxLength: 12 }), (beds) => {
      const hole = createHole(shape(8));
      const stem = { bit_m: 8, rodOutside_m: 0.0337 };
      for (let i = 0; i < hole.used; i++) {
        hole.solids_m3[4 * hole.cells + i] = 1e-6 * (i + 1);
        hole.dissolved_kg[i] = 1e-3;
      }
      const before = [sum(hole.solids_m3), sum(hole.dissolved_kg)];
      for (const bed of beds) {
        hole.bed_m3[2] = bed;
        const bottom_m = fitCells(hole, stem);
        const last_m = bottom_m - (hole.used - 1) * hole.dz_m;
        if (hole.used > 1) {
          expect(last_m).toBeGreaterThanOrEqual(0.5 * hole.dz_m - 1e-9);
          expect(last_m).toBeLessThanOrEqual(1.5 * hole.dz_m + 1e-9);
        }
        expect(sum(hole.solids_m3)).toBeCloseTo(before[0], 15);
        expect(sum(hole.dissolved_kg)).toBeCloseTo(before[1], 12);
      }
    }),
    { seed: 12 },
  );
});

test('room less steel', () => {
  const hole = createHole(shape(10));
  const steel_m3 = (Math.PI / 4) * 0.0337 * 0.0337 * 4;
  expect(holeCapacity_m3(hole, { bit_m: 4, rodOutside_m: 0.0337 })).toBeCloseTo(holeVolume_m3(hole) - steel_m3, 12);
});

test('a cell that was washed wider, or came in, before it was drilled through grows by what is cut and by no more', () => {
  const soil = { porosity_frac: 0.4, saturation_frac: 1, fractions: [0, 0, 0.6, 0.4, 0, 0, 0, 0], salt_gL: 0 };
  for (const radius_m of [0.07, 0.04]) {
    const hole = createHole(shape(2.1));
    hole.wall.open_s.fill(60, 0, 9);
    hole.radius_m[8] = radius_m;
    if (radius_m < 0.05) hole.wall.squeezed_m[8] = 0.05 - radius_m;
    const out = createParcel();
    let cut_m3 = 0;
    const before_m3 = holeVolume_m3(hole);
    for (let i = 0; i < 8; i++) {
      cutGround(hole, 0.05, 0.1, soil, out);
      cut_m3 += (Math.PI / 4) * 0.01 * 0.05;
    }
    expect(hole.depth_m).toBeCloseTo(2.5, 12);
    expect(holeVolume_m3(hole) - before_m3).toBeCloseTo(cut_m3, 14);
    expect(hole.radius_m[9]).toBe(0.05);
  }
});
