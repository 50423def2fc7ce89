// The flow that the whole circuit agrees on.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { rheologyInto } from '../../../sim/fluid/rheology';
import { createFlowResult, solveFlow, type FlowInput, type FlowResult } from '../../../sim/hydraulics/flow';
import type { LineFluid } from '../../../sim/hydraulics/pipe';
import { DEFAULT_KIT } from '../../../sim/materials/kit';

const L_PER_MIN = 60000;

const fluidOf = (soaked_gL: number): LineFluid => ({
  density_kgm3: 998,
  ...rheologyInto({ K_Pasn: 0, n_ratio: 1 }, soaked_gL, 0, 0, DEFAULT_KIT.temperature_C),
});

function inputAt(bit_m: number, change: Partial<FlowInput> = {}): FlowInput {
  const water = fluidOf(0);
  return {
    kit: DEFAULT_KIT,
    throttle_frac: 1,
    stemLength_m: bit_m,
    bit_m,
    holeDiameter_m: 0.1,
    pitLevel_m: 0.1,
    mouthLevel_m: 0,
    blockage_frac: 0,
    headLeft_ratio: 1,
    lost_frac: 0,
    hose: water,
    stem: water,
    annulus: water,
    ...change,
  };
}

function solved(input: FlowInput, warm_m3s = 0.002): FlowResult {
  const out = createFlowResult();
  solveFlow(input, warm_m3s, out);
  return out;
}

const flowAt = (input: FlowInput): number => solved(input).flow_m3s * L_PER_MIN;

const depth = fc.double({ min: 1, max: 30, noNaN: true });
const throttle = fc.double({ min: 0.3, max: 1, noNaN: true });

describe('the flow', () => {
  it('comes to 152, 122, 111 L/min at 3, 20, 30 m in water, within 5 % of the calibration', () => {
    for (const [bit_m, expected] of [
      [3, 152],
      [20, 122],
      [30, 111],
    ]) {
      expect(Math.abs(flowAt(inputAt(bit_m)) / expected - 1)).toBeLessThan(0.05);
    }
  });

  it('changes by less than a tenth with polymer up to the thick dose', () => {
    for (const bit_m of [3, 20, 30]) {
      for (const dose_gL of [0.5, 1.3, 2.5]) {
        const f = fluidOf(dose_gL);
        const ratio = flowAt(inputAt(bit_m, { hose: f, stem: f, annulus: f })) / flowAt(inputAt(bit_m));
        expect(Math.abs(ratio - 1)).toBeLessThan(0.1);
      }
    }
  });

  it('rises with the throttle and falls with depth', () => {
    fc.assert(
      fc.property(depth, depth, throttle, throttle, (d1, d2, k1, k2) => {
        const shallow = Math.min(d1, d2);
        const deep = Math.max(d1, d2);
        fc.pre(deep - shallow > 0.01 && Math.abs(k1 - k2) > 0.01);
        expect(flowAt(inputAt(deep, { throttle_frac: k1 }))).toBeLessThan(
          flowAt(inputAt(shallow, { throttle_frac: k1 })),
        );
        const slow = inputAt(deep, { throttle_frac: Math.min(k1, k2) });
        const fast = inputAt(deep, { throttle_frac: Math.max(k1, k2) });
        expect(flowAt(slow)).toBeLessThan(flowAt(fast));
      }),
      { seed: 3, numRuns: 100 },
    );
  });

  it('spends the whole head of the pump: losses and columns add up to it', () => {
    fc.assert(
      fc.property(depth, throttle, (bit_m, throttle_frac) => {
        const input = inputAt(bit_m, { throttle_frac });
        const r = solved(input);
        const spent_Pa =
          r.strainer_Pa +
          r.suctionHose_Pa +
          r.deliveryHose_Pa +
          r.swivel_Pa +
          r.stem_Pa +
          r.nozzle_Pa +
          r.annulus_Pa +
          r.static_Pa;
        expect(Math.abs(spent_Pa - r.pumpHead_m * 998 * 9.81)).toBeLessThan(1);
      }),
      { seed: 4, numRuns: 100 },
    );
  });

  it('hardly depends on where the search starts', () => {
    const input = inputAt(12);
    const cold = solved(input, 0).flow_m3s;
    for (const warm of [1e-4, 1e-3, 2e-3, 5e-3])
      expect(Math.abs(solved(input, warm).flow_m3s - cold)).toBeLessThan(2e-9);
  });

  it('stops with the throttle shut, and where the pump cannot lift the columns', () => {
    expect(solved(inputAt(5, { throttle_frac: 0 })).flow_m3s).toBe(0);
    expect(solved(inputAt(5, { throttle_frac: 0.05, pitLevel_m: 0.6 })).flow_m3s).toBe(0);
  });

  it('falls when the annulus is loaded: 3 % of grains over 20 m are about a metre to lift', () => {
    const loaded: LineFluid = { ...fluidOf(0), density_kgm3: 998 + 0.03 * 1652 };
    const clean = solved(inputAt(20));
    const heavy = solved(inputAt(20, { annulus: loaded }));
    const lift_m = (heavy.static_Pa - clean.static_Pa) / 9810;
    expect(lift_m).toBeGreaterThan(0.9);
    expect(lift_m).toBeLessThan(1.1);
    expect(heavy.flow_m3s).toBeLessThan(clean.flow_m3s);
  });

  it('is helped by a fluid level below the mouth', () => {
    expect(flowAt(inputAt(10, { mouthLevel_m: 2 }))).toBeGreaterThan(flowAt(inputAt(10)));
  });

  it('falls as the strainer blocks, until the suction side starves the pump', () => {
    const flows = [0, 0.3, 0.5, 0.7, 0.8, 0.9, 0.97].map((b) => solved(inputAt(10, { blockage_frac: b })));
    flows.slice(1).forEach((r, i) => expect(r.flow_m3s).toBeLessThan(flows[i].flow_m3s));
    expect(flows[0].starved).toBe(false);
    expect(flows[6].starved).toBe(true);
    expect(flows[6].npsh_m).toBeCloseTo(3, 3);
  });

  it('starves where the fluid stands deeper than the air can push it', () => {
    const r = solved(inputAt(10, { pitLevel_m: 7.5, kit: { ...DEFAULT_KIT, pumpAbovePit_m: 0 } }));
    expect(r.starved).toBe(true);
    expect(r.flow_m3s).toBe(0);
  });

  it('lifts water at sea level from no deeper than 7 to 8 m below the pump (common practice, no source)', () => {
    const kit = { ...DEFAULT_KIT, pumpAbovePit_m: 0 };
    const from = (pitLevel_m: number): number => solved(inputAt(10, { pitLevel_m, kit })).flow_m3s;
    expect(from(6)).toBeGreaterThan(0);
    expect(from(8)).toBe(0);
    let deepest_m = 6;
    while (from(deepest_m + 0.01) > 0) deepest_m += 0.01;
    expect(deepest_m).toBeGreaterThan(6.7);
    expect(deepest_m).toBeLessThan(8);
  });

  it('falls with altitude, as the engine does', () => {
    const high = flowAt(inputAt(10, { kit: { ...DEFAULT_KIT, altitude_m: 2000 } }));
    expect(high / flowAt(inputAt(10))).toBeGreaterThan(0.88);
    expect(high / flowAt(inputAt(10))).toBeLessThan(0.96);
  });

  it('tells the velocities that go with it', () => {
    const r = solved(inputAt(20));
    expect(r.nozzleVelocity_ms).toBeCloseTo(r.flow_m3s / (2 * (Math.PI / 4) * 1e-4), 9);
    expect(r.annulusVelocity_ms).toBeCloseTo(r.flow_m3s / ((Math.PI / 4) * (0.01 - 0.0337 * 0.0337)), 9);
    expect(r.stemVelocity_ms).toBeGreaterThan(3);
    expect(r.wallShear_Pa).toBeGreaterThan(0);
    expect(r.wallRate_1s).toBeCloseTo((12 * r.annulusVelocity_ms) / 0.0663, 9);
  });
});
