// One replay of a run that takes a snapshot at each of its moments, with how long the record was by then.

import {
  createRun,
  lengthOf,
  playLog,
  snapshotOf,
  type LogEntry,
  type RecordLength,
  type Scenario,
  type Snapshot,
} from '$sim';
import type { Moment } from './moments';

export interface Mark extends Moment {
  readonly record: RecordLength;
  readonly snapshot: Snapshot;
}

/** Job seconds played between two pauses. */
export const SLICE_s = 200;

/** Yields each mark as the replay comes by, and null now and then, so that a page can do other things meanwhile. */
export function* marksAlong(
  scenario: Scenario,
  log: readonly LogEntry[],
  moments: readonly Moment[],
): Generator<Mark | null> {
  const run = createRun(scenario);
  for (const { tick, entries } of moments) {
    const upTo = log.slice(0, entries);
    while (run.state.tick < tick) {
      playLog(run, upTo, run.log.length, Math.min(tick, run.state.tick + SLICE_s));
      yield null;
    }
    playLog(run, upTo, run.log.length, tick);
    yield { tick, entries, record: lengthOf(run.record), snapshot: snapshotOf(run) };
  }
}
