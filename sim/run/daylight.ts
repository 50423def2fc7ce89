// Day and night: work ends at nightfall and goes on in the morning. Only where the scenario has a working day; else it is always light.

import type { Run } from './run';
import type { Scenario } from './scenario';
import { tell } from './tell';

const DAY_s = 86400;
/** A crew looks at the sky this long before dark, s. ASSUMED: time to clear the hole and draw the bit up. */
const DUSK_s = 1800;

/** Seconds since the morning of this day; the run starts in the morning. */
const ofDay_s = (tick: number): number => tick % DAY_s;

const light_s = (scenario: Scenario): number => Math.round((scenario.day?.light_h ?? 24) * 3600);

export const darkAt = (scenario: Scenario, tick: number): boolean => ofDay_s(tick) >= light_s(scenario);

/** Seconds of light left today; 0 at night; null where it is always light. */
export function lightLeft_s(scenario: Scenario, tick: number): number | null {
  return scenario.day ? Math.max(0, light_s(scenario) - ofDay_s(tick)) : null;
}

/** Seconds of paid work up to a tick: the nights are free. */
export function worked_s(scenario: Scenario, tick: number): number {
  const days = Math.floor(tick / DAY_s);
  return days * light_s(scenario) + Math.min(light_s(scenario), ofDay_s(tick));
}

/** Does the second after this one begin a morning? */
export const morningNext = (tick: number): boolean => ofDay_s(tick + 1) === 0;

/** One warning before dark; at dark the engine and the drive are switched off; morning. Each second is met once, so nothing needs remembering. */
export function watchDaylight(run: Run): void {
  const { scenario, state } = run;
  if (!scenario.day) return;
  const now_s = ofDay_s(state.tick);
  if (now_s === 0 && state.tick > 0) tell(run, 'morning', {});
  if (now_s === light_s(scenario) - DUSK_s) tell(run, 'duskNear', { left_s: DUSK_s });
  if (now_s !== light_s(scenario)) return;
  state.pump.throttle_frac = 0;
  state.stem.turning = false;
  state.stem.feed_frac = 0;
  tell(run, 'nightfall', { depth_m: state.hole.depth_m });
}
