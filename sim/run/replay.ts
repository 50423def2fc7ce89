// The same scenario and the same log give the same run.

import { act } from './act';
import type { LogEntry } from './log';
import { createRun, type Run } from './run';
import type { Scenario } from './scenario';
import { step } from './step';

/** Plays the log's entries from the given one on, up to the given tick; each entry of that tick is done too. Entries out of order throw, for no run can have written them. */
export function playLog(run: Run, log: readonly LogEntry[], first: number, ticks: number): void {
  playingLog(run, log, first, ticks, Infinity).next();
}

/** The same with a stop every so many job seconds, so that a page stays alive. */
export function* playingLog(
  run: Run,
  log: readonly LogEntry[],
  first: number,
  ticks: number,
  slice_s: number,
): Generator<null, void> {
  let next = first;
  let left_s = slice_s;
  for (;;) {
    while (next < log.length && log[next][0] <= run.state.tick) {
      const [tick, action, payload] = log[next];
      if (tick !== run.state.tick) throw new RangeError(`Log entry ${next + 1} is out of order.`);
      act(run, action, payload);
      next++;
    }
    if (run.state.tick >= ticks) return;
    step(run);
    if (--left_s > 0) continue;
    left_s = slice_s;
    yield null;
  }
}

/** Plays a log from the start up to the given tick. Entries later than that are left out. */
export function replayRun(scenario: Scenario, log: readonly LogEntry[], ticks: number): Run {
  const run = createRun(scenario);
  playLog(run, log, 0, ticks);
  return run;
}
