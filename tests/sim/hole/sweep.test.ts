// One second in the hole: balances, and the level at the top.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { SOAKED } from '../../../sim/fluid/substances';
import { cutGround } from '../../../sim/hole/cut';
import { fluidLevel_m, type HoleState } from '../../../sim/hole/hole';
import { createParcel, emptyParcel, parcelVolume_m3, type Parcel } from '../../../sim/hole/parcel';
import { sweepHole } from '../../../sim/hole/sweep';
import { CLASS_COUNT } from '../../../sim/materials/sizes';
import { RING_m2, ROD_m, faults, fullHole, sum, suspended, sweep } from './fullHole';

/** Water, grains by class, polymer in the hole. */
function stores(hole: HoleState): number[] {
  const grains = Array.from({ length: CLASS_COUNT }, (_, k) => suspended(hole, k) + hole.bed_m3[k]);
  return [hole.water_m3, ...grains, sum(hole.dissolved_kg)];
}
const flows = (p: Parcel): number[] => [p.water_m3, ...p.solids_m3, sum(p.dissolved_kg)];

/** One second of a made-up job: flow, load of two classes, move of the bit, advance. */
const second = fc.record({
  flow_m3s: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 3e-3, noNaN: true })),
  fine: fc.double({ min: 0, max: 0.05, noNaN: true }),
  coarse: fc.double({ min: 0, max: 0.05, noNaN: true }),
  polymer_kg: fc.double({ min: 0, max: 0.01, noNaN: true }),
  move_m: fc.double({ min: -0.5, max: 0.5, noNaN: true }),
  advance_m: fc.oneof(fc.constant(0), fc.double({ min: 0, max: 0.1, noNaN: true })),
});

test('random jobs: water, every class and polymer balance to 1e-12, the hole is never over-full, nothing is negative', () => {
  fc.assert(
    fc.property(fc.array(second, { minLength: 5, maxLength: 60 }), (seconds) => {
      const bench = fullHole(4, 12);
      const { hole, input, mouth } = bench;
      const cut = createParcel();
      const came = stores(hole);
      const went = came.map(() => 0);
      const soil = {
        porosity_frac: 0.4,
        saturation_frac: 0.8,
        fractions: [0.1, 0.1, 0.3, 0.2, 0.1, 0.1, 0.05, 0.05],
        salt_gL: 0,
      };
      for (const s of seconds) {
        input.bit_m = Math.min(hole.depth_m, Math.max(0.5, input.bit_m + s.move_m));
        if (input.bit_m >= hole.depth_m && s.advance_m > 0 && hole.depth_m < 11.5) {
          cutGround(hole, s.advance_m, 0.1, soil, cut);
          flows(cut).forEach((x, i) => (came[i] += x));
          input.bit_m = hole.depth_m;
        }
        const { inflow } = input;
        emptyParcel(inflow);
        inflow.water_m3 = s.flow_m3s;
        inflow.solids_m3[2] = s.flow_m3s * s.fine;
        inflow.solids_m3[5] = s.flow_m3s * s.coarse;
        inflow.moment_m4[2] = inflow.solids_m3[2] * input.bit_m;
        inflow.moment_m4[5] = inflow.solids_m3[5] * input.bit_m;
        inflow.dissolved_kg[SOAKED] = s.flow_m3s > 0 ? s.polymer_kg : 0;
        flows(inflow).forEach((x, i) => (came[i] += x));
        sweepHole(hole, bench.work, input, mouth);
        const out = flows(mouth);
        expect(Math.min(...out)).toBeGreaterThanOrEqual(0);
        out.forEach((x, i) => (went[i] += x));
        expect(faults(bench)).toEqual([]);
      }
      stores(hole).forEach((x, i) => {
        expect(Math.abs(came[i] - went[i] - x)).toBeLessThanOrEqual(1e-12 * Math.max(came[i], 1e-3));
      });
    }),
    { seed: 8, numRuns: 200 },
  );
});

describe('the level at the top', () => {
  it('falls by the volume of steel that leaves, and the flow fills it before anything runs over', () => {
    const bench = fullHole(10);
    bench.input.bit_m = 7;
    sweep(bench, 0);
    const steel_m3 = 3 * (Math.PI / 4) * ROD_m * ROD_m;
    expect(bench.hole.shortfall_m3).toBeCloseTo(steel_m3, 12);
    expect(fluidLevel_m(bench.hole, bench.input)).toBeCloseTo(steel_m3 / RING_m2, 6);
    sweep(bench, 0.002);
    expect(parcelVolume_m3(bench.mouth)).toBe(0);
    sweep(bench, 0.002);
    expect(parcelVolume_m3(bench.mouth)).toBeCloseTo(0.004 - steel_m3, 12);
    expect(bench.hole.shortfall_m3).toBe(0);
    sweep(bench, 0.002);
    expect(parcelVolume_m3(bench.mouth)).toBeCloseTo(0.002, 12);
  });

  it('overflows by the volume of steel that goes in', () => {
    const bench = fullHole(10);
    bench.input.bit_m = 8;
    sweep(bench, 0);
    bench.hole.water_m3 += bench.hole.shortfall_m3;
    sweep(bench, 0);
    bench.input.bit_m = 10;
    sweep(bench, 0);
    expect(parcelVolume_m3(bench.mouth)).toBeCloseTo(2 * (Math.PI / 4) * ROD_m * ROD_m, 12);
  });

  it('falls by the air in the pores of dry ground and by the cobbles that stay behind', () => {
    const bench = fullHole(3, 6);
    const cut = createParcel();
    const soil = { porosity_frac: 0.4, saturation_frac: 0.25, fractions: [0, 0, 0.5, 0.3, 0, 0, 0, 0], salt_gL: 0 };
    cutGround(bench.hole, 0.1, 0.1, soil, cut);
    bench.input.bit_m = 3.1;
    sweep(bench, 0);
    const cut_m3 = (Math.PI / 4) * 0.01 * 0.1;
    const steel_m3 = (Math.PI / 4) * ROD_m * ROD_m * 0.1;
    expect(bench.hole.shortfall_m3).toBeCloseTo(cut_m3 * (0.4 * 0.75 + 0.6 * 0.2) - steel_m3, 12);
  });
});
