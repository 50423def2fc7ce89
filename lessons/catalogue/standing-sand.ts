// Lesson 5, standing sand: clean sand above and below the water. The hole stands by its level and by the skin that the fluid leaves; stops are short, pulls are slow.

import type { Lesson } from '../schema';

export const standingSandLesson: Lesson = {
  id: 'standing-sand',
  version: 1,
  title: 'standingSand.title',
  outcomes: [
    'standingSand.outcome.skin',
    'standingSand.outcome.level',
    'standingSand.outcome.stops',
    'standingSand.outcome.pull',
  ],
  briefing: [
    'standingSand.brief.job',
    'standingSand.brief.kit',
    'standingSand.brief.ground',
    'standingSand.brief.water',
    'standingSand.brief.powder',
    'standingSand.brief.end',
  ],
  // Clean sand from half a metre down to beyond the hole, the water table in the middle of it.
  ground: {
    by: 'recipe',
    recipes: [
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.5] },
          { kind: 'mediumSand', thickness_m: [9, 10] },
        ],
        waterTable_m: [1.2, 1.6],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.5] },
          { kind: 'fineSand', thickness_m: [0.2, 0.4] },
          { kind: 'mediumSand', thickness_m: [9, 10] },
        ],
        waterTable_m: [1.2, 1.6],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.5] },
          { kind: 'mediumSand', thickness_m: [2, 3] },
          { kind: 'fineSand', thickness_m: [0.5, 1] },
          { kind: 'mediumSand', thickness_m: [7, 8] },
        ],
        waterTable_m: [1.2, 1.6],
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
    water_L: 2500,
    powder_kg: 4,
    petrol_L: 8,
    maxDepth_m: 8,
  },
  end: { rods: 4, depth_m: 5.9, cap_s: 10800 },
  faults: [],
  pass_points: 70,
  rubric: [
    { item: 'wallStood', weight: 18, bands: { full_L: 3, none_L: 15 } },
    { item: 'levelHeld', weight: 16, bands: { full_m: 0.6, none_m: 1.2 } },
    { item: 'slowPulls', weight: 15, bands: { full_ms: 0.1, none_ms: 0.3 } },
    {
      item: 'doseFits',
      weight: 12,
      bands: { depth_m: 1.6, least_gL: 0.55, most_gL: 1.8, full_frac: 0.9, none_frac: 0.2 },
    },
    { item: 'fluidTried', weight: 4, bands: { soak_s: 300, times: 1 } },
    { item: 'shortStops', weight: 8, bands: { full_s: 130, none_s: 300 } },
    { item: 'clearedStops', weight: 8, bands: { full_m: 0.02, none_m: 0.08 } },
    { item: 'notBuried', weight: 5, bands: { full_m: 0.02, none_m: 0.2 } },
    { item: 'depthReached', weight: 4, bands: { from_m: 1, goal_m: 5.9 } },
    { item: 'cautionsRead', weight: 6, bands: {} },
    { item: 'liftedBeforeStop', weight: 4, bands: { lift_m: 0.1 } },
  ],
  hints: [
    {
      id: 'skin',
      ask: 'standingSand.hint.skin',
      levels: ['standingSand.hint.skin.1', 'standingSand.hint.skin.2', 'standingSand.hint.skin.3'],
    },
    {
      id: 'level',
      ask: 'standingSand.hint.level',
      levels: ['standingSand.hint.level.1', 'standingSand.hint.level.2', 'standingSand.hint.level.3'],
    },
    {
      id: 'stop',
      ask: 'standingSand.hint.stop',
      levels: ['standingSand.hint.stop.1', 'standingSand.hint.stop.2', 'standingSand.hint.stop.3'],
    },
    {
      id: 'pull',
      ask: 'standingSand.hint.pull',
      levels: ['standingSand.hint.pull.1', 'standingSand.hint.pull.2', 'standingSand.hint.pull.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'standingSand.card.start' },
    { id: 'soaked', cue: { on: 'event', event: 'soaked' }, text: 'standingSand.card.soaked' },
    { id: 'flow', cue: { on: 'event', event: 'flowStarted' }, text: 'standingSand.card.flow' },
    { id: 'lift', cue: { on: 'action', action: 'lift' }, text: 'standingSand.card.lift' },
    { id: 'stopped', cue: { on: 'event', event: 'flowStopped' }, text: 'standingSand.card.stopped' },
    { id: 'rod-added', cue: { on: 'event', event: 'rodAdded' }, text: 'standingSand.card.rodAdded' },
    { id: 'low', cue: { on: 'event', event: 'pitLow' }, text: 'standingSand.card.low' },
    { id: 'buried', cue: { on: 'event', event: 'buried' }, text: 'standingSand.card.buried' },
    { id: 'tight', cue: { on: 'event', event: 'tight' }, text: 'standingSand.card.tight' },
    { id: 'done', cue: { on: 'depth', depth_m: 5.9 }, text: 'standingSand.card.done' },
  ],
  hazards: ['turningStem', 'rods', 'petrol', 'electric', 'pits', 'powder'],
  questions: [
    {
      ask: 'standingSand.ask.stand',
      answers: [
        'standingSand.ask.stand.1',
        'standingSand.ask.stand.2',
        'standingSand.ask.stand.3',
        'standingSand.ask.stand.4',
      ],
    },
    {
      ask: 'standingSand.ask.look',
      answers: ['standingSand.ask.look.1', 'standingSand.ask.look.2', 'standingSand.ask.look.3'],
    },
    {
      ask: 'standingSand.ask.next',
      answers: [
        'standingSand.ask.next.1',
        'standingSand.ask.next.2',
        'standingSand.ask.next.3',
        'standingSand.ask.next.4',
        'standingSand.ask.next.5',
      ],
    },
  ],
};
