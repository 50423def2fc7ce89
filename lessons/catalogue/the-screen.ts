// Lesson 10, the screen: place, length, slots, pack or cloth, strength, by the tray and the log of the crew that drilled.

import type { Lesson } from '../schema';
import { WELL_DRILL_KIT, WELL_DRILL_OPENING } from './well-drill';
import { ALL_HANDS, WELL_SENSES } from './whole-well';

/** Three and a half to four metres of good sand below the lowest water; under them clay, silt or fine sand, in which the crew before has seen the good sand end. */
const ground: Lesson['ground'] = {
  by: 'recipe',
  recipes: [
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'silt', thickness_m: [1, 1.4] },
        { kind: 'fineSand', thickness_m: [1, 1.4] },
        { kind: 'mediumSand', thickness_m: [1.2, 1.6] },
        { kind: 'coarseSand', thickness_m: [2.4, 2.7] },
        { kind: 'firmClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [1, 1.6],
      swing_m: [0.8, 1.2],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'firmClay', thickness_m: [1, 1.4] },
        { kind: 'siltySand', thickness_m: [1, 1.4] },
        { kind: 'mediumSand', thickness_m: [3.7, 4.2] },
        { kind: 'silt', thickness_m: [15, 20] },
      ],
      waterTable_m: [1, 1.6],
      swing_m: [0.8, 1.2],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'silt', thickness_m: [1, 1.4] },
        { kind: 'siltySand', thickness_m: [1, 1.4] },
        { kind: 'coarseSand', thickness_m: [3.7, 4.2] },
        { kind: 'fineSand', thickness_m: [15, 20] },
      ],
      waterTable_m: [1, 1.6],
      swing_m: [0.8, 1.2],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'fineSand', thickness_m: [2, 2.6] },
        { kind: 'mediumSand', thickness_m: [0.8, 1.1] },
        { kind: 'coarseSand', thickness_m: [2.8, 3.1] },
        { kind: 'stiffClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [1, 1.6],
      swing_m: [0.8, 1.2],
    },
  ],
};

export const theScreenLesson: Lesson = {
  id: 'the-screen',
  version: 1,
  title: 'theScreen.title',
  outcomes: [
    'theScreen.outcome.place',
    'theScreen.outcome.fit',
    'theScreen.outcome.area',
    'theScreen.outcome.pack',
    'theScreen.outcome.strong',
  ],
  briefing: [
    'theScreen.brief.job',
    'theScreen.brief.tray',
    'theScreen.brief.bottom',
    'theScreen.brief.water',
    'theScreen.brief.people',
    'theScreen.brief.end',
  ],
  ground,
  kit: {},
  view: 'hole',
  senses: WELL_SENSES,
  gauges: [],
  hands: ALL_HANDS,
  opening: WELL_DRILL_OPENING,
  well: WELL_DRILL_KIT,
  end: { rods: 9, depth_m: 13.5, cap_s: 259200 },
  prologue: { crew: 'careful', until: { before: 'planWell' } },
  leaves: { crew: 'careful', from: 'wellPlanned' },
  faults: [],
  pass_points: 70,
  rubric: [
    { item: 'screenPlace', weight: 16, essential: true, bands: { none_frac: 0.4 } },
    { item: 'slotFits', weight: 18, essential: true, inMeasureOf: 'screenPlace', bands: {} },
    {
      item: 'openAreaEnough',
      weight: 24,
      essential: true,
      inMeasureOf: 'screenPlace',
      bands: { full_ms: 0.03, none_ms: 0.042 },
    },
    // A pipe is strong by itself, as long as nobody cuts enough slots into it.
    {
      item: 'casingStrong',
      weight: 16,
      inMeasureOf: 'openAreaEnough',
      bands: { full_ratio: 2, none_ratio: 1, section_frac: 0.55 },
    },
    { item: 'packCovers', weight: 2, inMeasureOf: 'screenPlace', bands: { full_m: 0.6, none_m: 0 } },
    { item: 'screenFoot', weight: 3, bands: { full_m: 0.5 } },
    { item: 'sandFree', weight: 3, bands: { full_mgL: 5, none_mgL: 50 } },
    { item: 'yieldAtDry', weight: 2, bands: { full_Lmin: 12, none_Lmin: 3 } },
    { item: 'cautionsRead', weight: 16, essential: true, bands: {} },
  ],
  hints: [
    {
      id: 'place',
      ask: 'theScreen.hint.place',
      levels: ['theScreen.hint.place.1', 'theScreen.hint.place.2', 'theScreen.hint.place.3'],
    },
    {
      id: 'slot',
      ask: 'theScreen.hint.slot',
      levels: ['theScreen.hint.slot.1', 'theScreen.hint.slot.2', 'theScreen.hint.slot.3'],
    },
    {
      id: 'length',
      ask: 'theScreen.hint.length',
      levels: ['theScreen.hint.length.1', 'theScreen.hint.length.2', 'theScreen.hint.length.3'],
    },
    {
      id: 'strong',
      ask: 'theScreen.hint.strong',
      levels: ['theScreen.hint.strong.1', 'theScreen.hint.strong.2', 'theScreen.hint.strong.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'theScreen.card.start' },
    { id: 'relieved', cue: { on: 'action', action: 'readCaution' }, text: 'theScreen.card.relieved' },
    { id: 'planned', cue: { on: 'event', event: 'wellPlanned' }, text: 'theScreen.card.planned' },
    { id: 'left', cue: { on: 'event', event: 'leftToCrew' }, text: 'theScreen.card.left' },
    { id: 'landed', cue: { on: 'event', event: 'casingLanded' }, text: 'theScreen.card.landed' },
    { id: 'test', cue: { on: 'event', event: 'testDone' }, text: 'theScreen.card.test' },
  ],
  hazards: ['turningStem', 'pits', 'lifting', 'glue', 'cement', 'water'],
  questions: [
    {
      ask: 'theScreen.ask.place',
      answers: ['theScreen.ask.place.1', 'theScreen.ask.place.2', 'theScreen.ask.place.3', 'theScreen.ask.place.4'],
    },
    {
      ask: 'theScreen.ask.slot',
      answers: ['theScreen.ask.slot.1', 'theScreen.ask.slot.2', 'theScreen.ask.slot.3', 'theScreen.ask.slot.4'],
    },
    {
      ask: 'theScreen.ask.next',
      answers: [
        'theScreen.ask.next.1',
        'theScreen.ask.next.2',
        'theScreen.ask.next.3',
        'theScreen.ask.next.4',
        'theScreen.ask.next.5',
      ],
    },
  ],
};
