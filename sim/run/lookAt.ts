// A run that is brought back to be looked at before it goes on. What each second works out anew (flows, pressures, speeds) is no part of a
// snapshot: it is there again after the next second. Until then it is that of a twin which takes this second.

import type { RunRecord } from './record';
import type { Run } from './run';
import type { Scenario } from './scenario';
import { restoreRun, type Snapshot } from './snapshot';
import { step } from './step';

/** As `restoreRun`, with the flow of the second that comes. Throws what that throws. */
export function restoreToLookAt(scenario: Scenario, snapshot: Snapshot, record?: RunRecord): Run {
  const twin = restoreRun(scenario, snapshot);
  step(twin);
  return { ...restoreRun(scenario, snapshot, record), work: twin.work };
}
