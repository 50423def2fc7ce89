// The same scenario and the same log give the same run.

import { act } from './act';
import type { LogEntry } from './log';
import { createRun, type Run } from './run';
import type { Scenario } from './scenario';
import { step } from './step';

/** Plays a log from the start up to the given tick. Entries later than that are left out; entries out of order throw, for no run can have written them. */
export function replayRun(scenario: Scenario, log: readonly LogEntry[], ticks: number): Run {
  const run = createRun(scenario);
  let next = 0;
  for (;;) {
    while (next < log.length && log[next][0] <= run.state.tick) {
      const [tick, action, payload] = log[next];
      if (tick !== run.state.tick) throw new RangeError(`Log entry ${next + 1} is out of order.`);
      act(run, action, payload);
      next++;
    }
    if (run.state.tick >= ticks) return run;
    step(run);
  }
}
