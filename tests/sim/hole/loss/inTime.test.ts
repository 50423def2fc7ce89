// Looking at a cell every 8th second is near enough to the law in time, and scratch is not state.
import { describe, expect, it } from 'vitest';
import { lossInto } from '../../../../sim/hole/loss/loss';
import { createLossWork } from '../../../../sim/hole/loss/work';
import { CLASS_COUNT } from '../../../../sim/materials/sizes';
import { COARSE, FINE, keptFull, leaves_m3, MEDIUM, oneMetre, sandHole, tick, type Sand } from './sandHole';

/** Loss of a metre of wall into a ring that grows, m2, by small steps of the law written out: polymer of 1.3 g/L at 20 C, no cake. */
function fineSteps(sand: Sand, seconds: number): { lost_m2: number; flow_m2s: number } {
  const [K_Pasn, n, head_m, r] = [0.0912, 0.6919, 0.99, 0.05];
  const k = (sand.K_ms * 1.002e-3) / 9810;
  const shape = (((3 * n + 1) / (4 * n)) * 4) / Math.sqrt(8 * k * sand.porosity_frac);
  const C = (K_Pasn * Math.pow(shape, n - 1)) / k / 9810;
  let lost = 0;
  let q = 0;
  let dt = 1e-4;
  for (let t = 0; t < seconds; t += dt) {
    dt = Math.min(0.05, seconds - t, dt * 1.02);
    const front = Math.sqrt(r * r + lost / (Math.PI * sand.porosity_frac));
    const ring = (C * (Math.pow(front, 1 - n) - Math.pow(r, 1 - n))) / (1 - n);
    const outer = Math.log(5 / front) / (2 * Math.PI * sand.K_ms);
    let [lo, hi] = [0, head_m / outer];
    for (let i = 0; i < 60; i++) {
      q = (lo + hi) / 2;
      if (ring * Math.pow(q / (2 * Math.PI), n) + outer * q > head_m) hi = q;
      else lo = q;
    }
    lost += q * dt;
    if (dt <= 0) break;
  }
  return { lost_m2: lost, flow_m2s: q };
}

describe('in time', () => {
  it.each([
    ['fine', FINE],
    ['medium', MEDIUM],
    ['coarse', COARSE],
  ])('the loss of polymer into %s sand is that of fine steps', (_name, sand) => {
    for (const seconds of [8, 30, 120]) {
      const bench = oneMetre({ ...sand, d15_mm: 9 }, 1.3);
      const flow_m3s = keptFull(bench, seconds) / 60000;
      const lost_m2 = bench.hole.wall.lost_m2.subarray(16, 20).reduce((a, b) => a + b, 0) / 4;
      const fine = fineSteps(sand, seconds);
      expect(Math.abs(lost_m2 / fine.lost_m2 - 1)).toBeLessThan(seconds === 8 ? 0.09 : 0.04);
      expect(Math.abs(flow_m3s / fine.flow_m2s - 1)).toBeLessThan(0.05);
    }
  });
  it('the same run with scratch made anew in every tick is the same to the last bit', () => {
    const kept = sandHole({ depth_m: 12, table_m: 3, sand: (z) => (z < 6 ? FINE : COARSE), soaked_gL: 1.3 });
    const anew = sandHole({ depth_m: 12, table_m: 3, sand: (z) => (z < 6 ? FINE : COARSE), soaked_gL: 1.3 });
    for (let t = 0; t < 60; t++) {
      const inflow_m3 = t < 30 ? 0.001 : 0;
      if (t === 20) for (const { hole } of [kept, anew]) hole.radius_m[30] *= 1.3;
      anew.work = createLossWork(anew.hole.cells);
      tick(kept, inflow_m3);
      tick(anew, inflow_m3);
      expect(anew.hole).toEqual(kept.hole);
      expect(anew.work.leave_m3).toEqual(kept.work.leave_m3);
    }
  });
  it('hardly depends on which second the run began in', () => {
    const losses = [0, 1, 2, 3, 4, 5, 6, 7].map((tick0) => {
      const bench = oneMetre(COARSE, 1.3);
      bench.input.tick = tick0;
      keptFull(bench, 120);
      return bench.hole.wall.lost_m2[17];
    });
    expect(Math.max(...losses) / Math.min(...losses)).toBeLessThan(1.15);
  });
});

describe('what counts', () => {
  it('every class of grains has weight and takes room', () => {
    const bench = sandHole({ depth_m: 5, table_m: 1, sand: FINE });
    const { hole, work, input, ground } = bench;
    lossInto(hole, ground, input, work);
    const bottom_Pa = work.bottom_Pa[19];
    for (let k = 0; k < CLASS_COUNT; k++) {
      hole.solids_m3.fill(0);
      hole.solids_m3[k * hole.cells + 4] = 1e-4;
      lossInto(hole, ground, input, work);
      expect(work.grains_m3).toBe(1e-4);
      expect(work.load_m3[4]).toBe(1e-4);
      expect(work.fines_m3).toBe(k < 2 ? 1e-4 : 0);
      expect(work.clay_m3).toBe(k < 1 ? 1e-4 : 0);
      expect(work.bottom_Pa[19]).toBeGreaterThan(bottom_Pa + 10);
    }
  });
  it('friction of the stream and surge press, swab sucks', () => {
    const loss = (friction_Pam: number, surge_Pa: number): number => {
      const bench = sandHole({ depth_m: 8, table_m: 3, sand: FINE });
      bench.input.friction_Pam = friction_Pam;
      bench.work.surge_Pa.fill(surge_Pa);
      tick(bench, 0.05);
      return leaves_m3(bench);
    };
    expect(loss(50, 0)).toBeGreaterThan(loss(0, 0));
    expect(loss(0, 2000)).toBeGreaterThan(loss(0, 0));
    expect(loss(0, -2000)).toBeLessThan(loss(0, 0));
    expect(loss(0, -50000)).toBeLessThan(0);
  });
});
