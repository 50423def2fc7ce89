// The same scenario and log give the same bits, from the start or from any snapshot; any one bit of the state counts.
import { describe, expect, it } from 'vitest';
import {
  act,
  createRun,
  createStream,
  hashRun,
  replayRun,
  restoreRun,
  snapshotOf,
  step,
  type Run,
  type Snapshot,
} from '../../../sim';
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

const flip = new DataView(new ArrayBuffer(8));
function lastBitFlipped(value: number): number {
  flip.setFloat64(0, value === 0 ? 0 : value);
  flip.setUint8(7, flip.getUint8(7) ^ 1);
  return flip.getFloat64(0);
}

type Plain = null | boolean | number | string | Plain[] | { [key: string]: Plain };

/** How many places of one long array are tried: its elements share one path of the code. */
const TRIED_OF_ARRAY = 12;

/** Every place of plain data, with a function that changes it in the least way and returns the undo. */
function changes(holder: Plain, path: string, out: [string, () => () => void][]): void {
  if (typeof holder !== 'object' || holder === null) return;
  const place = holder as Record<string, Plain>;
  const keys = Object.keys(place);
  const stride = Math.max(1, Math.floor(keys.length / TRIED_OF_ARRAY));
  keys.forEach((key, i) => {
    if (Array.isArray(holder) && i % stride !== 0) return;
    const value = place[key];
    const here = `${path}.${key}`;
    if (typeof value === 'object' && value !== null) changes(value, here, out);
    else {
      const other: Plain =
        typeof value === 'number'
          ? lastBitFlipped(value)
          : typeof value === 'string'
            ? `${value}x`
            : value === null
              ? 0
              : !value;
      out.push([
        here,
        () => {
          place[key] = other;
          return () => {
            place[key] = value;
          };
        },
      ]);
    }
  });
}

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

  it('the last bit of any one field of state or streams changes the hash', () => {
    const run = played();
    const wanted = hashRun(run);
    const text = JSON.stringify(snapshotOf(run));
    const snapshot = JSON.parse(text) as Snapshot;
    const list: [string, () => () => void][] = [];
    changes(snapshot.state as Plain, 'state', list);
    changes(snapshot.streams as unknown as Plain, 'streams', list);
    expect(list.length).toBeGreaterThan(300);
    const missed: string[] = [];
    for (const [path, change] of list) {
      const undo = change();
      if (hashRun(restoreRun(scenario, snapshot)) === wanted) missed.push(path);
      undo();
    }
    expect(hashRun(restoreRun(scenario, snapshot))).toBe(wanted);
    expect(missed).toEqual([]);
  });
});
