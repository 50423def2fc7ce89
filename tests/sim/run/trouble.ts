// Runs in which something goes wrong, for the tests of faults.
import { createRun, ledgerOf, type Run, type Scenario, type ScheduledFault } from '../../../sim';
import { does, rigScenario } from '../../rig';

export const troubled = (faults: readonly ScheduledFault[], base: Scenario = rigScenario({})): Scenario => ({
  ...base,
  faults,
});

/** Drilling in sand at an easy pace. */
export function drilling(scenario: Scenario): Run {
  const run = createRun(scenario);
  does(run, 'setThrottle', { throttle_frac: 1 });
  does(run, 'setTurning', { on: true });
  does(run, 'setFeed', { feed_frac: 0.1 });
  return run;
}

export const told = (run: Run): string[] => run.record.events.map(({ name }) => name);
/** The worst gap of any balance. */
export const lost = (run: Run): number => Math.max(...Object.values(ledgerOf(run) as object).map(Number));
