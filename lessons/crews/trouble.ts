// What a competent crew does when something has gone wrong: a stuck or stalled stem, a shut strainer. Shared by the crews that know better.

import type { Senses } from '$sim';
import { does, type Deed } from './crew';
import { busyWith, mayTry, type Patience } from './patience';

export interface Trouble {
  /** Job second at which the present trouble was met, or -1. */
  since_s: number;
  lifts: number;
}

/** The act against the trouble, null to wait for one under way, undefined when there is none. */
export function troubleDeed(trouble: Trouble, patience: Patience, senses: Senses): Deed | null | undefined {
  const { stem, pump } = senses;
  if (stem.pull === 'stuck') {
    if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
    if (stem.turning) return does('setTurning', { on: false });
    if (busyWith(senses, 'workStem')) return null;
    if (!pump.primed || pump.throttle_frac === 0) return undefined;
    return senses.hands.free >= 2 && mayTry(patience, senses, 'workStem') ? does('workStem', { time_s: 60 }) : null;
  }
  if (pump.sound === 'gulping' || pump.sound === 'labouring') return strainer(patience, senses);
  if (stem.torque === 'stalled') {
    if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
    if (busyWith(senses, 'lift') || senses.hands.free < 1) return null;
    if (stem.bit_m > 0.5 && mayTry(patience, senses, 'lift')) {
      trouble.lifts++;
      trouble.since_s = senses.time_s;
      patience.notBefore_s.lift = senses.time_s + 12;
      return does('lift', { distance_m: 0.2, speed_ms: 0.05 });
    }
    return null;
  }
  return undefined;
}

/** The strainer is cleared with the flow stopped, so that no air gets in. */
function strainer(patience: Patience, senses: Senses): Deed | null | undefined {
  if (busyWith(senses, 'clearStrainer')) return null;
  if (senses.stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (senses.pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  return senses.hands.free >= 1 && mayTry(patience, senses, 'clearStrainer') ? does('clearStrainer') : undefined;
}
