// How a crew makes the well once the hole is deep enough: book and plan, casing, filling, washing, test, hand-over. One act at a time.

import type { Senses } from '$sim';
import { does, type Deed } from './crew';
import { coarseBelow, ownLayers } from './ownLayers';
import { mayTry, type Patience } from './patience';
import { bestSpot } from './wellJob';
import { casingDeed, joinDeed } from './wellCasing';
import { fillDeed, sealDeed } from './wellFill';
import { finishDeed, setDeed, washDeed } from './wellFinish';
import type { WellMemory } from './wellMemory';
import { STYLES } from './wellStyle';
import { tendDeed } from './wellTend';

/** The drilling is over: the crew is making the well. */
export const pastDrilling = ({ well }: Senses): boolean =>
  well !== null && well.job !== 'siteSetup' && well.job !== 'drilling';

/** The spot, before anything else. Undefined once it is chosen. */
export function spotDeed(memory: WellMemory): Deed | undefined {
  if (memory.spotChosen) return undefined;
  memory.spotChosen = true;
  return STYLES[memory.style].choosesSpot ? does('chooseSite', { spot: bestSpot(memory.job) }) : undefined;
}

/**
 * Deep enough: the book shows this much coarse ground under the lowest water, screen, sump and some to spare; or enough for a short screen with
 * something else under it.
 */
const WANTED_m = 4.6;
const ENOUGH_m = 2.5;
const GONE_m = 0.7;

export function deepEnough(memory: WellMemory, senses: Senses): boolean {
  const layers = ownLayers(senses);
  const [longest] = coarseBelow(layers, memory.lowest_m + 0.5);
  if (!longest) return false;
  const length_m = longest.to_m - longest.from_m;
  return length_m >= WANTED_m || (length_m >= ENOUGH_m && senses.stem.bottom_m - longest.to_m > GONE_m);
}

/** The book, a layer at a time. Undefined when it is written. */
function bookDeed(memory: WellMemory, senses: Senses): Deed | undefined {
  const layers = STYLES[memory.style].keepsBook ? ownLayers(senses) : [];
  if (memory.booked >= layers.length) return undefined;
  memory.booked = Math.max(0, memory.booked);
  const layer = layers[memory.booked++];
  return layer ? does('logLayer', { ...layer }) : undefined;
}

/** The book, then the plan. Undefined when both stand. */
export function planDeed(memory: WellMemory, patience: Patience, senses: Senses): Deed | null | undefined {
  const style = STYLES[memory.style];
  const booked = bookDeed(memory, senses);
  if (booked !== undefined) return booked;
  if (senses.well!.plan !== null) return undefined;
  if (!mayTry(patience, senses, 'planWell')) return null;
  const plan = style.plan(senses, memory.lowest_m);
  const left = memory.job.seal === 'left' ? { seal: 'none', sealFrom_m: 0, sealTo_m: 0 } : {};
  return does('planWell', { ...plan, ...left });
}

/** Book, plan and joints while the stem still keeps the hole; undefined when all is ready for the rods to come out, or the crew does not care. */
export function readyDeed(memory: WellMemory, patience: Patience, senses: Senses): Deed | null | undefined {
  if (!STYLES[memory.style].joinsFirst) return undefined;
  if (memory.job.holeOnly) return bookDeed(memory, senses);
  const planned = planDeed(memory, patience, senses);
  return planned !== undefined ? planned : joinDeed(patience, senses);
}

/** Everything after the drilling. Call it after refusals were noticed. */
export function wellDeed(memory: WellMemory, patience: Patience, senses: Senses): Deed | null {
  if (senses.felt.includes('stemPulled') || senses.felt.includes('stemOut')) memory.pulled = true;
  if (senses.waiting !== null) return null;
  const tending = tendDeed(memory, patience, senses);
  if (tending !== undefined) return tending;
  // Nothing is begun before the last act is done; the clock runs on to its end.
  if (senses.hands.tasks.length > 0) return does('waitFor', { until: 'taskDone', cap_s: 86400 });
  const order = STYLES[memory.style].setsFirst
    ? [planDeed, casingDeed, fillDeed, setDeed, washDeed]
    : [planDeed, casingDeed, fillDeed, washDeed, sealDeed, setDeed];
  for (const step of order) {
    const deed = step(memory, patience, senses);
    if (deed !== undefined) return deed;
  }
  return finishDeed(memory, patience, senses);
}
