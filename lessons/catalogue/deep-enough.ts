// Lesson 9, the stop decision: enough coarse sand below the lowest water for a screen, and no metre more.

import type { Lesson } from '../schema';
import { WELL_DRILL_KIT } from './well-drill';
import { ALL_HANDS, WELL_SENSES } from './whole-well';

/** Medium and coarse sand go on for more than 4.6 m below the lowest water and end, or turn salt, above 13 m; on one ground a bed of silt parts them. */
const ground: Lesson['ground'] = {
  by: 'recipe',
  recipes: [
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'silt', thickness_m: [0.8, 1.4] },
        { kind: 'fineSand', thickness_m: [1, 1.6] },
        { kind: 'mediumSand', thickness_m: [1.5, 2] },
        { kind: 'coarseSand', thickness_m: [5, 6] },
        { kind: 'firmClay', thickness_m: [3, 5] },
        { kind: 'fineSand', thickness_m: [15, 20] },
      ],
      waterTable_m: [1.2, 2.2],
      swing_m: [1, 1.6],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'firmClay', thickness_m: [0.8, 1.2] },
        { kind: 'mediumSand', thickness_m: [0.9, 1.2] },
        { kind: 'silt', thickness_m: [0.9, 1.2] },
        { kind: 'mediumSand', thickness_m: [1, 1.5] },
        { kind: 'coarseSand', thickness_m: [4.6, 5.4] },
        { kind: 'silt', thickness_m: [2, 3] },
        { kind: 'firmClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [1.2, 2],
      swing_m: [0.8, 1.4],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'siltySand', thickness_m: [1, 1.6] },
        { kind: 'softClay', thickness_m: [0.5, 0.9] },
        { kind: 'fineSand', thickness_m: [0.8, 1.2] },
        { kind: 'mediumSand', thickness_m: [1.6, 2.2] },
        { kind: 'coarseSand', thickness_m: [4.6, 5.4] },
        { kind: 'stiffClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [1, 2],
      swing_m: [1, 1.6],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'silt', thickness_m: [0.8, 1.4] },
        { kind: 'fineSand', thickness_m: [0.8, 1.4] },
        { kind: 'mediumSand', thickness_m: [2, 3] },
        { kind: 'coarseSand', thickness_m: [9, 11] },
        { kind: 'fineSand', thickness_m: [15, 20] },
      ],
      waterTable_m: [1.2, 2.2],
      swing_m: [1, 1.6],
      salt: { brackish_m: [12.2, 12.8], brackish_gL: [2, 4], salt_m: [13, 14], salt_gL: [10, 20] },
    },
  ],
};

export const deepEnoughLesson: Lesson = {
  id: 'deep-enough',
  version: 1,
  title: 'deepEnough.title',
  outcomes: [
    'deepEnough.outcome.lowest',
    'deepEnough.outcome.sand',
    'deepEnough.outcome.stop',
    'deepEnough.outcome.notOn',
  ],
  briefing: [
    'deepEnough.brief.job',
    'deepEnough.brief.water',
    'deepEnough.brief.screen',
    'deepEnough.brief.below',
    'deepEnough.brief.end',
  ],
  ground,
  kit: {},
  view: 'hole',
  senses: WELL_SENSES,
  gauges: [],
  hands: ALL_HANDS,
  opening: {
    rods: 1,
    rodsInAll: 9,
    starter_m: 0.3,
    pit_L: 940,
    primed: false,
    water_L: 8000,
    powder_kg: 8,
    bentonite_kg: 50,
    petrol_L: 30,
    setOut: true,
    maxDepth_m: 14,
  },
  well: WELL_DRILL_KIT,
  end: { rods: 9, depth_m: 13.5, cap_s: 21600, at: 'stopped' },
  prologue: { crew: 'careful', until: { depth_m: 4 } },
  faults: [],
  pass_points: 70,
  rubric: [
    { item: 'stretchEnough', weight: 28, essential: true, bands: { full_m: 4.6, none_m: 2 } },
    { item: 'noDeeper', weight: 24, bands: { want_m: 4.6, full_m: 0.8, none_m: 3, told_m: 12 } },
    { item: 'sampleEachRod', weight: 8, bands: { rod_m: 1.5 } },
    { item: 'labelsTrue', weight: 8, bands: { rod_m: 1.5, limit_m: 0.5 } },
    { item: 'namedRight', weight: 4, bands: { rod_m: 1.5 } },
    { item: 'ownLogTrue', weight: 4, bands: {} },
    { item: 'clearedStops', weight: 6, bands: { full_m: 0.05, none_m: 0.15 } },
    { item: 'liftedBeforeStop', weight: 6, bands: { lift_m: 0.1 } },
    { item: 'cautionsRead', weight: 12, bands: {} },
  ],
  hints: [
    {
      id: 'lowest',
      ask: 'deepEnough.hint.lowest',
      levels: ['deepEnough.hint.lowest.1', 'deepEnough.hint.lowest.2', 'deepEnough.hint.lowest.3'],
    },
    {
      id: 'sand',
      ask: 'deepEnough.hint.sand',
      levels: ['deepEnough.hint.sand.1', 'deepEnough.hint.sand.2', 'deepEnough.hint.sand.3'],
    },
    {
      id: 'stop',
      ask: 'deepEnough.hint.stop',
      levels: ['deepEnough.hint.stop.1', 'deepEnough.hint.stop.2', 'deepEnough.hint.stop.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'deepEnough.card.start' },
    { id: 'flow', cue: { on: 'event', event: 'flowStarted' }, text: 'deepEnough.card.flow' },
    { id: 'caught', cue: { on: 'event', event: 'sampleCaught' }, text: 'deepEnough.card.caught' },
    { id: 'rod-down', cue: { on: 'event', event: 'rodDown' }, text: 'deepEnough.card.rodDown' },
    { id: 'rod-added', cue: { on: 'event', event: 'rodAdded' }, text: 'deepEnough.card.rodAdded' },
    { id: 'deep', cue: { on: 'depth', depth_m: 8 }, text: 'deepEnough.card.deep' },
    { id: 'told', cue: { on: 'depth', depth_m: 11.5 }, text: 'deepEnough.card.told' },
    { id: 'buried', cue: { on: 'event', event: 'buried' }, text: 'deepEnough.card.buried' },
  ],
  hazards: ['turningStem', 'rods', 'petrol', 'electric', 'pits', 'powder', 'lightning'],
  questions: [
    {
      ask: 'deepEnough.ask.why',
      answers: ['deepEnough.ask.why.1', 'deepEnough.ask.why.2', 'deepEnough.ask.why.3', 'deepEnough.ask.why.4'],
    },
    {
      ask: 'deepEnough.ask.level',
      answers: ['deepEnough.ask.level.1', 'deepEnough.ask.level.2', 'deepEnough.ask.level.3'],
    },
    {
      ask: 'deepEnough.ask.next',
      answers: [
        'deepEnough.ask.next.1',
        'deepEnough.ask.next.2',
        'deepEnough.ask.next.3',
        'deepEnough.ask.next.4',
        'deepEnough.ask.next.5',
      ],
    },
  ],
};
