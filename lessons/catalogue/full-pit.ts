// Lesson 8, the full pit: a wide bit in sand, a small pit. Sand that does not drop goes round: dig it out, keep the fluid thin enough to drop it, keep the strainer clear.

import type { Lesson } from '../schema';

export const fullPitLesson: Lesson = {
  id: 'full-pit',
  version: 1,
  title: 'fullPit.title',
  outcomes: ['fullPit.outcome.drop', 'fullPit.outcome.dig', 'fullPit.outcome.thin', 'fullPit.outcome.strainer'],
  briefing: [
    'fullPit.brief.job',
    'fullPit.brief.pit',
    'fullPit.brief.ground',
    'fullPit.brief.powder',
    'fullPit.brief.spoil',
    'fullPit.brief.end',
  ],
  // Sand from half a metre down to beyond the hole.
  ground: {
    by: 'recipe',
    recipes: [
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.6] },
          { kind: 'fineSand', thickness_m: [1.2, 2.2] },
          { kind: 'mediumSand', thickness_m: [6, 7] },
        ],
        waterTable_m: [1, 1.6],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.6] },
          { kind: 'siltySand', thickness_m: [0.5, 0.9] },
          { kind: 'mediumSand', thickness_m: [6, 7] },
        ],
        waterTable_m: [1, 1.6],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.6] },
          { kind: 'mediumSand', thickness_m: [1, 1.8] },
          { kind: 'fineSand', thickness_m: [6, 7] },
        ],
        waterTable_m: [1, 1.6],
      },
    ],
  },
  // A wide bit brings two and a quarter times the sand; the strainer hangs low.
  kit: { bit_m: 0.15, strainer_m: 0.05 },
  pit: { settling_m2: 0.1, suction_m2: 0.66, depth_m: 0.6 },
  view: 'hole',
  senses: ['returns', 'tray', 'stem', 'pump', 'pit', 'feel', 'stick', 'funnel', 'clock'],
  gauges: ['flow'],
  hands: ['stem', 'pump', 'pit', 'fluid', 'tray', 'book'],
  opening: {
    rods: 1,
    rodsInAll: 3,
    starter_m: 0.3,
    pit_L: 435,
    primed: false,
    water_L: 2500,
    powder_kg: 3,
    petrol_L: 8,
    maxDepth_m: 7,
  },
  end: { rods: 3, depth_m: 4.4, cap_s: 10800 },
  faults: [],
  pass_points: 70,
  rubric: [
    { item: 'heapDug', weight: 28, bands: { full_frac: 0.46, none_frac: 0.54 } },
    { item: 'strainerOpen', weight: 15, bands: { full_frac: 0.3, none_frac: 0.75 } },
    {
      item: 'doseFits',
      weight: 15,
      bands: { depth_m: 1.2, least_gL: 0.3, most_gL: 1.35, full_frac: 0.9, none_frac: 0.2 },
    },
    { item: 'pumpSpared', weight: 6, bands: { full_frac: 0.04, none_frac: 0.2, least_m: 1.5 } },
    { item: 'wallStood', weight: 6, bands: { full_L: 4, none_L: 20 } },
    { item: 'pumpKeptWater', weight: 4, bands: { none: 2 } },
    { item: 'clearedStops', weight: 6, bands: { full_m: 0.03, none_m: 0.1 } },
    { item: 'depthReached', weight: 6, bands: { from_m: 1, goal_m: 4.4 } },
    { item: 'cautionsRead', weight: 8, bands: {} },
    { item: 'liftedBeforeStop', weight: 6, bands: { lift_m: 0.1 } },
  ],
  hints: [
    { id: 'dig', ask: 'fullPit.hint.dig', levels: ['fullPit.hint.dig.1', 'fullPit.hint.dig.2', 'fullPit.hint.dig.3'] },
    {
      id: 'thin',
      ask: 'fullPit.hint.thin',
      levels: ['fullPit.hint.thin.1', 'fullPit.hint.thin.2', 'fullPit.hint.thin.3'],
    },
    {
      id: 'strainer',
      ask: 'fullPit.hint.strainer',
      levels: ['fullPit.hint.strainer.1', 'fullPit.hint.strainer.2', 'fullPit.hint.strainer.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'fullPit.card.start' },
    { id: 'flow', cue: { on: 'event', event: 'flowStarted' }, text: 'fullPit.card.flow' },
    { id: 'rod-down', cue: { on: 'event', event: 'rodDown' }, text: 'fullPit.card.rodDown' },
    { id: 'dug', cue: { on: 'action', action: 'digOutPit' }, text: 'fullPit.card.dug' },
    { id: 'low', cue: { on: 'event', event: 'pitLow' }, text: 'fullPit.card.low' },
    { id: 'shut', cue: { on: 'event', event: 'strainerBlocked' }, text: 'fullPit.card.shut' },
    { id: 'gulps', cue: { on: 'event', event: 'pumpGulps' }, text: 'fullPit.card.gulps' },
    { id: 'worn', cue: { on: 'event', event: 'pumpWorn' }, text: 'fullPit.card.worn' },
    { id: 'buried', cue: { on: 'event', event: 'buried' }, text: 'fullPit.card.buried' },
    { id: 'done', cue: { on: 'depth', depth_m: 4.4 }, text: 'fullPit.card.done' },
  ],
  hazards: ['turningStem', 'rods', 'petrol', 'electric', 'pits', 'powder'],
  questions: [
    {
      ask: 'fullPit.ask.sand',
      answers: ['fullPit.ask.sand.1', 'fullPit.ask.sand.2', 'fullPit.ask.sand.3', 'fullPit.ask.sand.4'],
    },
    {
      ask: 'fullPit.ask.dig',
      answers: ['fullPit.ask.dig.1', 'fullPit.ask.dig.2', 'fullPit.ask.dig.3', 'fullPit.ask.dig.4'],
    },
    {
      ask: 'fullPit.ask.next',
      answers: ['fullPit.ask.next.1', 'fullPit.ask.next.2', 'fullPit.ask.next.3', 'fullPit.ask.next.4'],
    },
  ],
};
