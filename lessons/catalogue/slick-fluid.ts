// Lesson 3, slick fluid: coarse sand lies a few minutes under the bit. How much powder, how put in, how long before it works, how tried, too thin and too thick.

import type { Lesson } from '../schema';

export const slickFluidLesson: Lesson = {
  id: 'slick-fluid',
  version: 1,
  title: 'slickFluid.title',
  outcomes: [
    'slickFluid.outcome.dose',
    'slickFluid.outcome.sprinkle',
    'slickFluid.outcome.soak',
    'slickFluid.outcome.feel',
    'slickFluid.outcome.thick',
  ],
  briefing: [
    'slickFluid.brief.job',
    'slickFluid.brief.kit',
    'slickFluid.brief.pit',
    'slickFluid.brief.ground',
    'slickFluid.brief.powder',
    'slickFluid.brief.end',
  ],
  // Coarse sand starts between 0.9 and 2 m and goes on to beyond 6 m.
  ground: {
    by: 'recipe',
    recipes: [
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.6] },
          { kind: 'silt', thickness_m: [0.6, 1.4] },
          { kind: 'coarseSand', thickness_m: [6, 7] },
        ],
        waterTable_m: [1, 2],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.6] },
          { kind: 'siltySand', thickness_m: [0.6, 1.4] },
          { kind: 'coarseSand', thickness_m: [6, 7] },
        ],
        waterTable_m: [1, 2],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.6] },
          { kind: 'fineSand', thickness_m: [0.6, 0.9] },
          { kind: 'mediumSand', thickness_m: [0.2, 0.5] },
          { kind: 'coarseSand', thickness_m: [6, 7] },
        ],
        waterTable_m: [1, 2],
      },
    ],
  },
  kit: {},
  view: 'hole',
  senses: ['returns', 'tray', 'stem', 'pump', 'pit', 'feel', 'stick', 'funnel', 'clock'],
  gauges: ['fluid'],
  hands: ['stem', 'pump', 'pit', 'fluid', 'tray', 'book'],
  opening: {
    rods: 1,
    rodsInAll: 3,
    starter_m: 0.3,
    pit_L: 940,
    primed: false,
    water_L: 1500,
    powder_kg: 4,
    petrol_L: 5,
    maxDepth_m: 7,
  },
  end: { rods: 3, depth_m: 4.4, cap_s: 9000 },
  faults: [],
  pass_points: 70,
  rubric: [
    {
      item: 'fluidReady',
      weight: 10,
      bands: { depth_m: 2, full_gL: 0.55, none_gL: 0.1, bedFull_m: 0.005, bedNone_m: 0.02 },
    },
    {
      item: 'doseFits',
      weight: 26,
      bands: { depth_m: 2, least_gL: 0.55, most_gL: 1.6, full_frac: 0.95, none_frac: 0.5 },
    },
    { item: 'noFishEyes', weight: 12, bands: {} },
    { item: 'fluidTried', weight: 15, bands: { soak_s: 600, times: 1 } },
    { item: 'clearedStops', weight: 7, bands: { full_m: 0.02, none_m: 0.05 } },
    { item: 'notBuried', weight: 4, bands: { full_m: 0.02, none_m: 0.1 } },
    { item: 'depthReached', weight: 6, bands: { from_m: 1, goal_m: 4.4 } },
    { item: 'jobTime', weight: 6, bands: { full_s: 4200, none_s: 7800 } },
    {
      item: 'suppliesUsed',
      weight: 4,
      bands: { powderFull_g: 1400, powderNone_g: 2400, waterFull_L: 500, waterNone_L: 1200 },
    },
    { item: 'cautionsRead', weight: 6, bands: {} },
    { item: 'liftedBeforeStop', weight: 4, bands: { lift_m: 0.1 } },
  ],
  hints: [
    {
      id: 'dose',
      ask: 'slickFluid.hint.dose',
      levels: ['slickFluid.hint.dose.1', 'slickFluid.hint.dose.2', 'slickFluid.hint.dose.3'],
    },
    {
      id: 'put',
      ask: 'slickFluid.hint.put',
      levels: ['slickFluid.hint.put.1', 'slickFluid.hint.put.2', 'slickFluid.hint.put.3'],
    },
    {
      id: 'soak',
      ask: 'slickFluid.hint.soak',
      levels: ['slickFluid.hint.soak.1', 'slickFluid.hint.soak.2', 'slickFluid.hint.soak.3'],
    },
    {
      id: 'try',
      ask: 'slickFluid.hint.try',
      levels: ['slickFluid.hint.try.1', 'slickFluid.hint.try.2', 'slickFluid.hint.try.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'slickFluid.card.start' },
    { id: 'powder', cue: { on: 'action', action: 'addAdditive' }, text: 'slickFluid.card.powder' },
    { id: 'soaked', cue: { on: 'event', event: 'soaked' }, text: 'slickFluid.card.soaked' },
    { id: 'primed', cue: { on: 'event', event: 'primed' }, text: 'slickFluid.card.primed' },
    { id: 'flow', cue: { on: 'event', event: 'flowStarted' }, text: 'slickFluid.card.flow' },
    { id: 'coarse', cue: { on: 'depth', depth_m: 2 }, text: 'slickFluid.card.coarse' },
    { id: 'rod-down', cue: { on: 'event', event: 'rodDown' }, text: 'slickFluid.card.rodDown' },
    { id: 'clear', cue: { on: 'event', event: 'clear' }, text: 'slickFluid.card.clear' },
    { id: 'buried', cue: { on: 'event', event: 'buried' }, text: 'slickFluid.card.buried' },
    { id: 'stalled', cue: { on: 'event', event: 'stalled' }, text: 'slickFluid.card.stalled' },
    { id: 'done', cue: { on: 'depth', depth_m: 4.4 }, text: 'slickFluid.card.done' },
  ],
  hazards: ['turningStem', 'rods', 'petrol', 'electric', 'pits', 'powder'],
  questions: [
    {
      ask: 'slickFluid.ask.dose',
      answers: ['slickFluid.ask.dose.1', 'slickFluid.ask.dose.2', 'slickFluid.ask.dose.3', 'slickFluid.ask.dose.4'],
    },
    {
      ask: 'slickFluid.ask.soak',
      answers: ['slickFluid.ask.soak.1', 'slickFluid.ask.soak.2', 'slickFluid.ask.soak.3'],
    },
    {
      ask: 'slickFluid.ask.next',
      answers: [
        'slickFluid.ask.next.1',
        'slickFluid.ask.next.2',
        'slickFluid.ask.next.3',
        'slickFluid.ask.next.4',
        'slickFluid.ask.next.5',
      ],
    },
  ],
};
