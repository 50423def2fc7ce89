// Lesson 16, a bad day: a whole well on ground that nobody shows, and things go wrong on the way. What breaks is mended while the hole is kept.

import type { Lesson } from '../schema';
import { blindWellGround } from './blind-well-ground';
import { ALL_HANDS, WELL_HAZARDS, WELL_KIT, WELL_OPENING, WELL_RUBRIC, WELL_SENSES } from './whole-well';

/** There are rods for this depth, m. */
const DEEP_m = 16;

/** What the day puts to the test weighs more here, all else a little less, so that the weights sum to 100. */
const WEIGHTS: Readonly<Record<string, number>> = {
  fluidReady: 8,
  notBuried: 5,
  clearedStops: 4,
  levelKept: 3,
  screenPlace: 5,
  slotFits: 3,
  openAreaEnough: 1,
  sandFree: 2,
  developed: 3,
  yieldAtDry: 3,
  liftFits: 1,
  packDone: 1,
  sealPlace: 3,
  headWorks: 2,
  siteChosen: 6,
  fairFeed: 2,
  cautionsRead: 4,
  sampleEachRod: 1,
  labelsTrue: 1,
  ownLogTrue: 1,
  recordKept: 1,
  casingDown: 2,
  casingSoon: 1,
  sealMade: 9,
};

export const badDayLesson: Lesson = {
  id: 'bad-day',
  version: 1,
  title: 'badDay.title',
  outcomes: [
    'badDay.outcome.calm',
    'badDay.outcome.mend',
    'badDay.outcome.fluid',
    'badDay.outcome.helper',
    'badDay.outcome.well',
  ],
  briefing: ['badDay.brief.job', 'badDay.brief.day', 'badDay.brief.hole', 'badDay.brief.stores', 'badDay.brief.end'],
  ground: blindWellGround,
  kit: {},
  view: 'hole',
  senses: WELL_SENSES,
  gauges: [],
  hands: ALL_HANDS,
  opening: { ...WELL_OPENING, powder_kg: 12 },
  well: WELL_KIT,
  end: { rods: 12, depth_m: DEEP_m, cap_s: 259200 },
  // By depth and by event, never by the clock: nobody outruns them, and nobody meets one before there is a hole to lose.
  faults: [
    { id: 'weakPowder', from: { time_s: 0 }, to: { time_s: 0 }, share_frac: [0.25, 0.35] },
    { id: 'rainFills', from: { depth_m: 2.5 }, to: { depth_m: 4 }, rain_mmh: [30, 60], time_s: [1800, 3600] },
    { id: 'pumpStops', from: { depth_m: 4.2 }, to: { depth_m: 5.2 } },
    { id: 'helperAway', from: { depth_m: 7 }, to: { depth_m: 7.8 }, time_s: [600, 1200] },
    { id: 'hoseBursts', from: { depth_m: 8.5 }, to: { depth_m: 9.5 }, share_frac: [0.4, 0.7] },
  ],
  pass_points: 70,
  rubric: [
    ...WELL_RUBRIC.map((entry) => ({
      ...entry,
      weight: WEIGHTS[entry.item] ?? entry.weight,
      // Fluid that still feels like water counts for nothing.
      bands: entry.item === 'fluidReady' ? { ...entry.bands, none_gL: 0.2 } : entry.bands,
    })),
    { item: 'mendedSoon', weight: 8, bands: { full_s: 720, none_s: 2400 } },
    { item: 'fluidTried', weight: 10, bands: { soak_s: 300, times: 1 } },
  ],
  hints: [
    {
      id: 'broken',
      ask: 'badDay.hint.broken',
      levels: ['badDay.hint.broken.1', 'badDay.hint.broken.2', 'badDay.hint.broken.3'],
    },
    {
      id: 'thin',
      ask: 'badDay.hint.thin',
      levels: ['badDay.hint.thin.1', 'badDay.hint.thin.2', 'badDay.hint.thin.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'badDay.card.start' },
    { id: 'soaked', cue: { on: 'event', event: 'soaked' }, text: 'badDay.card.soaked' },
    { id: 'engine', cue: { on: 'event', event: 'engineStopped' }, text: 'badDay.card.engine' },
    { id: 'hose', cue: { on: 'event', event: 'hoseBurst' }, text: 'badDay.card.hose' },
    { id: 'rain', cue: { on: 'event', event: 'rainBegins' }, text: 'badDay.card.rain' },
    { id: 'alone', cue: { on: 'event', event: 'helperGone' }, text: 'badDay.card.alone' },
    { id: 'mended', cue: { on: 'event', event: 'mended' }, text: 'badDay.card.mended' },
  ],
  hazards: WELL_HAZARDS,
  questions: [
    {
      ask: 'badDay.ask.first',
      answers: ['badDay.ask.first.1', 'badDay.ask.first.2', 'badDay.ask.first.3', 'badDay.ask.first.4'],
    },
    {
      ask: 'badDay.ask.hole',
      answers: ['badDay.ask.hole.1', 'badDay.ask.hole.2', 'badDay.ask.hole.3', 'badDay.ask.hole.4'],
    },
    {
      ask: 'badDay.ask.next',
      answers: [
        'badDay.ask.next.1',
        'badDay.ask.next.2',
        'badDay.ask.next.3',
        'badDay.ask.next.4',
        'badDay.ask.next.5',
      ],
    },
  ],
};
