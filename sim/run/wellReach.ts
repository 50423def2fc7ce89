// What pump or bailer can draw from the well now, and why not.

import type { WellPumpName } from '../materials/wellPumps';
import { WELL_PUMPS } from '../materials/wellPumps';
import { deepestDraw_m } from '../well/lift';
import { PUMP_HEIGHT_m } from '../well/yieldVerdict';
import type { ActionName, RefusalKey } from './names';
import type { Run } from './run';

/** A bailer of this length in the casing brings up this share of its bore; a pull takes so long, and so long for each metre. ASSUMED. */
const BAILER_m = 0.8;
const BAILER_ratio = 0.5;
const PULL_s = 6;
const PULL_sm = 4;
/** Water over the casing's end that a pump or bailer needs, m. ASSUMED. */
const LEAST_WATER_m = 0.3;

/** Deepest level below ground from which a lift draws here, m. */
export function reach_m(run: Run, lift: WellPumpName): number {
  const pump = WELL_PUMPS[lift];
  const { altitude_m, temperature_C } = run.kit;
  return deepestDraw_m(pump, altitude_m, temperature_C) - (pump.sucks ? PUMP_HEIGHT_m : 0);
}

/** Does the water stand too deep for this lift? Before the casing is set it stands as deep as in the hole. */
export function tooDeep(run: Run, lift: WellPumpName): boolean {
  const { well, signs } = run.state;
  return (well ?? signs).level_m > reach_m(run, lift);
}

/** There is next to no water in the casing. */
export const isDry = ({ state }: Run): boolean => state.well!.water_m3 < LEAST_WATER_m * state.well!.section_m2;

/** Rate of a bailer at so many pulls a minute, m3/s: a deeper level slows it. */
export function bailing_m3s(run: Run, pulls_min: number): number {
  const { level_m, section_m2 } = run.state.well!;
  const most_min = 60 / (PULL_s + PULL_sm * Math.max(0, level_m));
  return (Math.min(pulls_min, most_min) / 60) * BAILER_m * BAILER_ratio * section_m2;
}

/** Acts that work on the water of the well: one at a time. */
const ON_THE_WATER: readonly ActionName[] = ['develop', 'breakPolymer', 'yieldTest', 'disinfect'];

/** Somebody is at the water already, or there is no casing in the hole. */
export function waterRefusal(run: Run): RefusalKey | null {
  const busy = run.state.tasks.some(({ action }) => ON_THE_WATER.includes(action));
  return casingRefusal(run) ?? (busy ? 'handsBusy' : null);
}

/** A casing stands in the hole: what is done to a well needs that. */
export function casingRefusal({ state, scenario }: Run): RefusalKey | null {
  if (!scenario.well) return 'casingNotIn';
  if (state.well) return null;
  // What sets the casing waits until the joint under way is made.
  if (state.tasks.some(({ action }) => action === 'joinCasing')) return 'handsBusy';
  const { casing, plan } = state.completion;
  return plan && casing.shoe_m > 0 && casing.motion_m === 0 ? null : 'casingNotIn';
}
