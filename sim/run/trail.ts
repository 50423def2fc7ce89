// A trail of snapshots along a run, so that a debrief can go to any moment of it without playing it from the start.

import type { LogEntry } from './log';
import { playLog } from './replay';
import { createRun, type Run } from './run';
import type { Scenario } from './scenario';
import { restoreRun, snapshotOf, type Snapshot } from './snapshot';

/** Job seconds between two marks: played at some 50 us a tick the farthest moment is 30 ms from a mark, and six hours hold 36 marks. */
export const TRAIL_STEP_s = 600;

export interface TrailMark {
  readonly tick: number;
  /** How many entries of the log had been done when the snapshot was taken. */
  readonly entries: number;
  readonly snapshot: Snapshot;
}

/** Plain JSON: it can be kept beside the log. The start of the run needs no mark. */
export interface Trail {
  readonly step_s: number;
  readonly marks: TrailMark[];
}

export function createTrail(step_s: number = TRAIL_STEP_s): Trail {
  return { step_s, marks: [] };
}

/** Lays a mark if one is due. To be called after each step, or after each batch of steps: then the marks lie no closer than a step, and a batch farther at most. */
export function layMark(trail: Trail, run: Run): void {
  const last = trail.marks.at(-1)?.tick ?? 0;
  if (run.state.tick - last < trail.step_s) return;
  trail.marks.push({ tick: run.state.tick, entries: run.log.length, snapshot: snapshotOf(run) });
}

/** Takes away the marks after a tick: for a run that has gone back to it. Marks of that tick itself go too, for what was done in it may be done otherwise. */
export function cutTrail(trail: Trail, tick: number): void {
  while (trail.marks.length > 0 && trail.marks.at(-1)!.tick >= tick) trail.marks.pop();
}

/** The trail of a run that was not marked while it was played: plays it once. */
export function trailOf(scenario: Scenario, log: readonly LogEntry[], ticks: number, step_s = TRAIL_STEP_s): Trail {
  const trail = createTrail(step_s);
  const run = createRun(scenario);
  for (let tick = step_s; tick <= ticks; tick += step_s) {
    playLog(run, log, run.log.length, tick);
    layMark(trail, run);
  }
  return trail;
}

/**
 * The run as it stood at a tick, the entries of that tick done: equal to the last bit to the run played from the start.
 * Its log is whole up to there; its record holds only what happened since the mark before it. The log must be the one
 * that the trail was laid along. Throws what `restoreRun` throws.
 */
export function runAt(scenario: Scenario, log: readonly LogEntry[], trail: Trail, tick: number): Run {
  const mark = trail.marks.findLast((one) => one.tick <= tick);
  const run = mark ? restoreRun(scenario, mark.snapshot) : createRun(scenario);
  const done = mark?.entries ?? 0;
  run.log.push(...log.slice(0, done));
  playLog(run, log, done, tick);
  return run;
}
