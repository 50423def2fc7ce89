// What every crew does on a bare site and at nightfall: it digs and fills the pit before anything else, waits for daylight, and leaves no open hole overnight.

import type { Senses } from '$sim';
import { does, type Deed } from './crew';
import type { Progress } from './progress';
import { busyWith, mayTry, type Patience } from './patience';

export interface Site {
  /** The pump was refused for want of a pit: it has to be dug. Water is to go into it. */
  bare: boolean;
  toFill: boolean;
}

/** The usual pit: two chambers of half a cubic metre, with a channel; and its first water, L. Common practice, no source. */
const CHAMBER_m3 = 0.5;
const CHANNEL_m = 1.5;
const FIRST_WATER_L = 940;
/** So long before dark the job is ended where it stands: no hole stands open overnight, s. */
const DUSK_s = 1500;

export const createSite = (): Site => ({ bare: false, toFill: false });

/** True when it is time to end the job for want of light. */
export const duskNear = ({ light_s }: Senses): boolean => light_s !== null && light_s > 0 && light_s < DUSK_s;

/** Digging and filling the pit; undefined where there is one. Call it after refusals were noticed. */
export function siteDeed(site: Site, patience: Patience, progress: Progress, senses: Senses): Deed | null | undefined {
  const { lastRefusal } = senses;
  if (senses.light_s === 0) return senses.waiting === null ? does('waitFor', { until: 'morning' }) : null;
  if (!site.bare && lastRefusal?.reason === 'noPit' && lastRefusal.tick === senses.time_s - 1) {
    // Somebody had the stem turning before there was a pit: digging takes every hand.
    if (senses.stem.turning) return does('setTurning', { on: false });
    site.bare = true;
    return does('setOut', { settling_m3: CHAMBER_m3, suction_m3: CHAMBER_m3, channel_m: CHANNEL_m });
  }
  if (!site.bare) return undefined;
  // Digging is no standstill.
  progress.deeper_s = senses.time_s;
  if (busyWith(senses, 'setOut') || busyWith(senses, 'fillPit')) return null;
  if (!site.toFill) {
    if (senses.hands.free < 1 || !mayTry(patience, senses, 'fillPit')) return null;
    site.toFill = true;
    return does('fillPit', { water_L: FIRST_WATER_L });
  }
  site.bare = false;
  return undefined;
}
