// Lesson 7, stiff clay: a metre of it. Weight until it sinks steadily and no more, all the flow, and patience: too much weight or too little flow packs the bit.

import type { Lesson } from '../schema';

export const stiffClayLesson: Lesson = {
  id: 'stiff-clay',
  version: 1,
  title: 'stiffClay.title',
  outcomes: [
    'stiffClay.outcome.know',
    'stiffClay.outcome.weight',
    'stiffClay.outcome.flow',
    'stiffClay.outcome.patience',
  ],
  briefing: [
    'stiffClay.brief.job',
    'stiffClay.brief.kit',
    'stiffClay.brief.ground',
    'stiffClay.brief.pace',
    'stiffClay.brief.powder',
    'stiffClay.brief.end',
  ],
  // Clay of one kind or another, 0.7 to 1.1 m thick, wholly within the two rods.
  ground: {
    by: 'recipe',
    recipes: [
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.5] },
          { kind: 'siltySand', thickness_m: [0.3, 0.6] },
          { kind: 'firmClay', thickness_m: [0.9, 1.1] },
          { kind: 'fineSand', thickness_m: [6, 7] },
        ],
        waterTable_m: [1, 2],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.5] },
          { kind: 'fineSand', thickness_m: [0.3, 0.6] },
          { kind: 'swellingClay', thickness_m: [0.9, 1.1] },
          { kind: 'siltySand', thickness_m: [6, 7] },
        ],
        waterTable_m: [1, 2],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.5] },
          { kind: 'silt', thickness_m: [0.3, 0.6] },
          { kind: 'stiffClay', thickness_m: [0.3, 0.4] },
          { kind: 'firmClay', thickness_m: [0.6, 0.7] },
          { kind: 'fineSand', thickness_m: [6, 7] },
        ],
        waterTable_m: [1, 2],
      },
    ],
  },
  // A heavy drive: a short stem has weight enough here, more than soft and firm clay bear.
  kit: { hangingWeight_N: 400, bitLoadLimit_N: 550 },
  view: 'hole',
  senses: ['returns', 'tray', 'stem', 'pump', 'pit', 'feel', 'stick', 'funnel', 'clock'],
  gauges: ['torque'],
  hands: ['stem', 'pump', 'pit', 'fluid', 'tray', 'book'],
  opening: {
    rods: 1,
    rodsInAll: 2,
    starter_m: 0.3,
    pit_L: 940,
    primed: false,
    water_L: 1500,
    powder_kg: 3,
    petrol_L: 12,
    maxDepth_m: 6,
  },
  end: { rods: 2, depth_m: 2.9, cap_s: 21600 },
  faults: [],
  pass_points: 70,
  rubric: [
    { item: 'clayPace', weight: 26, bands: { slow_mh: 4.5, full_mh: 1.6, none_mh: 0.95, least_m: 0.3 } },
    { item: 'bitClean', weight: 26, bands: { full_frac: 0.2, none_frac: 0.9, least_m: 1 } },
    { item: 'fairFeed', weight: 4, bands: { loading_frac: 0.05, full_frac: 0.1, none_frac: 0.5 } },
    { item: 'clearedStops', weight: 4, bands: { full_m: 0.02, none_m: 0.05 } },
    { item: 'depthReached', weight: 8, bands: { from_m: 1, goal_m: 2.9 } },
    { item: 'jobTime', weight: 8, bands: { full_s: 4800, none_s: 9000 } },
    { item: 'cautionsRead', weight: 10, bands: {} },
    { item: 'liftedBeforeStop', weight: 8, bands: { lift_m: 0.1 } },
    { item: 'rodsHandledStill', weight: 6, bands: { none: 2 } },
  ],
  hints: [
    {
      id: 'know',
      ask: 'stiffClay.hint.know',
      levels: ['stiffClay.hint.know.1', 'stiffClay.hint.know.2', 'stiffClay.hint.know.3'],
    },
    {
      id: 'weight',
      ask: 'stiffClay.hint.weight',
      levels: ['stiffClay.hint.weight.1', 'stiffClay.hint.weight.2', 'stiffClay.hint.weight.3'],
    },
    {
      id: 'flow',
      ask: 'stiffClay.hint.flow',
      levels: ['stiffClay.hint.flow.1', 'stiffClay.hint.flow.2', 'stiffClay.hint.flow.3'],
    },
    {
      id: 'patience',
      ask: 'stiffClay.hint.patience',
      levels: ['stiffClay.hint.patience.1', 'stiffClay.hint.patience.2', 'stiffClay.hint.patience.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'stiffClay.card.start' },
    { id: 'flow', cue: { on: 'event', event: 'flowStarted' }, text: 'stiffClay.card.flow' },
    { id: 'clay', cue: { on: 'depth', depth_m: 1.1 }, text: 'stiffClay.card.clay' },
    { id: 'balled', cue: { on: 'event', event: 'balled' }, text: 'stiffClay.card.balled' },
    { id: 'unballed', cue: { on: 'event', event: 'unballed' }, text: 'stiffClay.card.unballed' },
    { id: 'tight', cue: { on: 'event', event: 'tight' }, text: 'stiffClay.card.tight' },
    { id: 'stalled', cue: { on: 'event', event: 'stalled' }, text: 'stiffClay.card.stalled' },
    { id: 'rod-down', cue: { on: 'event', event: 'rodDown' }, text: 'stiffClay.card.rodDown' },
    { id: 'done', cue: { on: 'depth', depth_m: 2.9 }, text: 'stiffClay.card.done' },
  ],
  hazards: ['turningStem', 'rods', 'petrol', 'electric', 'pits', 'powder'],
  questions: [
    {
      ask: 'stiffClay.ask.know',
      answers: [
        'stiffClay.ask.know.1',
        'stiffClay.ask.know.2',
        'stiffClay.ask.know.3',
        'stiffClay.ask.know.4',
        'stiffClay.ask.know.5',
      ],
    },
    {
      ask: 'stiffClay.ask.weight',
      answers: ['stiffClay.ask.weight.1', 'stiffClay.ask.weight.2', 'stiffClay.ask.weight.3'],
    },
    {
      ask: 'stiffClay.ask.next',
      answers: ['stiffClay.ask.next.1', 'stiffClay.ask.next.2', 'stiffClay.ask.next.3', 'stiffClay.ask.next.4'],
    },
  ],
};
