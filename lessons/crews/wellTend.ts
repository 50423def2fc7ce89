// How a crew keeps hole and ring full while the well is made: one works, the other has the bucket.

import type { ActionName, Senses } from '$sim';
import { topUp } from './carefulWater';
import type { Deed } from './crew';
import { busyWith, type Patience } from './patience';
import type { WellMemory } from './wellMemory';
import { STYLES } from './wellStyle';

/** What is poured at a time, L. */
const BUCKET_L = 20;
/** Filling that leaves a hand free. */
const FILLING: readonly ActionName[] = ['pourPack', 'placeSeal', 'backfill', 'sound'];

/** While one glues, fills in or sounds, the other keeps the fluid up, as the style wants it; nothing is poured on a seal. */
export function tendDeed(memory: WellMemory, patience: Patience, senses: Senses): Deed | undefined {
  const { tendsHole, tendsRing } = STYLES[memory.style];
  const hole = tendsHole && busyWith(senses, 'joinCasing');
  const underSeal = memory.filling === 'pack' || memory.filling === 'backfill';
  const ring = tendsRing && underSeal && FILLING.some((action) => busyWith(senses, action));
  return hole || ring ? topUp(patience, senses, BUCKET_L) : undefined;
}
