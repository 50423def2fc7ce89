// How the careful crew lets weight on the bit.

import type { Senses } from '$sim';
import type { CarefulMemory } from './carefulMemory';
import { does, type Deed } from './crew';
import { mayTry } from './patience';

const FEED_MOST_frac = 1;
const FEED_LEAST_frac = 0.1;
/** Faster than this the crew does not want to go down, m/min: ten centimetres in ten seconds, which the stream still carries off. */
const BRISK_mmin = 0.6;
/** In sticky ground far slower, some two metres an hour, or the cut clay packs the bit, m/min; begun with so little weight. ASSUMED rules of thumb. */
const BRISK_STICKY_mmin = 0.033;
const STICKY_FIRST_frac = 0.3;
/** Cloudiness and murk from which the returns are thick. */
const THICK_frac = 0.95;
const SOUP_frac = 0.95;
/** Mud that has gone round and round looks like soup whatever the feed: it is no reason for less than this. */
const SOUP_LEAST_frac = 0.6;

/** A packed bit had so much too much weight in this clay. ASSUMED rule of thumb. */
const LESS_ratio = 0.7;

/** The most weight in sticky ground after so much packed the bit. */
export const mostAfter = (feed_frac: number): number => Math.max(FEED_LEAST_frac, feed_frac * LESS_ratio);

/** Takes note of a packed bit: in sticky ground the crew lets less weight on from then on. */
export function watchBit(memory: CarefulMemory, senses: Senses): void {
  if (senses.felt.includes('balled')) memory.stickyMost_frac = mostAfter(senses.stem.feed_frac);
}

/** Feeds by what comes back and how the handle feels: less when it is thick or heavy, a little more when it runs easily. */
export function feed(memory: CarefulMemory, senses: Senses): Deed | null {
  const { stem, returns } = senses;
  const heavy = stem.torque === 'heavy' || stem.torque === 'stalled' || stem.pull !== 'normal';
  const soup = returns.murk_frac > SOUP_frac && memory.feed_frac > SOUP_LEAST_frac;
  const thick = returns.cloudiness_frac > THICK_frac || soup;
  const since_s = senses.time_s - memory.lastFeed_s;
  // Sticky ground is begun with a light hand: what was right for sand may pack the bit.
  const sticky = stem.sound === 'sticky';
  if (sticky && !memory.sticky) memory.feed_frac = Math.min(memory.feed_frac, STICKY_FIRST_frac);
  memory.sticky = sticky;
  let wanted_frac = memory.feed_frac;
  const packs = sticky && stem.sinking_mmin > 2 * BRISK_STICKY_mmin;
  if ((heavy && since_s >= 5) || (packs && since_s >= 10)) wanted_frac = memory.feed_frac * 0.5;
  else if (thick && since_s >= 10) wanted_frac = memory.feed_frac * 0.8;
  else if (since_s >= 20 && (sticky ? memory.sinking_ms * 60 < BRISK_STICKY_mmin : stem.sinking_mmin < BRISK_mmin))
    wanted_frac = memory.feed_frac + 0.05;
  wanted_frac = Math.min(sticky ? memory.stickyMost_frac : FEED_MOST_frac, Math.max(FEED_LEAST_frac, wanted_frac));
  const change = Math.abs(wanted_frac - stem.feed_frac) > 0.01;
  if (!change || (stem.feed_frac === 0 && senses.hands.free < 1) || !mayTry(memory.patience, senses, 'setFeed'))
    return null;
  memory.feed_frac = wanted_frac;
  memory.lastFeed_s = senses.time_s;
  return does('setFeed', { feed_frac: Math.round(wanted_frac * 100) / 100 });
}
