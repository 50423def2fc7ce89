// The items by id. A lesson picks from these; the ids and what they judge stay the same in every lesson.

import { fluidReady, noFishEyes, notTooThick } from './additives';
import { jobTime, suppliesUsed, withinBudget } from './economy';
import { casingDown, casingSoon, casingStrong, levelKept } from './casing';
import { clearedStops, depthReached, fairFeed, notBuried } from './hole';
import type { ItemId } from './ids';
import { bitClean, clayPace } from './clay';
import { doseFits, fluidTried } from './fluid';
import { changesFound } from './layers';
import { heapDug, pitStood, pumpKeptWater, pumpSpared, strainerOpen } from './loop';
import { easedOff, littleLost } from './loss';
import { levelHeld, shortStops, slowPulls, wallStood } from './wall';
import type { ItemFunction } from './item';
import { ownLogTrue, recordKept } from './book';
import { labelsTrue, namedRight, sampleEachRod } from './log';
import { cautionsRead, liftedBeforeStop, rodsHandledStill } from './safety';
import { openAreaEnough, screenPlace, slotFits } from './screen';
import { headWorks, packDone, sealMade, sealPlace } from './seal';
import { chlorineGone, polymerBreak, testRun } from './fitForPeople';
import { mendedSoon } from './mending';
import { hungGently, jointsSet, packFell } from './lowering';
import { packCovers, screenFoot } from './screenPlan';
import { sealInterval, sealWaited } from './sealing';
import { noDeeper, stretchEnough } from './stop';
import { siteChosen } from './site';
import { developed, disinfected, liftFits, sandFree, yieldAtDry } from './water';

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
  withinBudget,
  cautionsRead,
  rodsHandledStill,
  liftedBeforeStop,
  screenPlace,
  slotFits,
  openAreaEnough,
  sandFree,
  developed,
  yieldAtDry,
  liftFits,
  packDone,
  sealPlace,
  sealMade,
  headWorks,
  levelKept,
  casingSoon,
  casingDown,
  casingStrong,
  ownLogTrue,
  recordKept,
  siteChosen,
  disinfected,
  stretchEnough,
  noDeeper,
  packCovers,
  screenFoot,
  jointsSet,
  hungGently,
  packFell,
  sealWaited,
  sealInterval,
  polymerBreak,
  testRun,
  chlorineGone,
  pumpKeptWater,
  strainerOpen,
  pitStood,
  heapDug,
  pumpSpared,
  wallStood,
  levelHeld,
  shortStops,
  mendedSoon,
  slowPulls,
  easedOff,
  littleLost,
  doseFits,
  fluidTried,
  clayPace,
  bitClean,
  changesFound,
};
