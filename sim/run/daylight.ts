// Day and night: work ends at nightfall and goes on in the morning. Only where the scenario has a working day; else it is always light.

import type { Run } from './run';
import type { Scenario } from './scenario';
import { tell } from './tell';

const DAY_s = 86400;
/** A crew looks at the sky this long before dark, s. ASSUMED: time to clear the hole and draw the bit up. */
const DUSK_s = 1800;

/** Seconds from the first morning to the start of the run: it may begin later in the day, or at night. */
function began_s({ day }: Scenario): number {
  if (day?.from_h === undefined) return 0;
  const late_h = day.from_h - day.start_h;
  return Math.round((late_h < 0 ? late_h + 24 : late_h) * 3600);
}

/** Seconds since the last morning. */
const ofDay_s = (scenario: Scenario, tick: number): number => (tick + began_s(scenario)) % DAY_s;

const light_s = (scenario: Scenario): number => Math.round((scenario.day?.light_h ?? 24) * 3600);

export const darkAt = (scenario: Scenario, tick: number): boolean => ofDay_s(scenario, tick) >= light_s(scenario);

/** Seconds of light left today; 0 at night; null where it is always light. */
export function lightLeft_s(scenario: Scenario, tick: number): number | null {
  return scenario.day ? Math.max(0, light_s(scenario) - ofDay_s(scenario, tick)) : null;
}

/** Seconds of light from the first morning up to so many seconds after it. */
function lightUpTo_s(scenario: Scenario, time_s: number): number {
  const days = Math.floor(time_s / DAY_s);
  return days * light_s(scenario) + Math.min(light_s(scenario), time_s - days * DAY_s);
}

/** Seconds of paid work up to a tick: the nights are free. */
export function worked_s(scenario: Scenario, tick: number): number {
  const began = began_s(scenario);
  return lightUpTo_s(scenario, began + tick) - lightUpTo_s(scenario, began);
}

/** Does the second after this one begin a morning? */
export const morningNext = (scenario: Scenario, tick: number): boolean => ofDay_s(scenario, tick + 1) === 0;

/** One warning before dark; at dark the engine and the drive are switched off; morning. Each second is met once, so nothing needs remembering. */
export function watchDaylight(run: Run): void {
  const { scenario, state } = run;
  if (!scenario.day) return;
  const now_s = ofDay_s(scenario, state.tick);
  if (now_s === 0 && state.tick > 0) tell(run, 'morning', {});
  if (now_s === light_s(scenario) - DUSK_s) tell(run, 'duskNear', { left_s: DUSK_s });
  if (now_s !== light_s(scenario)) return;
  state.pump.throttle_frac = 0;
  state.stem.turning = false;
  state.stem.feed_frac = 0;
  tell(run, 'nightfall', { depth_m: state.hole.depth_m });
}
