// How the careful crew stops: the hole cleared, the bit off the bottom, everything at rest, then the next rod or the end of the job.

import type { Senses } from '$sim';
import { CARES } from './careStyle';
import type { CarefulMemory } from './carefulMemory';
import { climb_s } from './climb';
import { does, type Deed } from './crew';
import { busyWith, mayTry } from './patience';
import { logDeed } from './ownLayers';
import { changeRod } from './rodChange';
import { readyDeed } from './wellWork';

/**
 * Returns are clean below this cloudiness. Slick fluid brings some fine sand back round for ever:
 * then up to the second figure will do, as long as hardly a grain of medium sand or coarser comes.
 */
const CLEAN_frac = 0.06;
const CLEAN_SLICK_frac = 0.25;
const MEDIUM_SAND_CLASS = 3;
/** No clearing lasts longer than this, s, or than the grains' climb so many times. */
const CLEAR_CAP_s = 420;
const CLEAR_CAP_CLIMBS = 6;

function looksClean(returns: Senses['returns']): boolean {
  if (returns.cloudiness_frac < CLEAN_frac) return true;
  const coarse = returns.grains.some(
    ({ classIndex, amount }) => classIndex >= MEDIUM_SAND_CLASS && (amount === 'some' || amount === 'many'),
  );
  return !coarse && returns.cloudiness_frac < CLEAN_SLICK_frac;
}

/** The flow has run for as long as any clearing lasts. */
export const flushedLong = (memory: CarefulMemory, senses: Senses): boolean =>
  senses.time_s - memory.clearing_s > Math.max(CLEAR_CAP_s, CLEAR_CAP_CLIMBS * climb_s(senses));

/** Feed off, bit lifted a little, flow kept until the returns have run clean for a while. Meanwhile the pit is dug out. */
export function clear(memory: CarefulMemory, senses: Senses, done: boolean): Deed | null {
  const { stem, returns } = senses;
  const { lift_m, cleanFor_s } = CARES[memory.care];
  if (stem.feed_frac > 0) return does('setFeed', { feed_frac: 0 });
  if (!memory.lifted) {
    if (senses.hands.free < 1 || !mayTry(memory.patience, senses, 'lift')) return null;
    memory.lifted = true;
    return does('lift', { distance_m: lift_m, speed_ms: 0.05 });
  }
  const heaped = senses.pit.heap === 'high' || senses.pit.heap === 'brimming';
  if (
    heaped &&
    senses.hands.free >= 1 &&
    !busyWith(senses, 'digOutPit') &&
    mayTry(memory.patience, senses, 'digOutPit')
  ) {
    return does('digOutPit', { chamber: 'settling', spoil_L: 20 });
  }
  memory.clean_s = looksClean(returns) ? memory.clean_s + 1 : 0;
  const waited_s = senses.time_s - memory.clearing_s;
  const free = stem.pull === 'normal' && stem.torque !== 'heavy';
  const clean = free && memory.clean_s >= cleanFor_s && waited_s >= climb_s(senses) + cleanFor_s;
  if ((clean || flushedLong(memory, senses)) && senses.hands.tasks.length === 0) {
    // With the hole clear and the flow on, book, plan and joints are made ready: once the rods are out the hole does not wait.
    const ready = !done
      ? undefined
      : memory.well !== null
        ? readyDeed(memory.well, memory.patience, senses)
        : logDeed(memory, senses);
    if (ready !== undefined) return ready;
    memory.stopping = true;
    return stem.turning ? does('setTurning', { on: false }) : null;
  }
  return null;
}

/** Turning off, flow off; then another rod, or the end of the job. */
export function stopped(memory: CarefulMemory, senses: Senses, done: boolean): Deed | null {
  return changeRod(memory.patience, senses, done, () => {
    memory.stopping = false;
    memory.clearing_s = -1;
  });
}
