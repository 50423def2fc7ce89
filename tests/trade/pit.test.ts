// The pit on whole runs: what it keeps, what chokes the strainer, what powder needs.
import { describe, expect, it } from 'vitest';
import { createRun, sensesOf, SIZE_CLASSES, step, type Run } from '../../sim';
import { does, drillRod, oneSoil, rigScenario, steps, until } from '../rig';

const FINE_SAND = SIZE_CLASSES.findIndex((c) => c.id === 'fineSand');

/** Share of the fine sand reaching the settling chamber that it keeps, while one rod is drilled at about 120 L/min. */
function keptFineSand_frac(powder_g: number): number {
  const run = createRun(rigScenario({ layers: oneSoil('fineSand'), kit: { notch_m: 0.15 } }));
  for (let left = powder_g; left > 0; left -= 500) {
    does(run, 'addAdditive', { additive: 'polymer', mass_g: Math.min(500, left), manner: 'sprinkled' });
    steps(run, 300);
  }
  does(run, 'stir', { time_s: 600 });
  steps(run, 1500);
  does(run, 'setThrottle', { throttle_frac: 0.8 });
  does(run, 'setTurning', { on: true });
  does(run, 'setFeed', { feed_frac: 0.3 });
  let came_m3 = 0;
  let start = true;
  let keptBefore = 0;
  let cameBefore = 0;
  until(run, ({ state, work }) => {
    came_m3 += work.mouth.solids_m3[FINE_SAND];
    if (start && state.hole.depth_m > 0.8) {
      start = false;
      keptBefore = state.pit.settling.deposit_m3[FINE_SAND];
      cameBefore = came_m3;
    }
    return state.stem.bit_m > 1.49;
  });
  expect(run.state.pump.flow_m3s * 60000).toBeGreaterThan(105);
  expect(run.state.pump.flow_m3s * 60000).toBeLessThan(140);
  return (run.state.pit.settling.deposit_m3[FINE_SAND] - keptBefore) / (came_m3 - cameBefore);
}

describe('the settling chamber on fine sand', () => {
  it('keeps over 80 % in water', () => expect(keptFineSand_frac(0)).toBeGreaterThan(0.8));
  it('keeps below 20 % at the working dose', () => expect(keptFineSand_frac(1200)).toBeLessThan(0.2));
  it('keeps below 5 % when thick', () => expect(keptFineSand_frac(2500)).toBeLessThan(0.05));
});

function drilledWithStrainerAt(height_m: number): Run {
  const run = createRun(rigScenario({ layers: oneSoil('fineSand') }));
  does(run, 'addAdditive', { additive: 'polymer', mass_g: 1000, manner: 'sprinkled' });
  steps(run, 310);
  does(run, 'setStrainer', { height_m });
  steps(run, 1200);
  drillRod(run, 0.6);
  return run;
}

describe('the strainer', () => {
  it('on the floor blocks, and well clear of it does not (common practice, no source)', () => {
    const low = drilledWithStrainerAt(0);
    const high = drilledWithStrainerAt(0.3);
    for (const run of [low, high]) for (let i = 0; i < 3600 && run.state.machine.pump === 'running'; i++) step(run);
    expect(low.record.events.some((e) => e.name === 'strainerBlocked')).toBe(true);
    expect(high.record.events.some((e) => e.name === 'strainerBlocked')).toBe(false);
  });

  it('lifted out of the fluid loses the prime', () => {
    const run = createRun(rigScenario());
    does(run, 'setThrottle', { throttle_frac: 1 });
    does(run, 'setStrainer', { height_m: 0.8 });
    steps(run, 30);
    expect(run.record.events.some((e) => e.name === 'primeLost')).toBe(true);
    expect(sensesOf(run).pump.sound).toBe('racing');
  });
});

describe('powder', () => {
  it('works after about a quarter of an hour in the pit (common practice, no source)', () => {
    const run = createRun(rigScenario());
    does(run, 'addAdditive', { additive: 'polymer', mass_g: 600, manner: 'sprinkled' });
    until(run, ({ state }) => state.tasks.length === 0);
    const poured = run.state.tick;
    until(run, ({ record }) => record.events.some((e) => e.name === 'soaked'), 3600);
    expect(run.state.tick - poured).toBeGreaterThan(6 * 60);
    expect(run.state.tick - poured).toBeLessThan(18 * 60);
    does(run, 'feelFluid');
    steps(run, 10);
    expect(run.state.feel?.word).not.toBe('watery');
  });

  it('dumped in one go is partly lost in lumps', () => {
    const run = createRun(rigScenario());
    does(run, 'addAdditive', { additive: 'polymer', mass_g: 600, manner: 'dumped' });
    steps(run, 3600);
    expect(run.state.pit.suction.clumps_kg).toBeGreaterThan(0.1);
  });
});

describe('the pump', () => {
  it('gives nothing before the suction line is filled, and filling takes one to three minutes', () => {
    const scenario = rigScenario();
    const run = createRun({ ...scenario, opening: { ...scenario.opening, primed: false } });
    expect(() => does(run, 'setThrottle', { throttle_frac: 1 })).toThrow('pumpDry');
    does(run, 'prime');
    until(run, ({ state }) => state.pump.primed, 200);
    expect(run.state.tick).toBeGreaterThanOrEqual(60);
    expect(run.state.tick).toBeLessThanOrEqual(182);
    does(run, 'setThrottle', { throttle_frac: 1 });
    until(run, ({ state }) => state.machine.returns === 'full', 120);
  });
});
