// What has gone wrong and what is still to come: plain data of the scenario, and its part of the state.

import type { FaultName } from '../materials/faults';
import type { EventName } from './names';

/** When a fault comes: at a job second, when the hole has that depth, or so long after something has first happened. */
export type FaultMoment =
  { readonly tick: number } | { readonly depth_m: number } | { readonly after: EventName; readonly delay_s: number };

/** How bad it is; what is left out is as in materials/faults.ts. */
export interface FaultFigures {
  /** Share lost of the flow, or kept of the powder's strength. */
  readonly share_frac?: number;
  readonly rain_mmh?: number;
  /** How long the rain lasts, or the helper stays away. */
  readonly time_s?: number;
}

export interface ScheduledFault extends FaultFigures {
  readonly fault: FaultName;
  readonly at: FaultMoment;
}

/** A scheduled fault whose moment is not known yet, and one that has come. */
export const UNKNOWN = -1;
export const COME = -2;

export interface FaultState {
  /** Tick of each fault of the scenario, UNKNOWN or COME. */
  due: number[];
  /** How many of them have not come yet. */
  left: number;
  engineDead: boolean;
  /** Share of the pump's flow that leaves by the torn hose; 0: whole. */
  hoseLost_frac: number;
  /** Rain beside that of the weather, and the tick at which it ends. */
  rain_mmh: number;
  rainEnd_tick: number;
  /** It rains, from whatever source: told at its beginning and end. */
  rainTold: boolean;
  /** A ditch round the pit leads the rain of the ground away. */
  ditch: boolean;
  /** Something hard lies on the bottom of the hole. */
  tool: boolean;
  /** Strength of the powder at hand, as a share of good powder's. */
  powder_frac: number;
  /** Tick at which the helper comes back; 0: nobody is away. */
  helperBack_tick: number;
}

const firstDue = ({ at }: ScheduledFault): number => ('tick' in at ? at.tick : UNKNOWN);

export function createFaults(scheduled: readonly ScheduledFault[] = []): FaultState {
  return {
    due: scheduled.map(firstDue),
    left: scheduled.length,
    engineDead: false,
    hoseLost_frac: 0,
    rain_mmh: 0,
    rainEnd_tick: 0,
    rainTold: false,
    ditch: false,
    tool: false,
    powder_frac: 1,
    helperBack_tick: 0,
  };
}
