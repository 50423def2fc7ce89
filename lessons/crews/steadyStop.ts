// How the steady crew stops: so many minutes of flow by the clock, everything at rest, then the next rod or the end of the job.

import type { Senses } from '$sim';
import { does, type Deed } from './crew';
import { busyWith, mayTry } from './patience';
import type { SteadyMemory } from './steady';

/** Flow before a stop, s: three quarters of a minute, and five seconds for each metre that grains climb. Rule of thumb, ASSUMED. */
const FLOW_s = 45;
const FLOW_sm = 5;
/** More rod than this above the mouth means that the new one is on, m. */
const ROD_ON_m = 0.6;

export function steadyStop(memory: SteadyMemory, senses: Senses, done: boolean): Deed | null {
  const { stem, pump, hands } = senses;
  const { patience } = memory;
  if (!memory.stopping) {
    if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
    const waited_s = senses.time_s - memory.stop_s;
    memory.stopping = waited_s >= FLOW_s + FLOW_sm * stem.bottom_m && hands.tasks.length === 0;
    return null;
  }
  if (busyWith(senses, 'addRod')) return null;
  if (stem.turning) return does('setTurning', { on: false });
  if (pump.throttle_frac > 0) return does('setThrottle', { throttle_frac: 0 });
  if (done) return mayTry(patience, senses, 'stopDrilling') ? does('stopDrilling') : null;
  if (stem.left_m > ROD_ON_m) {
    memory.stopping = false;
    memory.stop_s = -1;
    return null;
  }
  if (stem.rodsLeft === 0) return mayTry(patience, senses, 'stopDrilling') ? does('stopDrilling') : null;
  if (senses.returns.running || hands.free < 2 || !mayTry(patience, senses, 'addRod')) return null;
  return does('addRod');
}
