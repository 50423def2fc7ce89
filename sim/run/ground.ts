// The ground under the hole that is being drilled: a run that gives a hole up goes on in the next ground.

import type { Ground } from '../ground/ground';
import type { Scenario } from './scenario';

/** Ground of the hole of this number, the first being 1. */
export function groundAt(scenario: Scenario, holeNumber: number): Ground {
  return scenario.grounds?.[holeNumber - 1] ?? scenario.ground;
}

/** The ground under the present hole. */
export const groundOf = (run: { readonly scenario: Scenario; readonly state: { holeNumber: number } }): Ground =>
  groundAt(run.scenario, run.state.holeNumber);

/** Is there ground left to move on to? */
export const groundsLeft = (run: { readonly scenario: Scenario; readonly state: { holeNumber: number } }): number =>
  (run.scenario.grounds?.length ?? 1) - run.state.holeNumber;
