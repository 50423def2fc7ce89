// How the other crew lets weight on the bit: by what the stem sounds like, one setting for each ground, off for a while when it goes heavy or the returns run thick.

import type { Senses } from '$sim';
import type { CarefulMemory } from './carefulMemory';
import { does, type Deed } from './crew';
import { mayTry } from './patience';

/** Weight for each sound. ASSUMED rules of thumb. */
const BY_SOUND: Readonly<Record<Senses['stem']['sound'], number>> = {
  still: 0.3,
  quiet: 0.35,
  hiss: 0.4,
  grind: 0.5,
  knock: 0.7,
  sticky: 0.3,
};
/** After so long without getting on, s, a little more, up to all; clay goes slowly at its best, m/min. */
const SLOW_mmin = 0.1;
const SLOW_STICKY_mmin = 0.033;
const SLOW_FOR_s = 60;
const STEP_frac = 0.1;
/** Weight is eased to this share when the handle is heavy or the returns are thick, and let alone for so long, s. */
const EASED_ratio = 0.6;
const EASED_FOR_s = 25;
/** Looked after every so often, s. */
const LOOK_EVERY_s = 12;
const THICK_frac = 0.95;

export function earFeed(memory: CarefulMemory, senses: Senses): Deed | null {
  const { stem, returns } = senses;
  const since_s = senses.time_s - memory.lastFeed_s;
  const heavy = stem.torque === 'heavy' || stem.torque === 'stalled' || stem.pull !== 'normal';
  const thick = returns.cloudiness_frac > THICK_frac;
  const sticky = stem.sound === 'sticky';
  const slow = sticky ? memory.sinking_ms * 60 < SLOW_STICKY_mmin : stem.sinking_mmin < SLOW_mmin;
  let wanted_frac = stem.feed_frac;
  if (stem.feed_frac === 0) wanted_frac = heavy ? 0 : BY_SOUND[stem.sound];
  else if (since_s < LOOK_EVERY_s) return null;
  else if (heavy || thick) {
    wanted_frac = Math.max(0.1, stem.feed_frac * EASED_ratio);
    memory.lastFeed_s = senses.time_s + EASED_FOR_s;
  } else if (slow && since_s > SLOW_FOR_s) wanted_frac = Math.min(1, stem.feed_frac + STEP_frac);
  else if (!slow && !sticky && since_s > SLOW_FOR_s) wanted_frac = BY_SOUND[stem.sound];
  if (sticky) wanted_frac = Math.min(wanted_frac, memory.stickyMost_frac);
  wanted_frac = Math.round(wanted_frac * 100) / 100;
  if (wanted_frac === stem.feed_frac || !mayTry(memory.patience, senses, 'setFeed')) return null;
  if (stem.feed_frac === 0 && senses.hands.free < 1) return null;
  memory.lastFeed_s = Math.max(memory.lastFeed_s, senses.time_s);
  return does('setFeed', { feed_frac: wanted_frac });
}
