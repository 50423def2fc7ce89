// The items by id. A lesson picks from these; the ids and what they judge stay the same in every lesson.

import { fluidReady, noFishEyes, notTooThick } from './additives';
import { jobTime, suppliesUsed } from './economy';
import { clearedStops, depthReached, fairFeed, notBuried } from './hole';
import type { ItemId } from './ids';
import type { ItemFunction } from './item';
import { labelsTrue, namedRight, sampleEachRod } from './log';
import { cautionsRead, liftedBeforeStop, rodsHandledStill } from './safety';

export const ITEMS: Readonly<Record<ItemId, ItemFunction>> = {
  clearedStops,
  notBuried,
  fairFeed,
  depthReached,
  sampleEachRod,
  labelsTrue,
  namedRight,
  fluidReady,
  notTooThick,
  noFishEyes,
  jobTime,
  suppliesUsed,
  cautionsRead,
  rodsHandledStill,
  liftedBeforeStop,
};
