// When things go wrong: at their moment, by an instructor's hand, and again in every replay. And the salt that lies in the ground.
import { describe, expect, it } from 'vitest';
import {
  act,
  createRun,
  hashRun,
  replayRun,
  restoreRun,
  sensesOf,
  snapshotOf,
  step,
  type Run,
  type Snapshot,
} from '../../../sim';
import { does, oneSoil, rigScenario, steps, until } from '../../rig';
import { drilling, lost, told, troubled } from './trouble';

describe('moments', () => {
  it('of depth, and after an event', () => {
    const deep = drilling(troubled([{ fault: 'helperAway', at: { depth_m: 0.5 } }]));
    until(deep, ({ state }) => state.hole.depth_m >= 0.5);
    expect(told(deep)).toContain('helperGone');
    const after = troubled([{ fault: 'pumpStops', at: { after: 'flowStarted', delay_s: 25 } }]);
    const run = drilling(after);
    until(run, () => told(run).includes('engineStopped'), 100);
    const tick = (name: string): number => run.record.events.find((event) => event.name === name)!.tick;
    expect(tick('engineStopped') - tick('flowStarted')).toBe(25);
  });

  it('come again in a replay and from a snapshot, to the last bit', () => {
    const scenario = troubled([
      { fault: 'hoseBursts', at: { after: 'flowStarted', delay_s: 30 } },
      { fault: 'rainFills', at: { tick: 150 }, time_s: 90 },
      { fault: 'lostTool', at: { tick: 200 } },
      { fault: 'weakPowder', at: { tick: 10 } },
      { fault: 'helperAway', at: { tick: 260 }, time_s: 60 },
      { fault: 'pumpStops', at: { tick: 300 } },
    ]);
    const run = drilling(scenario);
    const snapshots: string[] = [];
    while (run.state.tick < 400) {
      if (run.state.tick % 37 === 0) snapshots.push(JSON.stringify(snapshotOf(run)));
      step(run);
    }
    expect(run.state.faults.left).toBe(0);
    expect(hashRun(replayRun(scenario, run.log, 400))).toBe(hashRun(run));
    for (const snapshot of snapshots) {
      const later = restoreRun(scenario, JSON.parse(snapshot) as Snapshot);
      while (later.state.tick < 400) step(later);
      expect(hashRun(later)).toBe(hashRun(run));
    }
  });
});

describe('by hand', () => {
  it('things go wrong in practice and where the scenario lets an instructor, and nowhere else', () => {
    const pass = rigScenario({ practice: false });
    const rain = { fault: 'rainFills', rain_mmh: 30, time_s: 60 };
    expect(act(createRun(pass), 'fault', rain)).toMatchObject({ reason: 'notLive' });
    for (const scenario of [rigScenario({}), { ...pass, live: true }]) {
      const run = createRun(scenario);
      does(run, 'fault', rain);
      steps(run, 2);
      expect(sensesOf(run).sky).toBe('downpour');
      expect(act(run, 'fault', { fault: 'pumpStops' })).toMatchObject({ reason: 'pumpNotRunning' });
      does(run, 'fault', { fault: 'lostTool' });
      expect(act(run, 'fault', { fault: 'lostTool' })).toMatchObject({ reason: 'faultThere' });
      expect(act(run, 'fault', { fault: 'flood' })).toMatchObject({ kind: 'malformed', field: 'fault' });
    }
  });
});

describe('salt in the ground', () => {
  it('is tasted in the returns within a minute after the bit has met it', () => {
    const salted = (salt_gL: number): Run => {
      const base = rigScenario({ layers: oneSoil('mediumSand'), rods: 2, starter_m: 1.2 });
      const salinity = [
        { from_m: 0, salt_gL: 0.3 },
        { from_m: 1.25, salt_gL },
      ];
      return drilling({ ...base, ground: { ...base.ground, salinity } });
    };
    const [salt, fresh] = [salted(35), salted(0.3)];
    for (const run of [salt, fresh]) {
      does(run, 'setFeed', { feed_frac: 0.6 });
      until(run, ({ state }) => state.hole.depth_m > 1.3);
      steps(run, 30);
      does(run, 'setFeed', { feed_frac: 0 });
      does(run, 'feelFluid');
      steps(run, 8);
      expect(lost(run)).toBeLessThan(1e-9);
    }
    expect([salt, fresh].map((run) => sensesOf(run).feel!.salty)).toEqual([true, false]);
  });
});
