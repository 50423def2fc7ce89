// Marks: the run as it stood at a moment, and one replay that lays those which nobody took on the way.

import { createRun, lengthOf, playLog, recordUpTo, restoreRun, snapshotOf } from '$sim';
import type { LogEntry, RecordLength, Run, RunRecord, Scenario, Snapshot } from '$sim';
import type { Lesson } from '../schema';
import type { Moment } from './moments';

export interface Mark extends Moment {
  readonly record: RecordLength;
  readonly snapshot: Snapshot;
}

/** A run that is over, as far as looking back on it needs it. */
export interface Past {
  readonly lesson: Lesson;
  readonly scenario: Scenario;
  readonly log: readonly LogEntry[];
  readonly record: RunRecord;
}

/** Job seconds played between two pauses. */
export const SLICE_s = 200;

/** The run as it stands. */
export const markOf = (run: Run): Mark => ({
  tick: run.state.tick,
  entries: run.log.length,
  record: lengthOf(run.record),
  snapshot: snapshotOf(run),
});

/** The run as it stood at a mark, with its log and record up to there. */
export function runAtMark({ scenario, log, record }: Past, mark: Mark): Run {
  const run = restoreRun(scenario, mark.snapshot, recordUpTo(record, mark.record));
  run.log.push(...log.slice(0, mark.entries));
  return run;
}

/** Of marks in their order the last that lies no later than a moment. */
export const lastBefore = (marks: readonly Mark[], { tick, entries }: Moment): Mark | undefined =>
  marks.findLast((mark) => mark.tick <= tick && mark.entries <= entries);

/**
 * Yields the mark of each moment as a replay comes by, and null now and then, so that a page can do other things meanwhile.
 * Starts anew from each of the marks known before that lies on its way.
 */
export function* marksAlong(
  past: Past,
  moments: readonly Moment[],
  known: readonly Mark[] = [],
): Generator<Mark | null> {
  let run: Run | null = null;
  for (const moment of moments) {
    const start = lastBefore(known, moment);
    if (start && (!run || start.tick > run.state.tick)) run = runAtMark(past, start);
    run ??= createRun(past.scenario);
    const { tick, entries } = moment;
    const upTo = past.log.slice(0, entries);
    while (run.state.tick < tick) {
      playLog(run, upTo, run.log.length, Math.min(tick, run.state.tick + SLICE_s));
      yield null;
    }
    playLog(run, upTo, run.log.length, tick);
    yield markOf(run);
  }
}
