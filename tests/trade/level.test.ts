// The level in the hole on whole runs: fluid lost, a hole topped up, steel taken out. Trade rules are common practice, no source, unless one is named.
import { describe, expect, it } from 'vitest';
import { act, createRun, ledgerOf, sensesOf, type Run } from '../../sim';
import { does, oneSoil, rigScenario, steps, until } from '../rig';

const level_m = (run: Run): number => run.state.signs.level_m;

/** A hole of three rods in fine sand below a table at 2 m, drilled with soaked polymer, the flow just stopped. */
function inFineSand(dose_g = 1100): Run {
  const run = createRun(rigScenario({ layers: oneSoil('fineSand'), waterTable_m: 2, rods: 3 }));
  if (dose_g > 0) does(run, 'addAdditive', { additive: 'polymer', mass_g: dose_g, manner: 'sprinkled' });
  steps(run, 1800);
  does(run, 'setThrottle', { throttle_frac: 1 });
  does(run, 'setTurning', { on: true });
  does(run, 'setFeed', { feed_frac: 0.6 });
  until(run, ({ state }) => state.hole.depth_m > 4.4, 7200);
  does(run, 'setFeed', { feed_frac: 0 });
  steps(run, 60);
  does(run, 'setTurning', { on: false });
  does(run, 'setThrottle', { throttle_frac: 0 });
  return run;
}

describe('a stop in sand', () => {
  it('lets the level down, and the mouth shows it', () => {
    const run = inFineSand();
    steps(run, 2);
    expect(sensesOf(run).mouth.look).toBe('brim');
    steps(run, 40);
    expect(level_m(run)).toBeGreaterThan(0.15);
    expect(sensesOf(run).mouth.look).toBe('down');
  });

  it('keeps its level where buckets top it up, and nothing is lost on the way', () => {
    const run = inFineSand();
    for (let minute = 0; minute < 10; minute++) {
      does(run, 'topUp', { fluid_L: 10 });
      steps(run, 60);
    }
    expect(level_m(run)).toBeLessThan(0.5);
    const { water, solids, polymer } = ledgerOf(run);
    expect(Math.max(water, solids, polymer)).toBeLessThan(1e-12);
  });

  it('takes no bucket from an empty pit', () => {
    const run = createRun(rigScenario());
    run.state.pit.suction.water_m3 = 0.005;
    expect(act(run, 'topUp', { fluid_L: 10 })).toEqual({ kind: 'refused', reason: 'pitEmpty' });
  });
});
