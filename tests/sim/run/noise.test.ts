// The senses are unsteady and late, as they should be: how far readings stray, how long an impression holds, when news of the bit gets up.
import { beforeAll, describe, expect, it } from 'vitest';
import { createRun, sensesOf, step, type Run, type Senses } from '../../../sim';
import { NOISE, NOISE_COUNT, SPREAD_ratio } from '../../../sim/run/noise';
import { does, oneSoil, rigScenario, steps } from '../../rig';

const mean = (values: readonly number[]): number => values.reduce((sum, v) => sum + v, 0) / values.length;
function spread(values: readonly number[]): number {
  const middle = mean(values);
  return Math.sqrt(mean(values.map((v) => (v - middle) ** 2)));
}
/** How much of a value's departure from the mean is left after so many places. */
function likeness(values: readonly number[], lag: number): number {
  const middle = mean(values);
  const both = values.slice(lag).map((v, i) => (v - middle) * (values[i] - middle));
  return mean(both) / spread(values) ** 2;
}

const HOURS_s = 4 * 3600;

describe('noise', () => {
  const columns: number[][] = Array.from({ length: NOISE_COUNT }, () => []);
  beforeAll(() => {
    const run = createRun(rigScenario({ seed: 3 }));
    for (let t = 0; t < HOURS_s; t++) {
      step(run);
      if (t % 4 === 0) columns.forEach((column, i) => column.push(run.state.noise[i]));
    }
  });

  it('has mean 0 and variance 1 for every sense, and no reading is wild', () => {
    for (const column of columns) {
      expect(Math.abs(mean(column))).toBeLessThan(0.25);
      expect(spread(column)).toBeGreaterThan(0.85);
      expect(spread(column)).toBeLessThan(1.15);
      expect(Math.max(...column.map(Math.abs))).toBeLessThan(5);
    }
  });

  it('wanders: what a sense says now it says much the same in 4 s, and no longer after two minutes', () => {
    for (const column of columns) {
      expect(likeness(column, 1)).toBeGreaterThan(0.74);
      expect(likeness(column, 1)).toBeLessThan(0.86);
      expect(likeness(column, 5)).toBeLessThan(0.5);
      expect(Math.abs(likeness(column, 30))).toBeLessThan(0.15);
    }
  });

  it('of one sense tells nothing of another', () => {
    for (let a = 0; a < NOISE_COUNT; a++)
      for (let b = 0; b < a; b++) {
        const both = columns[a].map((v, i) => v * columns[b][i]);
        expect(Math.abs(mean(both))).toBeLessThan(0.15);
      }
  });

  it('is drawn by the seed: another seed reads otherwise, the same seed the same', () => {
    const noiseOf = (seed: number): number[] => {
      const run = createRun(rigScenario({ seed }));
      steps(run, 100);
      return Array.from(run.state.noise);
    };
    expect(noiseOf(5)).toEqual(noiseOf(5));
    expect(noiseOf(5)).not.toEqual(noiseOf(6));
  });
});

describe('readings', () => {
  /** One truth, read with the noise of many moments. */
  const readings: Senses[] = [];
  let truth: Run;
  beforeAll(() => {
    truth = createRun(rigScenario({ layers: oneSoil('siltySand') }));
    does(truth, 'setThrottle', { throttle_frac: 1 });
    does(truth, 'setTurning', { on: true });
    does(truth, 'setFeed', { feed_frac: 0.1 });
    steps(truth, 60);
    // Well inside the range of each reading, so that none is cut off.
    truth.state.signs.grit_frac = 0.006;
    truth.state.signs.fines_frac = 0.015;
    truth.state.stem.sinking_ms = 0.01;
    const teller = createRun(rigScenario({ seed: 9 }));
    for (let t = 0; t < HOURS_s; t++) {
      step(teller);
      if (t % 60 !== 0) continue;
      truth.state.noise.set(teller.state.noise);
      readings.push(sensesOf(truth));
    }
  });

  it.each([
    [
      'cloudiness',
      (s: Senses) => s.returns.cloudiness_frac,
      (run: Run) => run.state.signs.grit_frac / 0.02,
      SPREAD_ratio.grit,
    ],
    ['murk', (s: Senses) => s.returns.murk_frac, (run: Run) => run.state.signs.fines_frac / 0.05, SPREAD_ratio.fines],
    ['sinking', (s: Senses) => s.stem.sinking_mmin, (run: Run) => run.state.stem.sinking_ms * 60, SPREAD_ratio.sinking],
  ] as const)('of %s stray from the truth by the stated share, to both sides alike', (_name, read, true_, stated) => {
    const so = true_(truth);
    const ratios = readings.map((senses) => read(senses) / so);
    expect(Math.abs(mean(ratios) - 1)).toBeLessThan(stated / 3);
    expect(spread(ratios) / stated).toBeGreaterThan(0.75);
    expect(spread(ratios) / stated).toBeLessThan(1.25);
  });

  it('of the share of returns are steps of a twentieth, some of them beside the truth', () => {
    truth.state.signs.returns_frac = 0.62;
    const shares = Array.from({ length: 61 }, (_, i) => {
      truth.state.noise[NOISE.returns] = (i - 30) / 10;
      return sensesOf(truth).returns.share_frac;
    });
    for (const share of shares) expect(Math.abs(share * 20 - Math.round(share * 20))).toBeLessThan(1e-9);
    expect([...new Set(shares.map((share) => share.toFixed(2)))].sort()).toEqual(['0.55', '0.60', '0.65', '0.70']);
  });

  it('in words change over near their limits, and are sure away from them', () => {
    const words = (pull_N: number): Set<string> => {
      truth.state.stem.torque_Nm = pull_N;
      return new Set(
        [-2, -1, 0, 1, 2].map((z) => {
          truth.state.noise[NOISE.torque] = z;
          return sensesOf(truth).stem.torque;
        }),
      );
    };
    const stall_Nm = truth.scenario.kit.stallTorque_Nm;
    expect([...words(0.4 * stall_Nm)]).toEqual(['firm']);
    expect(words(0.6 * stall_Nm)).toEqual(new Set(['firm', 'heavy']));
  });
});

describe('lag', () => {
  /** Fine sand over coarse, the change 8.5 m down; the hole is drilled to 8 m and full. */
  const LAYERS = [
    { kind: 'fineSand', thickness_m: [8.5, 8.5] as [number, number] },
    { kind: 'coarseSand', thickness_m: [40, 40] as [number, number] },
  ] as const;
  const COARSE = 4;

  it('a change at the bit is heard at once, and seen at the mouth only after the climb', () => {
    const run = createRun(rigScenario({ layers: LAYERS, starter_m: 8, rods: 6, maxDepth_m: 12, seed: 2 }));
    does(run, 'setThrottle', { throttle_frac: 1 });
    steps(run, 120);
    does(run, 'setTurning', { on: true });
    does(run, 'setFeed', { feed_frac: 1 });
    const amountOf = (senses: Senses): string =>
      senses.returns.grains.find(({ classIndex }) => classIndex === COARSE)?.amount ?? 'none';
    let met: number | null = null;
    let heard: number | null = null;
    let seen: number | null = null;
    const before = new Set<string>();
    for (let t = 0; t < 900 && seen === null; t++) {
      step(run);
      const senses = sensesOf(run);
      if (
        met === null &&
        run.record.events.some(({ name, data }) => name === 'layerChanged' && data.kind === 'coarseSand')
      )
        met = run.state.tick;
      if (met === null) before.add(amountOf(senses));
      else if (heard === null && senses.stem.sound === 'grind') heard = run.state.tick;
      if (met !== null && ['some', 'many'].includes(amountOf(senses))) seen = run.state.tick;
    }
    const { kit } = run.scenario;
    const ring_m2 = (Math.PI / 4) * (kit.bit_m ** 2 - kit.rodOutside_m ** 2);
    const climb_s = (ring_m2 * 8.5) / run.state.pump.flow_m3s;
    expect(met).not.toBeNull();
    expect(heard! - met!).toBeLessThanOrEqual(1);
    expect(before.has('some') || before.has('many')).toBe(false);
    // The water itself needs the climb time; coarse grains sink back in it and take longer.
    expect(seen! - met!).toBeGreaterThan(0.95 * climb_s);
    expect(seen! - met!).toBeLessThan(6 * climb_s);
    expect(climb_s).toBeGreaterThan(20);
  });

  it('the eye takes some seconds to see a change of the stream', () => {
    const run = createRun(rigScenario({ layers: oneSoil('fineSand') }));
    does(run, 'setThrottle', { throttle_frac: 1 });
    const shares: number[] = [];
    for (let t = 0; t < 60; t++) {
      step(run);
      shares.push(run.state.signs.returns_frac);
    }
    const full = shares.at(-1)!;
    expect(full).toBeGreaterThan(0.9);
    const from = shares.findIndex((share) => share > 0.02);
    const half = shares.findIndex((share) => share > 0.5);
    expect(half - from).toBeGreaterThanOrEqual(2);
    expect(half - from).toBeLessThanOrEqual(10);
  });
});
