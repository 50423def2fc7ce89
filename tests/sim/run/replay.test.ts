// The same scenario and log give the same bits, from the start or from any snapshot; any one bit of the state counts.
import { describe, expect, it } from 'vitest';
import {
  act,
  createRun,
  createStream,
  hashRun,
  playingLog,
  replayRun,
  restoreRun,
  snapshotOf,
  step,
  type Run,
  type Snapshot,
} from '../../../sim';
import { changedLeast, fieldsOf, type Field } from './fields';
import { clearHole, does, drillRod, nextRod, rigScenario, steps } from '../../rig';

const scenario = rigScenario({ seed: 7 });

function played(): Run {
  const run = createRun(scenario);
  does(run, 'addAdditive', { additive: 'polymer', mass_g: 500, manner: 'dumped' });
  steps(run, 60);
  drillRod(run, 0.9);
  does(run, 'setTurning', { on: false });
  does(run, 'catchSample', { label_m: 1.4 });
  steps(run, 30);
  does(run, 'nameSample', { sample: 1, main: 'silt', feel: 'smooth' });
  does(run, 'logLayer', { from_m: 0, to_m: 1.5, kind: 'silt' });
  does(run, 'note', { text: 'slow' });
  does(run, 'readStick');
  does(run, 'feelFluid');
  steps(run, 10);
  does(run, 'funnelTest');
  does(run, 'readCaution', { caution: 'turning' });
  does(run, 'useHint', { hint: 'clear', level: 1 });
  act(run, 'addRod', {});
  clearHole(run, 70);
  nextRod(run);
  drillRod(run, 0.9);
  does(run, 'waitFor', { time_s: 30 });
  does(run, 'setTurning', { on: false });
  does(run, 'digOutPit', { chamber: 'settling', spoil_L: 30 });
  does(run, 'catchSample', { label_m: 2.9 });
  steps(run, 7);
  return run;
}

/** How many places of one long list are tried: they share one path of the code. */
const TRIED_OF_LIST = 12;

/** The fields to try: all single ones, and of each long list some that are spread over it. */
function tried(fields: readonly Field[]): Field[] {
  const counts = new Map<string, number>();
  for (const { kind } of fields) counts.set(kind, (counts.get(kind) ?? 0) + 1);
  const seen = new Map<string, number>();
  return fields.filter(({ kind }) => {
    const nth = seen.get(kind) ?? 0;
    seen.set(kind, nth + 1);
    return nth % Math.max(1, Math.floor(counts.get(kind)! / TRIED_OF_LIST)) === 0;
  });
}

it('comes out the same when it is played in parts', () => {
  const first = played();
  const run = createRun(scenario);
  let parts = 0;
  for (const part of playingLog(run, first.log, 0, first.state.tick, 7)) {
    expect(part).toBeNull();
    parts++;
  }
  expect(parts).toBe(Math.floor(first.state.tick / 7));
  expect(hashRun(run)).toBe(hashRun(first));
});

describe('replay', () => {
  it('gives the same hash, refused acts included', () => {
    const run = played();
    expect(run.log.some(([, action]) => action === 'addRod')).toBe(true);
    const again = replayRun(scenario, JSON.parse(JSON.stringify(run.log)), run.state.tick);
    expect(hashRun(again)).toBe(hashRun(run));
    expect(again.record.events).toEqual(run.record.events);
    expect(again.record.trace.length).toBe(run.record.trace.length);
  });

  it('a log out of order throws a sentence', () => {
    expect(() =>
      replayRun(
        scenario,
        [
          [50, 'readStick', {}],
          [10, 'readStick', {}],
        ],
        100,
      ),
    ).toThrow('Log entry 2 is out of order.');
  });

  it('a snapshot taken at random ticks and brought back changes nothing', () => {
    const whole = played();
    const wanted = hashRun(whole);
    const stream = createStream('snapshot ticks');
    for (let n = 0; n < 12; n++) {
      const at = Math.floor(stream.uniform() * whole.state.tick);
      const early = replayRun(
        scenario,
        whole.log.filter(([tick]) => tick < at),
        at,
      );
      const kept = JSON.parse(JSON.stringify(snapshotOf(early))) as Snapshot;
      const later = restoreRun(scenario, kept);
      expect(hashRun(later)).toBe(hashRun(early));
      for (const [tick, action, payload] of whole.log.filter(([t]) => t >= at)) {
        while (later.state.tick < tick) step(later);
        act(later, action, payload);
      }
      while (later.state.tick < whole.state.tick) step(later);
      expect(hashRun(later)).toBe(wanted);
    }
  });

  it('a snapshot of another version is turned away', () => {
    const snapshot = { ...snapshotOf(createRun(scenario)), sim: '0.0.0' };
    expect(() => restoreRun(scenario, snapshot)).toThrow('made with version 0.0.0');
  });

  it('the last bit of any one field of the state changes the hash', () => {
    const run = played();
    const wanted = hashRun(run);
    const list = tried(fieldsOf(run.state));
    expect(list.length).toBeGreaterThan(300);
    const missed: string[] = [];
    for (const field of list) {
      const value = field.get();
      field.set(changedLeast(value));
      if (hashRun(run) === wanted) missed.push(field.path);
      field.set(value);
    }
    expect(hashRun(run)).toBe(wanted);
    expect(missed).toEqual([]);
  });

  it('the last bit of any one random stream changes the hash', () => {
    const snapshot = JSON.parse(JSON.stringify(snapshotOf(played()))) as Snapshot;
    const wanted = hashRun(restoreRun(scenario, snapshot));
    const list = fieldsOf(snapshot.streams);
    expect(list.length).toBeGreaterThan(10);
    for (const field of list) {
      const value = field.get();
      field.set(changedLeast(value));
      expect(hashRun(restoreRun(scenario, snapshot)), field.path).not.toBe(wanted);
      field.set(value);
    }
  });
});
