// Seepage out of and into an unlined pit, and what runs over the rim.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { buildGround, type SoilKind } from '../../../sim';
import { createParcel, parcelVolume_m3 } from '../../../sim/hole/parcel';
import { spillOver } from '../../../sim/pit/exchange';
import { levelBelowRim_m } from '../../../sim/pit/level';
import { createPit, type PitState } from '../../../sim/pit/pit';
import { createPitGround, seepage_m3s, type PitGround } from '../../../sim/pit/seep';

const WATER_20C_Pas = 1.002e-3;
const SIZE = { area_m2: 0.6, depth_m: 0.8 };

function pitWith(water_m3: number): PitState {
  const pit = createPit({ settling: SIZE, suction: SIZE, notch_m: 0.15, strainer_m: 0.2 });
  pit.settling.water_m3 = water_m3;
  return pit;
}

function groundOfK(K_ms: number, waterTable_m = 5): PitGround {
  return { wallK_ms: new Float64Array(8).fill(K_ms), floorK_ms: K_ms, waterTable_m };
}

const inSoil = (kind: SoilKind, waterTable_m = 5): PitGround =>
  createPitGround(
    buildGround({ layers: [{ kind, thickness_m: [20, 20] }], waterTable_m: [waterTable_m, waterTable_m] }, 3),
    0.8,
  );

test('worked value', () =>
  expect(seepage_m3s(pitWith(0.48).settling, groundOfK(1e-6), WATER_20C_Pas)).toBeCloseTo(1.84e-6, 8));

describe('seepage', () => {
  const perHour_L = (kind: SoilKind): number =>
    3.6e6 * seepage_m3s(pitWith(0.48).settling, inSoil(kind), WATER_20C_Pas);

  it('is a bucket in hours in topsoil, nothing in clay, and the whole pit in sand (common practice, no source)', () => {
    expect(perHour_L('topsoil')).toBeGreaterThan(1);
    expect(perHour_L('topsoil')).toBeLessThan(40);
    expect(perHour_L('firmClay')).toBeLessThan(0.1);
    expect(perHour_L('mediumSand')).toBeGreaterThan(480);
  });

  it('is slower in thick fluid, and behind the fines on the floor', () => {
    const full = pitWith(0.48).settling;
    const bare = seepage_m3s(full, groundOfK(1e-5), WATER_20C_Pas);
    expect(seepage_m3s(full, groundOfK(1e-5), 0.08)).toBeCloseTo((bare * WATER_20C_Pas) / 0.08, 12);
    full.deposit_m3[1] = 0.005;
    expect(seepage_m3s(full, groundOfK(1e-5), WATER_20C_Pas)).toBeLessThan(bare);
  });

  it('falls with the fluid, ends with it, and turns round where ground water stands above it', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 0.01, max: 0.48, noNaN: true }),
        fc.double({ min: 1e-9, max: 1e-3, noNaN: true }),
        (water_m3, K_ms) => {
          const here = seepage_m3s(pitWith(water_m3).settling, groundOfK(K_ms), WATER_20C_Pas);
          expect(here).toBeGreaterThan(0);
          const lower = seepage_m3s(pitWith(water_m3 * 0.9).settling, groundOfK(K_ms), WATER_20C_Pas);
          expect(lower).toBeLessThanOrEqual(here);
        },
      ),
      { seed: 5 },
    );
    expect(seepage_m3s(pitWith(0).settling, groundOfK(1e-4), WATER_20C_Pas)).toBe(0);
    expect(seepage_m3s(pitWith(0.1).settling, groundOfK(1e-4, 0.1), WATER_20C_Pas)).toBeLessThan(0);
  });
});

describe('a pit that is too full', () => {
  it('gives what stands above the rim, at the strength it has', () => {
    const pit = pitWith(0.5);
    pit.settling.solids_m3[1] = 0.01;
    pit.settling.dissolved_kg[0] = 1;
    const out = createParcel();
    const over_m3 = spillOver(pit, out);
    expect(over_m3).toBeCloseTo(0.03, 12);
    expect(parcelVolume_m3(out)).toBeCloseTo(0.03, 12);
    expect(levelBelowRim_m(pit.settling)).toBeCloseTo(0, 12);
    expect(out.solids_m3[1]).toBeCloseTo((0.01 * 0.03) / 0.51, 12);
    expect(out.dissolved_kg[0] + pit.settling.dissolved_kg[0]).toBeCloseTo(1, 12);
    expect(spillOver(pit, createParcel())).toBeLessThan(1e-12);
  });
});
