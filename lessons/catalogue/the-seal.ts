// Lesson 12, the seal: material, interval and time, in ground that dries out above the water.

import type { Lesson } from '../schema';
import { WELL_DRILL_KIT, WELL_DRILL_OPENING } from './well-drill';
import { ALL_HANDS, WELL_SENSES } from './whole-well';

/** Silt or clay near the top, and somewhere above the water sand that dries out; water stands at a little more than two metres. */
const ground: Lesson['ground'] = {
  by: 'recipe',
  recipes: [
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'silt', thickness_m: [1.6, 2.1] },
        { kind: 'siltySand', thickness_m: [2.3, 2.7] },
        { kind: 'mediumSand', thickness_m: [1.2, 1.6] },
        { kind: 'coarseSand', thickness_m: [4.5, 5.5] },
        { kind: 'firmClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [2, 2.4],
      swing_m: [1, 1.4],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'firmClay', thickness_m: [1.6, 2.1] },
        { kind: 'siltySand', thickness_m: [2.3, 2.7] },
        { kind: 'mediumSand', thickness_m: [1.2, 1.6] },
        { kind: 'coarseSand', thickness_m: [4.5, 5.5] },
        { kind: 'silt', thickness_m: [15, 20] },
      ],
      waterTable_m: [2, 2.4],
      swing_m: [1, 1.4],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'silt', thickness_m: [4, 4.4] },
        { kind: 'mediumSand', thickness_m: [2.4, 3] },
        { kind: 'coarseSand', thickness_m: [3.5, 4.5] },
        { kind: 'stiffClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [2, 2.4],
      swing_m: [1, 1.4],
    },
  ],
};

export const theSealLesson: Lesson = {
  id: 'the-seal',
  version: 1,
  title: 'theSeal.title',
  outcomes: [
    'theSeal.outcome.why',
    'theSeal.outcome.what',
    'theSeal.outcome.where',
    'theSeal.outcome.under',
    'theSeal.outcome.wait',
  ],
  briefing: [
    'theSeal.brief.job',
    'theSeal.brief.site',
    'theSeal.brief.ground',
    'theSeal.brief.stuff',
    'theSeal.brief.code',
    'theSeal.brief.end',
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
  prologue: { crew: 'careful', until: { before: 'placeSeal' }, seal: 'left' },
  leaves: { crew: 'careful', from: 'headWorksDone' },
  faults: [],
  pass_points: 70,
  rubric: [
    { item: 'sealMade', weight: 24, essential: true, bands: { full_d: 3650, none_d: 50 } },
    { item: 'sealInterval', weight: 14, bands: { full_m: 2.8, none_m: 1, from_m: 0.5 } },
    { item: 'sealPlace', weight: 14, bands: { full_m: 3, none_m: 1, from_m: 0.5 } },
    { item: 'sealWaited', weight: 18, bands: {} },
    { item: 'packDone', weight: 12, bands: { above_m: 0.5, sound_frac: 0.5 } },
    { item: 'headWorks', weight: 10, bands: { apron_m: 1.5, drain_m: 3, stickUp_m: 0.3 } },
    { item: 'cautionsRead', weight: 8, bands: {} },
  ],
  hints: [
    {
      id: 'what',
      ask: 'theSeal.hint.what',
      levels: ['theSeal.hint.what.1', 'theSeal.hint.what.2', 'theSeal.hint.what.3'],
    },
    {
      id: 'where',
      ask: 'theSeal.hint.where',
      levels: ['theSeal.hint.where.1', 'theSeal.hint.where.2', 'theSeal.hint.where.3'],
    },
    {
      id: 'under',
      ask: 'theSeal.hint.under',
      levels: ['theSeal.hint.under.1', 'theSeal.hint.under.2', 'theSeal.hint.under.3'],
    },
    {
      id: 'wait',
      ask: 'theSeal.hint.wait',
      levels: ['theSeal.hint.wait.1', 'theSeal.hint.wait.2', 'theSeal.hint.wait.3'],
    },
    {
      id: 'head',
      ask: 'theSeal.hint.head',
      levels: ['theSeal.hint.head.1', 'theSeal.hint.head.2', 'theSeal.hint.head.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'theSeal.card.start' },
    { id: 'sounded', cue: { on: 'event', event: 'sounded' }, text: 'theSeal.card.sounded' },
    { id: 'placed', cue: { on: 'event', event: 'sealPlaced' }, text: 'theSeal.card.placed' },
    { id: 'set', cue: { on: 'event', event: 'sealSet' }, text: 'theSeal.card.set' },
    { id: 'head-works', cue: { on: 'event', event: 'headWorksDone' }, text: 'theSeal.card.headWorks' },
    { id: 'washed', cue: { on: 'action', action: 'develop' }, text: 'theSeal.card.washed' },
    { id: 'left', cue: { on: 'event', event: 'leftToCrew' }, text: 'theSeal.card.left' },
  ],
  hazards: ['pits', 'lifting', 'cement', 'chlorine', 'water'],
  questions: [
    {
      ask: 'theSeal.ask.why',
      answers: ['theSeal.ask.why.1', 'theSeal.ask.why.2', 'theSeal.ask.why.3', 'theSeal.ask.why.4'],
    },
    { ask: 'theSeal.ask.full', answers: ['theSeal.ask.full.1', 'theSeal.ask.full.2', 'theSeal.ask.full.3'] },
    {
      ask: 'theSeal.ask.next',
      answers: [
        'theSeal.ask.next.1',
        'theSeal.ask.next.2',
        'theSeal.ask.next.3',
        'theSeal.ask.next.4',
        'theSeal.ask.next.5',
      ],
    },
  ],
};
