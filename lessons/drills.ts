// Which drill teaches what a rubric item asks for. What a learner shows in any lesson counts for that drill.

import { LESSON_ORDER, type DrillId, type LessonId } from './contents';
import type { ItemId } from './rubric/ids';

/** A closed record, so that the compiler asks for each new item. */
export const DRILL_OF: Readonly<Record<ItemId, DrillId>> = {
  cautionsRead: 'round-the-loop',
  pumpKeptWater: 'round-the-loop',
  mendedSoon: 'round-the-loop',
  strainerOpen: 'round-the-loop',
  pitStood: 'round-the-loop',
  clearedStops: 'first-rods',
  notBuried: 'first-rods',
  fairFeed: 'first-rods',
  depthReached: 'first-rods',
  jobTime: 'first-rods',
  rodsHandledStill: 'first-rods',
  liftedBeforeStop: 'first-rods',
  fluidReady: 'slick-fluid',
  doseFits: 'slick-fluid',
  fluidTried: 'slick-fluid',
  notTooThick: 'slick-fluid',
  noFishEyes: 'slick-fluid',
  suppliesUsed: 'slick-fluid',
  withinBudget: 'slick-fluid',
  changesFound: 'reading-the-tray',
  sampleEachRod: 'reading-the-tray',
  labelsTrue: 'reading-the-tray',
  namedRight: 'reading-the-tray',
  ownLogTrue: 'reading-the-tray',
  wallStood: 'standing-sand',
  levelHeld: 'standing-sand',
  shortStops: 'standing-sand',
  slowPulls: 'standing-sand',
  easedOff: 'falling-pit',
  littleLost: 'falling-pit',
  clayPace: 'stiff-clay',
  bitClean: 'stiff-clay',
  heapDug: 'full-pit',
  pumpSpared: 'full-pit',
  yieldAtDry: 'deep-enough',
  stretchEnough: 'deep-enough',
  noDeeper: 'deep-enough',
  screenPlace: 'the-screen',
  slotFits: 'the-screen',
  openAreaEnough: 'the-screen',
  sandFree: 'the-screen',
  casingStrong: 'the-screen',
  packCovers: 'the-screen',
  screenFoot: 'the-screen',
  levelKept: 'casing-down',
  casingSoon: 'casing-down',
  casingDown: 'casing-down',
  packDone: 'casing-down',
  jointsSet: 'casing-down',
  hungGently: 'casing-down',
  packFell: 'casing-down',
  sealPlace: 'the-seal',
  sealMade: 'the-seal',
  sealInterval: 'the-seal',
  sealWaited: 'the-seal',
  headWorks: 'the-seal',
  siteChosen: 'the-seal',
  developed: 'clear-water',
  liftFits: 'clear-water',
  disinfected: 'clear-water',
  chlorineGone: 'clear-water',
  polymerBreak: 'clear-water',
  testRun: 'clear-water',
  recordKept: 'clear-water',
};

/** What was shown of one drill's subject: shares of its points, over the finished runs in which it counted. */
export interface Shown {
  readonly best_frac: number;
  readonly last_frac: number;
}

interface Earned {
  readonly id: ItemId;
  readonly points: number;
  readonly max: number;
}

/** Share of the points that one run earned in each drill's subject; subjects that it did not judge are left out. */
export function shownIn(items: readonly Earned[]): Partial<Record<DrillId, number>> {
  const sums = new Map<DrillId, { points: number; max: number }>();
  for (const { id, points, max } of items) {
    const drill = DRILL_OF[id];
    const sum = sums.get(drill) ?? { points: 0, max: 0 };
    sums.set(drill, { points: sum.points + points, max: sum.max + max });
  }
  return Object.fromEntries([...sums].map(([drill, { points, max }]) => [drill, max > 0 ? points / max : 0]));
}

/** From this share of a subject's points on it counts as learnt: the share that passes a lesson. */
export const LEARNT_frac = 0.7;

export interface NextLesson {
  readonly lesson: LessonId;
  /** Weakest: its subject was shown, and badly. Order: the first that is not passed. Again: all are passed. */
  readonly why: 'weakest' | 'order' | 'again';
  /** Share of the subject's points at the last try; only where it is the weakest. */
  readonly last_frac?: number;
}

/**
 * What to learn next. The weakest subject of those shown last below the learnt share comes first, the earlier drill where two
 * are as weak; then the first lesson that is not passed; at the end the last lesson again.
 */
export function nextLesson(
  shown: Readonly<Partial<Record<DrillId, Pick<Shown, 'last_frac'>>>>,
  passed: readonly string[],
  order: readonly LessonId[] = LESSON_ORDER,
): NextLesson {
  let weakest: NextLesson | null = null;
  for (const lesson of order) {
    const last_frac = shown[lesson as DrillId]?.last_frac;
    if (last_frac === undefined || last_frac >= LEARNT_frac) continue;
    if (weakest === null || last_frac < weakest.last_frac!) weakest = { lesson, why: 'weakest', last_frac };
  }
  if (weakest !== null) return weakest;
  const open = order.find((lesson) => !passed.includes(lesson));
  if (open !== undefined) return { lesson: open, why: 'order' };
  return { lesson: order[order.length - 1]!, why: 'again' };
}
