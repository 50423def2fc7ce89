// A wall that has come in: what it grips, what it asks of rope and drive, how a turning bit cuts it back.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { gripInto, type Grip } from '../../../sim/drilling/grip';
import { dragShare, drag_N, freeingChanceOver, grip_N } from '../../../sim/drilling/pull';
import { reamInto } from '../../../sim/drilling/ream';
import { gripTorque_Nm } from '../../../sim/drilling/torque';
import { createHole, openWall, type HoleState } from '../../../sim/hole/hole';
import { createParcel, parcelVolume_m3 } from '../../../sim/hole/parcel';
import { createWallGround } from '../../../sim/hole/wallGround';
import { buildGround } from '../../../sim';

const BIT_m = 0.1;
const ROD = { rodOutside_m: 0.0337 };

function holeOf(depth_m: number, radius_m: number): HoleState {
  const hole = createHole({ dz_m: 0.25, maxDepth_m: 20, bit_m: BIT_m, starter_m: 0.5 });
  hole.depth_m = depth_m;
  hole.used = Math.round(depth_m / 0.25);
  openWall(hole, BIT_m / 2);
  hole.radius_m.fill(radius_m, 0, hole.used);
  hole.wall.squeezed_m.fill(BIT_m / 2 - radius_m, 0, hole.used);
  return hole;
}

function gripOf(hole: HoleState, bit_m: number, su_kPa = 20): Grip {
  const out: Grip = { length_m: -1, su_kPa: -1 };
  gripInto(out, hole, { bit_m, ...ROD }, BIT_m, new Float64Array(hole.cells).fill(su_kPa));
  return out;
}

test('worked values', () => {
  expect(gripOf(holeOf(5, 0.046), 5)).toEqual({ length_m: expect.closeTo(0.3, 12), su_kPa: expect.closeTo(20, 12) });
  expect(grip_N(0.1, 0.3, 20)).toBeCloseTo(565.5, 1);
  expect(drag_N(0.5, 0)).toBe(525);
  expect(gripTorque_Nm(500, 0.1)).toBe(25);
  expect(freeingChanceOver(0.5, 120)).toBeCloseTo(0.75, 12);
  expect(dragShare(459.5 + 525, 459.5, 1500)).toBeCloseTo(0.5046, 4);
});

describe('the grip of the wall', () => {
  it('is nothing in a hole as wide as the bit, and nothing in ground that drains', () => {
    expect(gripOf(holeOf(5, 0.05), 5).length_m).toBe(0);
    expect(gripOf(holeOf(5, 0.04), 5, -1)).toEqual({ length_m: 0, su_kPa: 0 });
  });

  it('holds the bit only, until the hole has closed on the rods', () => {
    expect(gripOf(holeOf(10, 0.04), 10).length_m).toBeCloseTo(0.3, 12);
    expect(gripOf(holeOf(10, 0.016), 10).length_m).toBeCloseTo(0.3 + (0.0337 / 0.1) * 9.7, 12);
  });

  it('grows as the wall comes in, and never passes the steel in the hole', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.06, noNaN: true }),
        fc.double({ min: 0.3, max: 12, noNaN: true }),
        (radius_m, bit_m) => {
          const hole = holeOf(12, radius_m);
          const { length_m } = gripOf(hole, bit_m);
          expect(length_m).toBeGreaterThanOrEqual(0);
          expect(length_m).toBeLessThanOrEqual(bit_m + 1e-12);
          expect(gripOf(holeOf(12, radius_m * 0.99), bit_m).length_m).toBeGreaterThanOrEqual(length_m);
        },
      ),
      { seed: 3 },
    );
  });
});

describe('reaming', () => {
  const ground = createWallGround(
    buildGround({ layers: [{ kind: 'softClay', thickness_m: [30, 30] }], waterTable_m: [1, 1] }, 1),
    0.25,
    80,
  );

  it('gives a known strip back: its grains and pore water are what the hole has gained', () => {
    const hole = holeOf(5, 0.045);
    const out = createParcel();
    const volume_m3 = reamInto(out, hole, { bit_m: 5, ...ROD }, BIT_m, ground, 1);
    expect(hole.radius_m[19]).toBeCloseTo(0.0452, 12);
    // Two cells of .25 m, for the bit reaches .3 m up.
    expect(volume_m3).toBeCloseTo(2 * 1.417e-5, 8);
    expect(parcelVolume_m3(out)).toBeCloseTo(volume_m3, 15);
    expect(hole.water_m3).toBe(out.water_m3);
    expect(hole.radius_m[10]).toBe(0.045);
    expect(hole.wall.squeezed_m[19]).toBeCloseTo(0.0048, 12);
  });

  it('goes back to the width of the bit and no further', () => {
    const hole = holeOf(5, 0.045);
    const out = createParcel();
    for (let i = 0; i < 60; i++) reamInto(out, hole, { bit_m: 5, ...ROD }, BIT_m, ground, 1);
    expect(hole.radius_m[19]).toBeCloseTo(0.05, 12);
    expect(reamInto(out, hole, { bit_m: 5, ...ROD }, BIT_m, ground, 1)).toBe(0);
  });
});
