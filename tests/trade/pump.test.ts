// The pump on whole runs: how high it can stand, what running dry costs, what a low pit does.
import { describe, expect, it } from 'vitest';
import { act, createRun, sensesOf, step, type Kit, type Run } from '../../sim';
import { does, drillRod, oneSoil, rigScenario, steps, until } from '../rig';

const told = (run: Run, name: string): number => run.record.events.filter((e) => e.name === name).length;

function primedRun(kit: Partial<Kit>): Run {
  const scenario = rigScenario({ kit });
  const run = createRun({ ...scenario, opening: { ...scenario.opening, primed: false } });
  does(run, 'prime');
  until(run, ({ state }) => state.tasks.length === 0, 400);
  if (!run.state.pump.primed) return run;
  does(run, 'setThrottle', { throttle_frac: 1 });
  steps(run, 60);
  return run;
}

const flowOf_Lmin = (kit: Partial<Kit>): number => primedRun(kit).state.pump.flow_m3s * 60000;

describe('the suction side', () => {
  it('lifts from 5 m, gulps, and gives nothing from beyond 8 m (common practice, no source)', () => {
    expect(flowOf_Lmin({ pumpAbovePit_m: 5 })).toBeGreaterThan(60);
    const high = primedRun({ pumpAbovePit_m: 6.3 });
    expect(high.state.pump.flow_m3s * 60000).toBeLessThan(flowOf_Lmin({ pumpAbovePit_m: 5 }));
    expect(sensesOf(high).pump.sound).toBe('gulping');
    expect(told(high, 'pumpGulps')).toBe(1);
    expect(flowOf_Lmin({ pumpAbovePit_m: 8.1 })).toBe(0);
  });

  it('lifts from less deep in the mountains', () => {
    expect(flowOf_Lmin({ pumpAbovePit_m: 5, altitude_m: 3000 })).toBeLessThan(
      0.8 * flowOf_Lmin({ pumpAbovePit_m: 5, altitude_m: 0 }),
    );
  });

  it('cannot even be filled from beyond what the air pushes', () => {
    const run = primedRun({ pumpAbovePit_m: 10.5 });
    expect(run.state.pump.primed).toBe(false);
    expect(told(run, 'primeFailed')).toBe(1);
  });
});

describe('a pump without water', () => {
  const dryRun = (dry_s: number): Run => {
    const run = createRun(rigScenario());
    does(run, 'setThrottle', { throttle_frac: 1 });
    steps(run, 60);
    does(run, 'setStrainer', { height_m: 0.8 });
    until(run, () => told(run, 'primeLost') > 0, 60);
    steps(run, dry_s);
    does(run, 'setThrottle', { throttle_frac: 0 });
    does(run, 'setStrainer', { height_m: 0.2 });
    steps(run, 20);
    does(run, 'prime');
    until(run, ({ state }) => state.tasks.length === 0, 600);
    does(run, 'setThrottle', { throttle_frac: 1 });
    steps(run, 60);
    return run;
  };

  it('stopped at once is none the worse', () => {
    const run = dryRun(10);
    expect(told(run, 'sealBurnt')).toBe(0);
    expect(run.state.pump.sealBurnt).toBe(false);
  });

  it('left running burns its seal, and then gives less for good', () => {
    const run = dryRun(200);
    expect(told(run, 'sealBurnt')).toBe(1);
    expect(run.state.pump.flow_m3s).toBeGreaterThan(0);
    expect(run.state.pump.flow_m3s).toBeLessThan(0.97 * dryRun(10).state.pump.flow_m3s);
  });

  it('cannot be filled while the strainer hangs in the air', () => {
    const scenario = rigScenario();
    const run = createRun({ ...scenario, opening: { ...scenario.opening, primed: false } });
    does(run, 'setStrainer', { height_m: 0.8 });
    steps(run, 12);
    does(run, 'prime');
    until(run, ({ state }) => state.tasks.length === 0, 400);
    expect(told(run, 'primeFailed')).toBe(1);
    expect(act(run, 'setThrottle', { throttle_frac: 1 })).toEqual({ kind: 'refused', reason: 'pumpDry' });
  });
});

describe('a falling pit', () => {
  it('makes the pump gulp before the prime is lost', () => {
    const run = createRun(rigScenario());
    does(run, 'setThrottle', { throttle_frac: 1 });
    steps(run, 60);
    // Bucket by bucket out of the pit.
    for (let i = 0; i < 3000 && told(run, 'primeLost') === 0; i++) {
      run.state.pit.suction.water_m3 -= 2e-4;
      run.state.boundary.waterOut_m3 += 2e-4;
      step(run);
    }
    const names = run.record.events.map((e) => e.name);
    expect(names.indexOf('pumpGulps')).toBeGreaterThan(0);
    expect(names.indexOf('primeLost')).toBeGreaterThan(names.indexOf('pumpGulps'));
  });
});

describe('sand through the pump', () => {
  it('wears it more in thick fluid, which carries the sand round', () => {
    const worn = (powder_g: number): number => {
      const run = createRun(rigScenario({ layers: oneSoil('fineSand') }));
      for (let left = powder_g; left > 0; left -= 500) {
        does(run, 'addAdditive', { additive: 'polymer', mass_g: Math.min(500, left), manner: 'sprinkled' });
        steps(run, 300);
      }
      does(run, 'stir', { time_s: 600 });
      steps(run, 1200);
      drillRod(run, 0.4);
      return run.state.pump.worn_frac;
    };
    const water = worn(0);
    expect(water).toBeGreaterThan(0);
    expect(water).toBeLessThan(0.005);
    expect(worn(2500)).toBeGreaterThan(2 * water);
  });
});
