// How the steady crew stops: so many minutes of flow by the clock, everything at rest, then the next rod or the end of the job.

import type { Senses } from '$sim';
import { does, type Deed } from './crew';
import { logDeed } from './ownLayers';
import { changeRod } from './rodChange';
import type { SteadyMemory } from './steady';
import { readyDeed } from './wellWork';

/** Flow before a stop, s: three quarters of a minute, and five seconds for each metre that grains climb. Rule of thumb, ASSUMED. */
const FLOW_s = 45;
const FLOW_sm = 5;

export function steadyStop(memory: SteadyMemory, senses: Senses, done: boolean): Deed | null {
  const { stem, hands } = senses;
  if (!memory.stopping) {
    if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
    const waited_s = senses.time_s - memory.stop_s;
    if (waited_s < FLOW_s + FLOW_sm * stem.bottom_m || hands.tasks.length > 0) return null;
    // The casing is glued while the flow still keeps the hole.
    const ready = !done
      ? undefined
      : memory.well !== null
        ? readyDeed(memory.well, memory.patience, senses)
        : logDeed(memory, senses);
    if (ready !== undefined) return ready;
    memory.stopping = true;
    return null;
  }
  return changeRod(memory.patience, senses, done, () => {
    memory.stopping = false;
    memory.stop_s = -1;
  });
}
