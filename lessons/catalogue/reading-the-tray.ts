// Lesson 4, reading the tray: sands of two and three sizes in turn. Samples often enough, labelled for their climb, named by their grains, and a log that says no more than they do.

import type { Lesson } from '../schema';

export const readingTheTrayLesson: Lesson = {
  id: 'reading-the-tray',
  version: 1,
  title: 'readingTheTray.title',
  outcomes: [
    'readingTheTray.outcome.lag',
    'readingTheTray.outcome.often',
    'readingTheTray.outcome.name',
    'readingTheTray.outcome.log',
  ],
  briefing: [
    'readingTheTray.brief.job',
    'readingTheTray.brief.kit',
    'readingTheTray.brief.ground',
    'readingTheTray.brief.log',
    'readingTheTray.brief.powder',
    'readingTheTray.brief.end',
  ],
  // Fine and coarse in turn, each 0.9 to 1.5 m: a tray shows every change below the topsoil.
  ground: {
    by: 'recipe',
    recipes: [
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.5] },
          { kind: 'fineSand', thickness_m: [1, 1.5] },
          { kind: 'coarseSand', thickness_m: [1, 1.5] },
          { kind: 'fineSand', thickness_m: [1, 1.4] },
          { kind: 'coarseSand', thickness_m: [6, 7] },
        ],
        waterTable_m: [1.5, 2.5],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.5] },
          { kind: 'coarseSand', thickness_m: [1, 1.5] },
          { kind: 'fineSand', thickness_m: [1, 1.5] },
          { kind: 'coarseSand', thickness_m: [6, 7] },
        ],
        waterTable_m: [1.5, 2.5],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.5] },
          { kind: 'fineSand', thickness_m: [1.2, 1.6] },
          { kind: 'coarseSand', thickness_m: [0.9, 1.3] },
          { kind: 'fineSand', thickness_m: [6, 7] },
        ],
        waterTable_m: [1.5, 2.5],
      },
    ],
  },
  kit: {},
  view: 'hole',
  senses: ['returns', 'tray', 'stem', 'pump', 'pit', 'feel', 'stick', 'funnel', 'clock'],
  gauges: [],
  hands: ['stem', 'pump', 'pit', 'fluid', 'tray', 'book'],
  opening: {
    rods: 1,
    rodsInAll: 4,
    starter_m: 0.3,
    pit_L: 940,
    primed: false,
    water_L: 2000,
    powder_kg: 4,
    petrol_L: 8,
    maxDepth_m: 8,
  },
  end: { rods: 4, depth_m: 5.9, cap_s: 10800 },
  faults: [],
  pass_points: 70,
  rubric: [
    { item: 'changesFound', weight: 30, bands: { from_m: 0.8, limit_m: 0.45, unseen_m: 0.5 } },
    { item: 'labelsTrue', weight: 14, bands: { rod_m: 1.5, limit_m: 0.3 } },
    { item: 'namedRight', weight: 12, bands: { rod_m: 1.5 } },
    { item: 'ownLogTrue', weight: 12, bands: {} },
    { item: 'sampleEachRod', weight: 8, bands: { rods: 4, rod_m: 1.5 } },
    { item: 'clearedStops', weight: 6, bands: { full_m: 0.03, none_m: 0.1 } },
    { item: 'depthReached', weight: 4, bands: { from_m: 1, goal_m: 5.9 } },
    { item: 'jobTime', weight: 4, bands: { full_s: 4800, none_s: 8400 } },
    { item: 'cautionsRead', weight: 6, bands: {} },
    { item: 'liftedBeforeStop', weight: 4, bands: { lift_m: 0.1 } },
  ],
  hints: [
    {
      id: 'lag',
      ask: 'readingTheTray.hint.lag',
      levels: ['readingTheTray.hint.lag.1', 'readingTheTray.hint.lag.2', 'readingTheTray.hint.lag.3'],
    },
    {
      id: 'often',
      ask: 'readingTheTray.hint.often',
      levels: ['readingTheTray.hint.often.1', 'readingTheTray.hint.often.2', 'readingTheTray.hint.often.3'],
    },
    {
      id: 'name',
      ask: 'readingTheTray.hint.name',
      levels: ['readingTheTray.hint.name.1', 'readingTheTray.hint.name.2', 'readingTheTray.hint.name.3'],
    },
    {
      id: 'log',
      ask: 'readingTheTray.hint.log',
      levels: ['readingTheTray.hint.log.1', 'readingTheTray.hint.log.2', 'readingTheTray.hint.log.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'readingTheTray.card.start' },
    { id: 'flow', cue: { on: 'event', event: 'flowStarted' }, text: 'readingTheTray.card.flow' },
    { id: 'sample', cue: { on: 'depth', depth_m: 0.9 }, text: 'readingTheTray.card.sample' },
    { id: 'caught', cue: { on: 'event', event: 'sampleCaught' }, text: 'readingTheTray.card.caught' },
    { id: 'named', cue: { on: 'action', action: 'nameSample' }, text: 'readingTheTray.card.named' },
    { id: 'rod-down', cue: { on: 'event', event: 'rodDown' }, text: 'readingTheTray.card.rodDown' },
    { id: 'clear', cue: { on: 'event', event: 'clear' }, text: 'readingTheTray.card.clear' },
    { id: 'buried', cue: { on: 'event', event: 'buried' }, text: 'readingTheTray.card.buried' },
    { id: 'done', cue: { on: 'depth', depth_m: 5.9 }, text: 'readingTheTray.card.done' },
  ],
  hazards: ['turningStem', 'rods', 'petrol', 'electric', 'pits', 'powder'],
  questions: [
    {
      ask: 'readingTheTray.ask.change',
      answers: [
        'readingTheTray.ask.change.1',
        'readingTheTray.ask.change.2',
        'readingTheTray.ask.change.3',
        'readingTheTray.ask.change.4',
        'readingTheTray.ask.change.5',
      ],
    },
    {
      ask: 'readingTheTray.ask.label',
      answers: ['readingTheTray.ask.label.1', 'readingTheTray.ask.label.2', 'readingTheTray.ask.label.3'],
    },
    {
      ask: 'readingTheTray.ask.next',
      answers: [
        'readingTheTray.ask.next.1',
        'readingTheTray.ask.next.2',
        'readingTheTray.ask.next.3',
        'readingTheTray.ask.next.4',
        'readingTheTray.ask.next.5',
      ],
    },
  ],
};
