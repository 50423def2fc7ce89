// Loss of fluid on whole runs: what a crew sees when the ground drinks, and what stops it.
import { describe, expect, it } from 'vitest';
import { createRun, step, type Run, type Scenario } from '../../sim';
import { levelBelowRim_m } from '../../sim/pit/level';
import { does, rigScenario, steps, until } from '../rig';

const L_PER_MIN = 60000;

/** A hole of 6 m, the lower 3 m in coarse sand under clay, ground water at 1 m: the stem down, the pit full. */
function thirsty(): Scenario {
  const plain = rigScenario({
    layers: [
      { kind: 'stiffClay', thickness_m: [2.9, 2.9] },
      { kind: 'coarseSand', thickness_m: [30, 30] },
    ],
    waterTable_m: 1,
    rods: 4,
    starter_m: 6,
  });
  const layers = plain.ground.layers.map((layer) =>
    // The coarse sand of the table, without the scatter between layers.
    layer.kind === 'coarseSand' ? { ...layer, K_ms: 9e-4, d10_mm: 0.3, d30_mm: 0.6 } : layer,
  );
  return { ...plain, ground: { ...plain.ground, layers }, opening: { ...plain.opening, water_L: 20000 } };
}
function put(run: Run, mass_kg: number): void {
  does(run, 'addAdditive', { additive: 'polymer', mass_g: mass_kg * 1000, manner: 'sprinkled' });
  until(run, ({ state }) => state.tasks.length === 0);
}
const returns_Lmin = (run: Run): number => run.work.mouth.water_m3 * L_PER_MIN;
const loss_Lmin = (run: Run): number => run.work.loss.leave_m3.reduce((a, b) => a + b, 0) * L_PER_MIN;
const pitLevel_m = (run: Run): number => levelBelowRim_m(run.state.pit.suction);

describe('three metres of clean coarse sand, a metre of head', () => {
  it('with water: no returns, and the stick in the pit tells it first (common practice, no source)', () => {
    const run = createRun(thirsty());
    does(run, 'setThrottle', { throttle_frac: 1 });
    const before_m = pitLevel_m(run);
    for (let t = 0; t < 140; t++) {
      step(run);
      expect(returns_Lmin(run)).toBe(0);
    }
    expect(run.state.pump.flow_m3s * L_PER_MIN).toBeGreaterThan(100);
    expect(loss_Lmin(run)).toBeGreaterThan(100);
    expect(pitLevel_m(run) - before_m).toBeGreaterThan(0.3);
    expect(run.work.loss.level_m).toBeGreaterThan(0.1);
  });
  it('with soaked polymer the returns come back, the loss is cut to a fifth and less within 5 minutes', () => {
    const run = createRun(thirsty());
    put(run, 1.15);
    until(run, ({ state }) => state.machine.fluid === 'ready', 3600);
    does(run, 'setThrottle', { throttle_frac: 1 });
    steps(run, 300);
    expect(run.work.loss.level_m).toBe(0);
    // Water at this level would lose 221 L/min.
    expect(loss_Lmin(run)).toBeLessThan(221 / 5);
    expect(returns_Lmin(run)).toBeGreaterThan(0.75 * run.state.pump.flow_m3s * L_PER_MIN);
    const { wall } = run.state.hole;
    expect(wall.cake_m[16]).toBeGreaterThan(2e-4);
  });
  it('in a stop the level sinks to the ground water, and no further (common practice, no source)', () => {
    const run = createRun(thirsty());
    put(run, 1.15);
    until(run, ({ state }) => state.machine.fluid === 'ready', 3600);
    does(run, 'setThrottle', { throttle_frac: 1 });
    steps(run, 240);
    does(run, 'setThrottle', { throttle_frac: 0 });
    let before_m = 0;
    for (let t = 0; t < 600; t++) {
      step(run);
      // What falls off the wall raises it a little now and then.
      expect(run.work.loss.level_m).toBeGreaterThan(before_m - 0.02);
      before_m = run.work.loss.level_m;
    }
    expect(before_m).toBeGreaterThan(0.3);
    expect(before_m).toBeLessThan(1.02);
  });
  it('clean water without powder costs membrane', () => {
    const sealed = (clean: boolean): Run => {
      const run = createRun(thirsty());
      put(run, 1.15);
      until(run, ({ state }) => state.machine.fluid === 'ready', 3600);
      does(run, 'setThrottle', { throttle_frac: 1 });
      steps(run, 300);
      const { settling, suction } = run.state.pit;
      // As if the pit had been emptied and filled with water.
      if (clean) for (const { dissolved_kg } of [settling, suction]) dissolved_kg.fill(0);
      steps(run, 600);
      return run;
    };
    const kept = sealed(false);
    const washed = sealed(true);
    expect(washed.state.hole.wall.cake_m[16]).toBeLessThan(0.8 * kept.state.hole.wall.cake_m[16]);
    expect(loss_Lmin(washed)).toBeGreaterThan(1.5 * loss_Lmin(kept));
  });
});
