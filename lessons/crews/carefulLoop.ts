// How the careful crew makes the loop ready: the strainer clear of the floor, and a full pit before the first flow, since settling chamber, hole and stem fill out of the suction chamber.

import type { Senses } from '$sim';
import { does, type Deed } from './crew';
import { busyWith, mayTry, type Patience } from './patience';

/** A strainer lower than this draws the floor; it is hung so high, m. A hand's width and some more: common practice, no source. */
const LOW_STRAINER_m = 0.12;
const HUNG_m = 0.2;
/** A hole less deep than this is hardly begun, m. */
const BEGUN_m = 1;
/** Water poured at once into a pit that is low at the start, L. */
const POUR_L = 100;

/** Undefined when the loop is ready. */
export function loopDeed(patience: Patience, senses: Senses): Deed | null | undefined {
  const { pit, pump, stem, stock, hands } = senses;
  if (pump.throttle_frac > 0) return undefined;
  if (busyWith(senses, 'setStrainer') || busyWith(senses, 'fillPit')) return null;
  if (pit.strainer_m < LOW_STRAINER_m && hands.free >= 1 && mayTry(patience, senses, 'setStrainer'))
    return does('setStrainer', { height_m: HUNG_m });
  const low = pit.look !== 'full' && stem.bottom_m < BEGUN_m;
  if (low && stock.water_L >= POUR_L && hands.free >= 1 && mayTry(patience, senses, 'fillPit'))
    return does('fillPit', { water_L: POUR_L });
  return undefined;
}
