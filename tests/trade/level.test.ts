// The level in the hole on whole runs: fluid lost, a hole topped up, steel taken out. Trade rules are common practice, no source, unless one is named.
import { describe, expect, it } from 'vitest';
import { act, createRun, ledgerOf, sensesOf, type Run } from '../../sim';
import { does, drilledIn, rigScenario, steps } from '../rig';

const level_m = (run: Run): number => run.state.signs.level_m;

/** A hole of three rods in fine sand below a table at 2 m, drilled with soaked polymer, the flow just stopped. */
function inFineSand(): Run {
  const run = drilledIn('fineSand', 2, 1100);
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
