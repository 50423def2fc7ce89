// Lesson 6, the falling pit: thirsty sand over a deep water table. What a falling pit says, and what to do: ease off, thicken, have water ready.

import type { Lesson } from '../schema';

export const fallingPitLesson: Lesson = {
  id: 'falling-pit',
  version: 1,
  title: 'fallingPit.title',
  outcomes: [
    'fallingPit.outcome.see',
    'fallingPit.outcome.ease',
    'fallingPit.outcome.thicken',
    'fallingPit.outcome.water',
  ],
  briefing: [
    'fallingPit.brief.job',
    'fallingPit.brief.kit',
    'fallingPit.brief.ground',
    'fallingPit.brief.water',
    'fallingPit.brief.powder',
    'fallingPit.brief.end',
  ],
  // Coarse sand from the top to beyond the hole, without silt that would seal it, over a deep water table: it drinks until it has a skin.
  ground: {
    by: 'recipe',
    recipes: [
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.1, 0.2] },
          { kind: 'coarseSand', thickness_m: [9, 10] },
        ],
        waterTable_m: [3, 5],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.1, 0.2] },
          { kind: 'mediumSand', thickness_m: [0.4, 0.8] },
          { kind: 'coarseSand', thickness_m: [9, 10] },
        ],
        waterTable_m: [3, 5],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.1, 0.2] },
          { kind: 'coarseSand', thickness_m: [1, 2] },
          { kind: 'mediumSand', thickness_m: [0.4, 0.8] },
          { kind: 'coarseSand', thickness_m: [8, 9] },
        ],
        waterTable_m: [3, 5],
      },
    ],
  },
  kit: {},
  view: 'hole',
  senses: ['returns', 'tray', 'stem', 'pump', 'pit', 'feel', 'stick', 'funnel', 'clock'],
  gauges: ['pitLevel'],
  hands: ['stem', 'pump', 'pit', 'fluid', 'tray', 'book'],
  opening: {
    rods: 1,
    rodsInAll: 3,
    starter_m: 0.3,
    pit_L: 940,
    primed: false,
    water_L: 1800,
    powder_kg: 5,
    petrol_L: 8,
    maxDepth_m: 8,
  },
  end: { rods: 3, depth_m: 4.4, cap_s: 10800 },
  faults: [],
  pass_points: 70,
  rubric: [
    { item: 'easedOff', weight: 18, bands: { share_frac: 0.75, full_m: 0.1, none_m: 0.5, least_m: 1 } },
    { item: 'littleLost', weight: 12, bands: { full_L: 550, none_L: 1200, least_m: 1.5 } },
    {
      item: 'doseFits',
      weight: 14,
      bands: { depth_m: 1.5, least_gL: 0.7, most_gL: 2.2, full_frac: 0.9, none_frac: 0.2 },
    },
    { item: 'fluidTried', weight: 6, bands: { soak_s: 300, times: 1 } },
    { item: 'pitStood', weight: 15, bands: { full_m: 0.3, none_m: 0.5 } },
    { item: 'pumpKeptWater', weight: 7, bands: { none: 2 } },
    { item: 'clearedStops', weight: 6, bands: { full_m: 0.02, none_m: 0.08 } },
    { item: 'depthReached', weight: 6, bands: { from_m: 1, goal_m: 4.4 } },
    { item: 'jobTime', weight: 4, bands: { full_s: 4200, none_s: 7200 } },
    { item: 'cautionsRead', weight: 8, bands: {} },
    { item: 'liftedBeforeStop', weight: 4, bands: { lift_m: 0.1 } },
  ],
  hints: [
    {
      id: 'sign',
      ask: 'fallingPit.hint.sign',
      levels: ['fallingPit.hint.sign.1', 'fallingPit.hint.sign.2', 'fallingPit.hint.sign.3'],
    },
    {
      id: 'ease',
      ask: 'fallingPit.hint.ease',
      levels: ['fallingPit.hint.ease.1', 'fallingPit.hint.ease.2', 'fallingPit.hint.ease.3'],
    },
    {
      id: 'thicken',
      ask: 'fallingPit.hint.thicken',
      levels: ['fallingPit.hint.thicken.1', 'fallingPit.hint.thicken.2', 'fallingPit.hint.thicken.3'],
    },
    {
      id: 'water',
      ask: 'fallingPit.hint.water',
      levels: ['fallingPit.hint.water.1', 'fallingPit.hint.water.2', 'fallingPit.hint.water.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'fallingPit.card.start' },
    { id: 'soaked', cue: { on: 'event', event: 'soaked' }, text: 'fallingPit.card.soaked' },
    { id: 'flow', cue: { on: 'event', event: 'flowStarted' }, text: 'fallingPit.card.flow' },
    { id: 'low', cue: { on: 'event', event: 'pitLow' }, text: 'fallingPit.card.low' },
    { id: 'lost', cue: { on: 'event', event: 'returnsLost' }, text: 'fallingPit.card.lost' },
    { id: 'back', cue: { on: 'event', event: 'returnsBack' }, text: 'fallingPit.card.back' },
    { id: 'gulps', cue: { on: 'event', event: 'pumpGulps' }, text: 'fallingPit.card.gulps' },
    { id: 'prime-lost', cue: { on: 'event', event: 'primeLost' }, text: 'fallingPit.card.primeLost' },
    { id: 'water-out', cue: { on: 'event', event: 'waterOut' }, text: 'fallingPit.card.waterOut' },
    { id: 'done', cue: { on: 'depth', depth_m: 4.4 }, text: 'fallingPit.card.done' },
  ],
  hazards: ['turningStem', 'rods', 'petrol', 'electric', 'pits', 'powder'],
  questions: [
    {
      ask: 'fallingPit.ask.first',
      answers: ['fallingPit.ask.first.1', 'fallingPit.ask.first.2', 'fallingPit.ask.first.3', 'fallingPit.ask.first.4'],
    },
    {
      ask: 'fallingPit.ask.did',
      answers: ['fallingPit.ask.did.1', 'fallingPit.ask.did.2', 'fallingPit.ask.did.3', 'fallingPit.ask.did.4'],
    },
    {
      ask: 'fallingPit.ask.next',
      answers: [
        'fallingPit.ask.next.1',
        'fallingPit.ask.next.2',
        'fallingPit.ask.next.3',
        'fallingPit.ask.next.4',
        'fallingPit.ask.next.5',
      ],
    },
  ],
};
