// The site on whole runs: digging the pit, what ground and sky do to it.
import { describe, expect, it } from 'vitest';
import {
  act,
  createRun,
  restoreRun,
  sensesOf,
  snapshotOf,
  step,
  type Run,
  type Scenario,
  type Snapshot,
  type SoilKind,
} from '../../sim';
import { does, drillRod, oneSoil, rigScenario, steps, until } from '../rig';
import { changedScenario, expectBalanced, told, type Change } from './site';

/** What lies on the cart. */
const WELL: Scenario['well'] = {
  casings: ['pvc50'],
  cloths: [],
  packs: ['pack1'],
  seals: ['clay'],
  lifts: ['suction'],
  bits_mm: [100, 150],
  pumps: ['small', 'large'],
  people: 100,
};

describe('the spot', () => {
  it('is chosen on the plan before the pit is dug', () => {
    const run = createRun(changedScenario({ opening: { setOut: true } }));
    expect(act(run, 'chooseSite', { spot: 'Z' })).toEqual({ kind: 'refused', reason: 'noSuchSpot' });
    does(run, 'chooseSite', { spot: 'A' });
    does(run, 'chooseSite', { spot: 'C' });
    expect(run.state.site.spot).toBe('C');
    expect(told(run, 'siteChosen')).toBe(2);
    does(run, 'setOut', { settling_m3: 0.4, suction_m3: 0.3, channel_m: 1 });
    expect(act(run, 'chooseSite', { spot: 'B' })).toEqual({ kind: 'refused', reason: 'siteSettled' });
    until(run, ({ state }) => state.tasks.length === 0);
    expect(act(run, 'chooseSite', { spot: 'B' })).toEqual({ kind: 'refused', reason: 'siteSettled' });
    expect(run.state.site).toEqual({ pitDug: true, channel_m: 1, spot: 'C' });
  });

  it('where the pit is there already, before the first turn', () => {
    const run = createRun(rigScenario());
    does(run, 'chooseSite', { spot: 'D' });
    drillRod(run, 0.4);
    does(run, 'setTurning', { on: false });
    expect(act(run, 'chooseSite', { spot: 'A' })).toEqual({ kind: 'refused', reason: 'siteSettled' });
  });

  it('is chosen anew for a new hole', () => {
    const first = rigScenario();
    const run = createRun({ ...first, grounds: [first.ground, rigScenario({ seed: 2 }).ground] });
    does(run, 'chooseSite', { spot: 'B' });
    does(run, 'abandon', { move: true });
    until(run, ({ state }) => state.holeNumber === 2, 9000);
    expect(run.state.site.spot).toBe('');
    does(run, 'chooseSite', { spot: 'A' });
    expect(run.state.site.spot).toBe('A');
  });
});

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

  it('is dug for the bit and the pump that were chosen, of those on the cart', () => {
    const run = createRun(changedScenario({ well: WELL, opening: { setOut: true, primed: false } }));
    expect(act(run, 'setOut', { ...size, bit_mm: 75 })).toEqual({ kind: 'refused', reason: 'notOffered' });
    expect(act(run, 'setOut', { ...size, pump: 'middle' })).toEqual({ kind: 'refused', reason: 'notOffered' });
    does(run, 'setOut', { ...size, bit_mm: 150, pump: 'large' });
    until(run, ({ state }) => state.tasks.length === 0);
    expect(run.state.gear).toEqual({ bit_m: 0.15, pump: 'large' });
    expect(run.kit.bit_m).toBe(0.15);
    expect(run.kit.free_m3s).toBe(0.015);
    expect(run.state.hole.radius_m[0]).toBe(0.075);
    does(run, 'fillPit', { water_L: 600 });
    until(run, ({ state }) => state.tasks.length === 0);
    expectBalanced(run);
    // The choice is in the state: a run brought back works with the same gear.
    const back = restoreRun(run.scenario, JSON.parse(JSON.stringify(snapshotOf(run))) as Snapshot);
    expect(back.kit).toEqual(run.kit);
  });

  it('takes the gear of the kit where nothing is said, and offers none where there is no well to make', () => {
    const run = createRun(scenario);
    expect(act(run, 'setOut', { ...size, bit_mm: 100 })).toEqual({ kind: 'refused', reason: 'notOffered' });
    does(run, 'setOut', size);
    until(run, ({ state }) => state.tasks.length === 0);
    expect(run.kit).toBe(scenario.kit);
  });

  it('with a wider bit the hole is wider and slower, and a larger pump burns more', () => {
    const worked = (bit_mm: number, pump: string) => {
      const run = createRun(changedScenario({ well: WELL, opening: { setOut: true } }, { layers: oneSoil('silt') }));
      does(run, 'setOut', { ...size, bit_mm, pump });
      until(run, ({ state }) => state.tasks.length === 0);
      does(run, 'fillPit', { water_L: 1500 });
      until(run, ({ state }) => state.tasks.length === 0);
      does(run, 'prime');
      until(run, ({ state }) => state.tasks.length === 0);
      does(run, 'setThrottle', { throttle_frac: 1 });
      does(run, 'setTurning', { on: true });
      does(run, 'setFeed', { feed_frac: 0.4 });
      steps(run, 600);
      expectBalanced(run);
      const { hole, stocks, pump: engine } = run.state;
      const burnt_Lh = (3600 * (run.scenario.opening.petrol_L - stocks.petrol_L)) / engine.running_s;
      return { depth_m: hole.depth_m, radius_m: hole.radius_m[1], burnt_Lh };
    };
    const narrow = worked(100, 'small');
    const wide = worked(150, 'large');
    expect(wide.radius_m).toBeGreaterThan(1.4 * narrow.radius_m);
    expect(wide.depth_m).toBeLessThan(narrow.depth_m);
    expect(wide.burnt_Lh).toBeCloseTo(2.2 * narrow.burnt_Lh, 6);
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
