// Water, grains by class and polymer balance at every tick, and a planted loss is found.
import { describe, expect, it } from 'vitest';
import { BENTONITE, CHLORINE, SALT, SOAKED } from '../../../sim/fluid/substances';
import { createRun, ledgerOf, step } from '../../../sim';
import { clearHole, does, drillRod, nextRod, rigScenario, steps } from '../../rig';

const LIMIT = 1e-9;

describe('ledger', () => {
  it('closes at every tick of two rods with powder, a sample, water and digging', () => {
    const run = createRun(rigScenario());
    const check = () => {
      const { water, solids, polymer, additives } = ledgerOf(run);
      expect(Math.max(water, solids, polymer, additives)).toBeLessThanOrEqual(LIMIT);
    };
    const watched = (count: number) => {
      for (let i = 0; i < count; i++) {
        step(run);
        check();
      }
    };
    does(run, 'addAdditive', { additive: 'polymer', mass_g: 600, manner: 'dumped' });
    does(run, 'stir', { time_s: 120 });
    watched(200);
    drillRod(run, 0.8);
    does(run, 'setTurning', { on: false });
    does(run, 'catchSample', { label_m: 1.5 });
    does(run, 'addWater', { water_L: 20 });
    watched(60);
    clearHole(run, 60);
    does(run, 'setThrottle', { throttle_frac: 0 });
    steps(run, 2);
    does(run, 'addRod');
    watched(120);
    drillRod(run, 0.8);
    check();
    does(run, 'setTurning', { on: false });
    does(run, 'digOutPit', { chamber: 'settling', spoil_L: 5 });
    watched(60);
    does(run, 'lift', { distance_m: 0.5, speed_ms: 0.2 });
    watched(30);
    does(run, 'setThrottle', { throttle_frac: 0 });
    steps(run, 2);
    does(run, 'removeRod', { speed_ms: 0.2 });
    watched(90);
    expect(run.state.stem.rods).toBe(1);
    expect(run.state.boundary.solidsIn_m3.some((v) => v > 0.001)).toBe(true);
  });

  it('finds a planted loss of a millionth in each store', () => {
    const run = createRun(rigScenario());
    does(run, 'addAdditive', { additive: 'polymer', mass_g: 600, manner: 'sprinkled' });
    steps(run, 200);
    drillRod(run, 0.8);
    const { hole, pit } = run.state;
    const planted: [() => void, () => void, 'water' | 'solids' | 'polymer'][] = [
      [() => (pit.suction.water_m3 *= 1 - 1e-5), () => (pit.suction.water_m3 /= 1 - 1e-5), 'water'],
      [() => (pit.settling.water_m3 -= 1e-6), () => (pit.settling.water_m3 += 1e-6), 'water'],
      [() => (hole.water_m3 -= 1e-6), () => (hole.water_m3 += 1e-6), 'water'],
    ];
    for (const [plant, undo, balance] of planted) {
      plant();
      expect(ledgerOf(run)[balance]).toBeGreaterThan(LIMIT);
      undo();
      expect(ledgerOf(run)[balance]).toBeLessThanOrEqual(LIMIT);
    }
    let k = 0;
    while (run.state.boundary.solidsIn_m3[k] < 1e-4) k++;
    pit.settling.solids_m3[k] -= 1e-6 * run.state.boundary.solidsIn_m3[k];
    expect(ledgerOf(run).solids).toBeGreaterThan(LIMIT);
    pit.suction.dissolved_kg[SOAKED] -= 1e-6 * run.state.boundary.polymerIn_kg;
    expect(ledgerOf(run).polymer).toBeGreaterThan(LIMIT);
    for (const s of [BENTONITE, CHLORINE, SALT]) {
      const run = createRun(rigScenario());
      run.state.pit.suction.dissolved_kg[s] = 1;
      run.state.boundary.dissolvedIn_kg[s] = 1;
      drillRod(run, 0.8);
      expect(ledgerOf(run).additives).toBeLessThanOrEqual(LIMIT);
      run.state.pit.suction.dissolved_kg[s] -= 1e-6;
      expect(ledgerOf(run).additives).toBeGreaterThan(LIMIT);
    }
  });

  it('the hole holds what its walls leave room for', () => {
    const run = createRun(rigScenario());
    drillRod(run, 0.8);
    clearHole(run, 30);
    nextRod(run);
    expect(run.state.hole.water_m3).toBeGreaterThan(0);
    for (const value of run.state.hole.solids_m3) expect(value).toBeGreaterThanOrEqual(0);
  });
});
