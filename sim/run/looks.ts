// What a look round the site shows: the mouth of the hole, the pit and its heap, the hose, the sky.

import { levelBelowRim_m } from '../pit/level';
import { heapShare } from './pitSigns';
import { rainNow_mmh } from './pitWeather';
import type { Run } from './run';
import type { RunState } from './state';

/** The fluid in the hole, by a look down the mouth: at the brim, within sight, or too far down to see. */
export type MouthLook = 'brim' | 'down' | 'gone';
/** The delivery hose: whole, torn but without pressure, or throwing fluid on the ground. */
export type HoseLook = 'whole' | 'torn' | 'sprays';
export type SkyLook = 'dry' | 'rain' | 'downpour';
export type PitLook = 'full' | 'down' | 'low' | 'empty';
export type HeapLook = 'bare' | 'some' | 'high' | 'brimming';

export const hoseLook = ({ faults, pump }: RunState): HoseLook =>
  faults.hoseLost_frac > 0 ? (pump.primed && pump.throttle_frac > 0 ? 'sprays' : 'torn') : 'whole';

/** Rain from here on is a downpour, mm/h. From memory: a heavy shower in weather services' use is one of more than 10 mm/h. */
const DOWNPOUR_mmh = 10;

export function skyLook(run: Run): SkyLook {
  const rain_mmh = rainNow_mmh(run);
  return rain_mmh > DOWNPOUR_mmh ? 'downpour' : rain_mmh > 0 ? 'rain' : 'dry';
}

/** A look down the mouth tells fluid this near the brim from a hole that has lost some, m; deeper than this it shows no more than a dark hole. ASSUMED. */
const BRIM_m = 0.1;
const IN_SIGHT_m = 1.2;

export const mouthLook = ({ signs }: RunState): MouthLook =>
  signs.level_m < BRIM_m ? 'brim' : signs.level_m < IN_SIGHT_m ? 'down' : 'gone';

export function pitLook(run: Run): PitLook {
  const down_m = levelBelowRim_m(run.state.pit.suction);
  const depth_m = run.state.pit.suction.depth_m;
  return down_m < 0.08 ? 'full' : down_m < 0.35 * depth_m ? 'down' : down_m < 0.75 * depth_m ? 'low' : 'empty';
}

export function heapLook(run: Run): HeapLook {
  const share = heapShare(run.state.pit.settling);
  return share < 0.04 ? 'bare' : share < 0.3 ? 'some' : share < 0.65 ? 'high' : 'brimming';
}
