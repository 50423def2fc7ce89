// The stem on whole runs: held by clay, refused by hard ground, a drive that stalls and trips, a crew that works it free.
import { describe, expect, it } from 'vitest';
import { act, createRun, sensesOf, step, type Run, type SoilKind } from '../../sim';
import { does, drillRod, drillTo, oneSoil, rigScenario, steps, until } from '../rig';

/** Ground whose wall stands and drinks nothing. */
const ROCK = oneSoil('weatheredRock');

const told = (run: Run, name: string): number => run.record.events.filter((e) => e.name === name).length;

/** A run with so much of the wall of clay come in all the way down, as after a long stop. */
function squeezed(run: Run, inwards_m: number): void {
  const { hole } = run.state;
  for (let i = 0; i * hole.dz_m < hole.depth_m; i++) {
    hole.wall.squeezed_m[i] = inwards_m;
    hole.radius_m[i] = run.scenario.kit.bit_m / 2 - inwards_m;
  }
}

/** Gravel standing this high in the hole, as after a cave: the stream cannot wash it away. */
function filledUp(run: Run, fill_m: number): void {
  const { hole, boundary } = run.state;
  const grains_m3 = Math.PI * (0.05 ** 2 - 0.01685 ** 2) * fill_m * 0.55;
  hole.bed_m3[6] += grains_m3;
  hole.bedMoment_m4[6] += grains_m3 * hole.depth_m;
  boundary.solidsIn_m3[6] += grains_m3;
}

describe('a long stem that hangs free', () => {
  it('is not dragging: a crew knows what its stem weighs', () => {
    const run = createRun(rigScenario({ layers: ROCK, rods: 20, starter_m: 29 }));
    steps(run, 30);
    expect(run.state.stem.pull_N).toBeGreaterThan(600);
    expect(sensesOf(run).stem.pull).toBe('normal');
    expect(run.state.machine.stem).toBe('hanging');
  });
});

describe('clay that has come in', () => {
  const inClay = (inwards_m: number, kind: SoilKind = 'softClay'): Run => {
    const run = createRun(rigScenario({ layers: oneSoil(kind), rods: 3, starter_m: 4 }));
    does(run, 'setThrottle', { throttle_frac: 1 });
    until(run, ({ state }) => state.machine.returns === 'full');
    squeezed(run, inwards_m);
    steps(run, 3);
    return run;
  };

  it('makes the rope drag, more the further it has come', () => {
    expect(inClay(0.002).state.stem.pull_N).toBeGreaterThan(inClay(0).state.stem.pull_N + 50);
    expect(inClay(0.003).state.stem.pull_N).toBeGreaterThan(inClay(0.002).state.stem.pull_N + 50);
  });

  it('holds a stem fast where it is stiff and has come in well', () => {
    const run = inClay(0.006, 'stiffClay');
    expect(run.state.machine.stem).toBe('stuck');
    expect(sensesOf(run).stem.pull).toBe('stuck');
  });

  it('is cut back by a turning bit, so that the pull falls again', () => {
    const run = inClay(0.003);
    const before_N = run.state.stem.pull_N;
    does(run, 'setTurning', { on: true });
    steps(run, 60);
    expect(run.state.stem.pull_N).toBeLessThan(before_N - 50);
    expect(run.state.hole.radius_m[15]).toBeCloseTo(0.05, 6);
  });
});

describe('a stem held in fallen gravel', () => {
  const stuckRun = (flow: boolean, seed: number): Run => {
    const run = createRun(rigScenario({ seed, layers: ROCK, rods: 3, starter_m: 4 }));
    does(run, 'setThrottle', { throttle_frac: flow ? 1 : 0.02 });
    steps(run, 60);
    filledUp(run, 0.9);
    until(run, ({ state }) => state.machine.stem === 'stuck', 20);
    return run;
  };

  it('goes tight, then stuck: neither lift nor turning nor feed', () => {
    const run = stuckRun(true, 1);
    const order = run.record.events.map((e) => e.name).filter((name) => name === 'tight' || name === 'stuck');
    expect(order.at(-1)).toBe('stuck');
    expect(act(run, 'lift', { distance_m: 0.5, speed_ms: 0.1 })).toEqual({ kind: 'refused', reason: 'stemStuck' });
    expect(act(run, 'setTurning', { on: true })).toEqual({ kind: 'refused', reason: 'stemStuck' });
    expect(act(run, 'setFeed', { feed_frac: 0.5 })).toEqual({ kind: 'refused', reason: 'stemStuck' });
  });

  it('comes free by working it with flow in some of many seeds, and never without flow', () => {
    let freed = 0;
    let dry = 0;
    for (let seed = 1; seed <= 12; seed++) {
      const run = stuckRun(true, seed);
      for (let tries = 0; tries < 3 && run.state.machine.stem === 'stuck'; tries++) {
        does(run, 'workStem', { time_s: 60 });
        until(run, ({ state }) => state.tasks.length === 0);
      }
      freed += told(run, 'freed');
      const still = stuckRun(false, seed);
      does(still, 'setThrottle', { throttle_frac: 0 });
      does(still, 'workStem', { time_s: 120 });
      until(still, ({ state }) => state.tasks.length === 0);
      dry += told(still, 'freed');
    }
    expect(dry).toBe(0);
    expect(freed).toBeGreaterThan(0);
    expect(freed).toBeLessThan(36);
  });

  it('stops a lift when the pull passes what the crew has, and the rod stays on', () => {
    const run = createRun(rigScenario({ layers: ROCK, rods: 3, starter_m: 4.2 }));
    steps(run, 5);
    does(run, 'removeRod', { speed_ms: 0.05 });
    steps(run, 2);
    filledUp(run, 1.3);
    until(run, ({ state }) => state.tasks.length === 0);
    expect(run.state.stem.rods).toBe(3);
    expect(run.state.machine.stem).toBe('stuck');
  });
});

describe('taking rods off', () => {
  it('draws only what is not out yet, down to the last rod', () => {
    const run = createRun(rigScenario({ layers: ROCK, rods: 4, starter_m: 4.4 }));
    does(run, 'lift', { distance_m: 1.6, speed_ms: 0.2 });
    until(run, ({ state }) => state.tasks.length === 0);
    for (let rods = 3; rods >= 1; rods--) {
      does(run, 'removeRod', { speed_ms: 0.15 });
      until(run, ({ state }) => state.tasks.length === 0);
      expect(run.state.stem.rods).toBe(rods);
      expect(rods * 1.5 - run.state.stem.bit_m).toBeGreaterThanOrEqual(-1e-9);
    }
    expect(act(run, 'removeRod', { speed_ms: 0.15 })).toEqual({ kind: 'refused', reason: 'onlyOneRod' });
  });
});

describe('ground that refuses the bit', () => {
  const onRock = (feed_frac: number, layers = oneSoil('cobbles')): Run => {
    const run = createRun(rigScenario({ layers, rods: 1, starter_m: 0.3 }));
    does(run, 'setThrottle', { throttle_frac: 1 });
    does(run, 'setTurning', { on: true });
    does(run, 'setFeed', { feed_frac });
    steps(run, 300);
    return run;
  };

  it('is told once per spot', () => {
    const run = onRock(1);
    expect(told(run, 'bitRefused')).toBe(1);
    does(run, 'setFeed', { feed_frac: 0 });
    steps(run, 30);
    does(run, 'setFeed', { feed_frac: 1 });
    steps(run, 60);
    expect(told(run, 'bitRefused')).toBe(1);
    expect(run.state.hole.depth_m).toBe(0.3);
  });

  it('is hard ground under too little weight, and the same ground yields to more (common practice, no source)', () => {
    const crust = oneSoil('lateriticCrust');
    expect(told(onRock(0.3, crust), 'bitRefused')).toBe(1);
    const heavy = createRun(rigScenario({ layers: crust, rods: 9, starter_m: 13 }));
    does(heavy, 'setThrottle', { throttle_frac: 1 });
    until(heavy, ({ state }) => state.machine.returns === 'full');
    does(heavy, 'setTurning', { on: true });
    does(heavy, 'setFeed', { feed_frac: 1 });
    steps(heavy, 300);
    expect(told(heavy, 'bitRefused')).toBe(0);
    expect(heavy.state.hole.depth_m).toBeGreaterThan(13.002);
  });

  it('is never told in sand', () => {
    const run = createRun(rigScenario());
    drillRod(run, 0.3);
    expect(told(run, 'bitRefused')).toBe(0);
  });
});

describe('the drive', () => {
  it('kept stalled trips within minutes, must cool, then turns again', () => {
    const run = createRun(rigScenario({ layers: ROCK, rods: 3, starter_m: 4 }));
    does(run, 'setTurning', { on: true });
    filledUp(run, 0.82);
    const start = run.state.tick;
    until(run, () => told(run, 'driveHot') > 0, 600);
    expect(run.state.tick - start).toBeGreaterThan(100);
    expect(told(run, 'stalled')).toBeGreaterThan(0);
    expect(run.state.stem.turning).toBe(false);
    expect(sensesOf(run).stem.drive).toBe('tripped');
    expect(act(run, 'setTurning', { on: true })).toEqual({ kind: 'refused', reason: 'driveHot' });
    until(run, () => told(run, 'driveCool') > 0, 1800);
    expect(['cool', 'warm']).toContain(sensesOf(run).stem.drive);
    does(run, 'setTurning', { on: true });
  });

  it('stays cool through ordinary drilling', () => {
    const run = createRun(rigScenario());
    drillTo(run, 4.4, 0.5);
    for (let i = 0; i < 60; i++) step(run);
    expect(sensesOf(run).stem.drive).toBe('cool');
  });
});
