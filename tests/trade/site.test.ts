// The site on whole runs: digging the pit, what ground and sky do to it.
import { describe, expect, it } from 'vitest';
import { act, createRun, sensesOf, step, type Run, type SoilKind } from '../../sim';
import { does, drillRod, oneSoil, rigScenario, steps, until } from '../rig';
import { changedScenario, expectBalanced, told, type Change } from './site';

describe('a pit that the crew digs', () => {
  const scenario = changedScenario({ opening: { setOut: true, primed: false } });
  const size = { settling_m3: 0.4, suction_m3: 0.3, channel_m: 1.5 };

  it('is not there before, takes an hour per cubic metre and two hands, and is dug once', () => {
    const run = createRun(scenario);
    expect(act(run, 'fillPit', { water_L: 100 })).toEqual({ kind: 'refused', reason: 'noPit' });
    expect(act(run, 'prime', {})).toEqual({ kind: 'refused', reason: 'noPit' });
    does(run, 'setOut', size);
    expect(sensesOf(run).hands.free).toBe(0);
    until(run, ({ state }) => state.tasks.length === 0);
    expect(run.state.tick).toBeGreaterThanOrEqual(0.7 * 3600);
    expect(run.state.tick).toBeLessThan(0.8 * 3600);
    expect(run.state.pit.settling.capacity_m3).toBeCloseTo(0.4, 12);
    expect(run.state.pit.suction.capacity_m3).toBeCloseTo(0.3, 12);
    expect(told(run, 'pitLow')).toBe(0);
    expect(act(run, 'setOut', size)).toEqual({ kind: 'refused', reason: 'alreadySetOut' });
    does(run, 'fillPit', { water_L: 600 });
    until(run, ({ state }) => state.tasks.length === 0);
    does(run, 'prime');
    until(run, ({ state }) => state.pump.primed, 400);
    expectBalanced(run);
  });

  it('keeps more of the sand when it is larger', () => {
    const carried = (settling_m3: number): number => {
      const run = createRun(changedScenario({ opening: { setOut: true } }, { layers: oneSoil('fineSand') }));
      does(run, 'setOut', { ...size, settling_m3 });
      until(run, ({ state }) => state.tasks.length === 0);
      does(run, 'fillPit', { water_L: 2000 });
      until(run, ({ state }) => state.tasks.length === 0);
      does(run, 'prime');
      until(run, ({ state }) => state.tasks.length === 0);
      drillRod(run, 0.4);
      return run.state.pump.worn_frac;
    };
    expect(carried(0.25)).toBeGreaterThan(1.3 * carried(1.2));
  });

  it('is there from the start elsewhere', () =>
    expect(act(createRun(rigScenario()), 'setOut', size)).toEqual({ kind: 'refused', reason: 'alreadySetOut' }));
});

describe('ground and sky', () => {
  const levelAfter = (change: Change, kind: SoilKind, seconds = 3600): Run => {
    const run = createRun(changedScenario(change, { layers: oneSoil(kind) }));
    for (let i = 0; i < seconds; i++) {
      step(run);
      if (i % 500 === 0) expectBalanced(run);
    }
    expectBalanced(run);
    return run;
  };
  const water_m3 = ({ state }: Run): number => state.pit.settling.water_m3 + state.pit.suction.water_m3;

  it('an unlined pit in sand runs dry, in clay it stands', () => {
    const opening = { unlinedPit: true };
    expect(water_m3(levelAfter({ opening }, 'fineSand'))).toBeLessThan(0.7);
    expect(water_m3(levelAfter({ opening }, 'firmClay'))).toBeGreaterThan(0.878);
    expect(water_m3(levelAfter({}, 'mediumSand'))).toBeCloseTo(water_m3(createRun(rigScenario())), 2);
  });

  it('the sun takes millimetres a day, and leaves the powder', () => {
    const run = createRun(changedScenario({ weather: { evaporation_mmDay: 8, showers: [] } }));
    const before_m3 = water_m3(run);
    does(run, 'addAdditive', { additive: 'polymer', mass_g: 200, manner: 'sprinkled' });
    steps(run, 8640);
    expect(before_m3 - water_m3(run)).toBeLessThan(0.02);
    expectBalanced(run);
  });

  it('a cloudburst fills the pit, runs over, and takes powder with it', () => {
    const weather = { evaporation_mmDay: 0, showers: [{ from_s: 600, to_s: 4200, rain_mmh: 90 }] };
    const run = createRun(changedScenario({ weather, opening: { pit_L: 940 } }));
    does(run, 'addAdditive', { additive: 'polymer', mass_g: 500, manner: 'sprinkled' });
    steps(run, 599);
    const before_kg = run.state.boundary.polymerOut_kg;
    steps(run, 3700);
    expect(told(run, 'pitFull')).toBe(1);
    expect(run.state.boundary.waterOut_m3).toBeGreaterThan(0.03);
    expect(run.state.boundary.polymerOut_kg).toBeGreaterThan(before_kg + 0.005);
    expectBalanced(run);
  });
});
