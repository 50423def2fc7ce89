// When the job is over: handed over or given up, or, where no well is made or only the hole is asked for, when the drilling is stopped.

import type { Scenario } from './scenario';
import type { RunState } from './state';

export function jobOver({ scenario, state }: { readonly scenario: Scenario; readonly state: RunState }): boolean {
  const { job } = state.machine;
  if (job === 'handedOver' || job === 'abandoned') return true;
  return job === 'pullingOut' && (!scenario.well || scenario.endsAtStop === true);
}
