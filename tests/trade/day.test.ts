// The working day on whole runs: supplies that end, giving a hole up and moving on, nightfall.
import { describe, expect, it } from 'vitest';
import {
  act,
  buildGround,
  costOf,
  createRun,
  groundOf,
  hashRun,
  replayRun,
  restoreRun,
  sensesOf,
  snapshotOf,
  step,
  type Run,
  type Snapshot,
} from '../../sim';
import { does, drillRod, nextRod, rigScenario, steps, until } from '../rig';
import { changedScenario, expectBalanced, told } from './site';

describe('supplies', () => {
  it('end with a plain event each, and the engine stops with the petrol', () => {
    const run = createRun(changedScenario({ opening: { pit_L: 700, water_L: 50, powder_kg: 0.2, petrol_L: 0.05 } }));
    does(run, 'addWater', { water_L: 50 });
    until(run, ({ state }) => state.tasks.length === 0);
    expect(told(run, 'waterOut')).toBe(1);
    expect(act(run, 'addWater', { water_L: 5 })).toEqual({ kind: 'refused', reason: 'noWater' });
    does(run, 'addAdditive', { additive: 'polymer', mass_g: 200, manner: 'sprinkled' });
    steps(run, 2);
    expect(told(run, 'powderOut')).toBe(1);
    does(run, 'setThrottle', { throttle_frac: 1 });
    until(run, () => told(run, 'petrolOut') > 0, 600);
    steps(run, 2);
    expect(run.state.machine.pump).toBe('stopped');
    expect(act(run, 'setThrottle', { throttle_frac: 1 })).toEqual({ kind: 'refused', reason: 'noPetrol' });
    steps(run, 100);
    expect(told(run, 'petrolOut') + told(run, 'waterOut') + told(run, 'powderOut')).toBe(3);
  });
});

describe('giving up and moving on', () => {
  const grounds = [11, 12].map((seed) =>
    buildGround(
      {
        layers: [
          { kind: 'silt', thickness_m: [1, 2] },
          { kind: 'mediumSand', thickness_m: [40, 40] },
        ],
        waterTable_m: [1, 1],
      },
      seed,
    ),
  );
  const scenario = changedScenario({ ground: grounds[0]!, grounds, opening: { rodsInAll: 4 } });

  function moved(): Run {
    const run = createRun(scenario);
    drillRod(run, 0.5);
    nextRod(run);
    does(run, 'logLayer', { from_m: 0, to_m: 1.5, kind: 'silt' });
    does(run, 'abandon', { move: true });
    expect(act(run, 'setThrottle', { throttle_frac: 1 })).toEqual({ kind: 'refused', reason: 'handsBusy' });
    until(run, ({ state }) => state.tasks.length === 0);
    return run;
  }

  it('backfills for an hour, and begins a new hole in the next ground inside the same run', () => {
    const run = moved();
    expect(told(run, 'newHole')).toBe(1);
    expect(run.state.holeNumber).toBe(2);
    expect(run.state.oldHoles[0]!.depth_m).toBeCloseTo(1.5, 1);
    expect(run.state.oldHoles[0]!.ownLog).toHaveLength(1);
    expect(run.state.ownLog).toEqual([]);
    expect(run.state.rodsInAll).toBe(4);
    expect(run.state.hole.depth_m).toBe(0.3);
    expect(run.state.machine.job).toBe('siteSetup');
    expect(groundOf(run)).toBe(grounds[1]);
    expect(sensesOf(run).hole).toBe(2);
    expectBalanced(run);
    drillRod(run, 0.5);
    expectBalanced(run);
    expect(run.state.machine.job).toBe('drilling');
    expect(act(run, 'abandon', { move: true }).kind).toBe('refused');
  });

  it('replays to the same bits, also from a snapshot after the move', () => {
    const run = moved();
    const kept = JSON.parse(JSON.stringify(snapshotOf(run))) as Snapshot;
    const later = restoreRun(scenario, kept);
    expect(hashRun(later)).toBe(hashRun(run));
    for (const one of [run, later]) drillRod(one, 0.5);
    expect(hashRun(later)).toBe(hashRun(run));
    expect(hashRun(replayRun(scenario, run.log, run.state.tick))).toBe(hashRun(run));
  });

  it('waits for still pump and stem, and for ground and rods enough', () => {
    const run = createRun(scenario);
    does(run, 'setThrottle', { throttle_frac: 1 });
    steps(run, 30);
    expect(act(run, 'abandon', { move: true })).toEqual({ kind: 'refused', reason: 'flowOn' });
    const alone = createRun(rigScenario());
    expect(act(alone, 'abandon', { move: true })).toEqual({ kind: 'refused', reason: 'noMoreGround' });
  });

  it('leaves a stuck stem in the ground with its rods', () => {
    const stuckAt = (rodsInAll: number): Run => {
      const run = createRun({ ...scenario, opening: { ...scenario.opening, rods: 3, rodsInAll, starter_m: 4 } });
      run.state.hole.bed_m3[6] += 0.0035;
      run.state.boundary.solidsIn_m3[6] += 0.0035;
      until(run, ({ state }) => state.machine.stem === 'stuck', 20);
      return run;
    };
    const run = stuckAt(7);
    does(run, 'abandon', { move: true });
    until(run, ({ state }) => state.tasks.length === 0);
    expect(run.state.rodsInAll).toBe(4);
    expect(run.state.oldHoles[0]!.rodsLost).toBe(3);
    steps(run, 2);
    expect(run.state.machine.stem).toBe('hanging');
    expectBalanced(run);
    expect(act(stuckAt(5), 'abandon', { move: true })).toEqual({ kind: 'refused', reason: 'noMoreRods' });
  });

  it('ends the run when the crew does not move', () => {
    const run = createRun(scenario);
    does(run, 'abandon', {});
    expect(run.state.machine.job).toBe('abandoned');
    expect(sensesOf(run).ended).toBe(true);
  });
});

describe('nightfall', () => {
  const scenario = changedScenario({ day: { start_h: 7, light_h: 1 } });

  it('warns once, stops engine and drive, refuses all but the book, and lets the crew go on in the morning', () => {
    const run = createRun(scenario);
    does(run, 'setThrottle', { throttle_frac: 1 });
    does(run, 'setTurning', { on: true });
    until(run, () => told(run, 'duskNear') > 0, 2000);
    expect(sensesOf(run).light_s).toBeGreaterThan(1700);
    expect(act(run, 'waitFor', { until: 'morning' })).toEqual({ kind: 'refused', reason: 'notDark' });
    until(run, () => told(run, 'nightfall') > 0, 3700);
    expect(run.state.tick).toBe(3601);
    expect(run.state.pump.throttle_frac).toBe(0);
    expect(run.state.stem.turning).toBe(false);
    expect(sensesOf(run).light_s).toBe(0);
    expect(act(run, 'setThrottle', { throttle_frac: 1 })).toEqual({ kind: 'refused', reason: 'dark' });
    expect(act(run, 'readStick', {})).toEqual({ kind: 'refused', reason: 'dark' });
    does(run, 'note', { text: 'dark' });
    const before = costOf(run);
    steps(run, 30);
    // Most of the night is passed over: nothing happens in it.
    run.state.tick = 86300;
    does(run, 'waitFor', { until: 'morning' });
    until(run, ({ state }) => state.wait === null, 86400);
    expect(run.state.tick).toBe(86400);
    step(run);
    expect(told(run, 'morning')).toBe(1);
    expect(told(run, 'duskNear')).toBe(1);
    expect(costOf(run)).toBeCloseTo(before, 1);
    does(run, 'setThrottle', { throttle_frac: 1 });
  });

  it('a run may begin late in the day, and is paid from then on', () => {
    const run = createRun(changedScenario({ day: { start_h: 7, light_h: 10, from_h: 16.5 } }));
    expect(sensesOf(run).light_s).toBe(1800);
    until(run, () => told(run, 'nightfall') > 0, 1900);
    expect(told(run, 'duskNear')).toBe(1);
    const paid = costOf(run);
    steps(run, 60);
    expect(costOf(run)).toBeCloseTo(paid, 2);
    const early = createRun(changedScenario({ day: { start_h: 7, light_h: 10, from_h: 6.9 } }));
    expect(act(early, 'readStick', {})).toEqual({ kind: 'refused', reason: 'dark' });
    until(early, () => told(early, 'morning') > 0, 400);
    does(early, 'readStick');
  });

  it('never comes where the scenario has no working day', () => {
    const run = createRun(rigScenario());
    expect(sensesOf(run).light_s).toBeNull();
    expect(act(run, 'waitFor', { until: 'morning' })).toEqual({ kind: 'refused', reason: 'notDark' });
  });
});
