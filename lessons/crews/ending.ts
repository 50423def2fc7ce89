// How a crew ends the job where it stands: weight off, turning off, flow off, done. What cannot be ended so is given up.

import type { Senses } from '$sim';
import { does, type Deed } from './crew';
import { busyWith, mayTry, type Patience } from './patience';

/** One step towards the end of the job; null to wait for an act under way. */
export function endHere(patience: Patience, senses: Senses): Deed | null {
  if (senses.stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (senses.stem.turning) return does('setTurning', { on: false });
  if (senses.pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  if (busyWith(senses, 'addRod')) return null;
  return mayTry(patience, senses, 'stopDrilling') ? does('stopDrilling') : null;
}

/** Without petrol nothing moves the fluid any more: the job ends here, with a stuck stem by giving up. */
export function outOfPetrol(patience: Patience, senses: Senses): Deed | null | undefined {
  if (senses.stock.petrol_L > 0) return undefined;
  return senses.stem.pull === 'stuck' ? does('abandon') : endHere(patience, senses);
}
