// With the hole clear and the bit off the bottom: everything at rest, then the next rod or the end of the job.

import type { Senses } from '$sim';
import { does, type Deed } from './crew';
import { busyWith, mayTry, type Patience } from './patience';

/** More rod than this above the mouth means that the new one is on, m. */
const ROD_ON_m = 0.6;

/** Turning off, flow off, a rod on; done: the job ends here instead. goOn is called once the new rod is on. */
export function changeRod(patience: Patience, senses: Senses, done: boolean, goOn: () => void): Deed | null {
  const { stem, pump } = senses;
  if (busyWith(senses, 'addRod')) return null;
  if (stem.turning) return does('setTurning', { on: false });
  if (pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  if (done) return mayTry(patience, senses, 'stopDrilling') ? does('stopDrilling') : null;
  if (stem.left_m > ROD_ON_m) {
    goOn();
    return null;
  }
  if (stem.rodsLeft === 0) return mayTry(patience, senses, 'stopDrilling') ? does('stopDrilling') : null;
  if (senses.returns.running || senses.hands.free < 2 || !mayTry(patience, senses, 'addRod')) return null;
  return does('addRod');
}
