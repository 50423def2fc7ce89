// Lesson 2, the first rods: three rods through silt into sand. Clear before each stop, add rods, label one sample per rod, mix powder in time.

import type { Lesson } from '../schema';

export const firstRodsLesson: Lesson = {
  id: 'first-rods',
  version: 2,
  title: 'firstRods.title',
  outcomes: [
    'firstRods.outcome.prime',
    'firstRods.outcome.feed',
    'firstRods.outcome.clear',
    'firstRods.outcome.sample',
    'firstRods.outcome.fluid',
  ],
  briefing: [
    'firstRods.brief.job',
    'firstRods.brief.kit',
    'firstRods.brief.ground',
    'firstRods.brief.powder',
    'firstRods.brief.samples',
    'firstRods.brief.end',
  ],
  // The coarse sand starts between 2.1 and 3.6 m and goes on to beyond 6 m, so the third rod always ends in it.
  ground: {
    by: 'recipe',
    recipes: [
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.6] },
          { kind: 'silt', thickness_m: [0.8, 1.4] },
          { kind: 'fineSand', thickness_m: [1, 1.6] },
          { kind: 'coarseSand', thickness_m: [5, 6] },
        ],
        waterTable_m: [1, 2.5],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.6] },
          { kind: 'silt', thickness_m: [0.8, 1.4] },
          { kind: 'siltySand', thickness_m: [1, 1.6] },
          { kind: 'coarseSand', thickness_m: [5, 6] },
        ],
        waterTable_m: [1, 2.5],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.6] },
          { kind: 'silt', thickness_m: [0.8, 1.4] },
          { kind: 'fineSand', thickness_m: [0.6, 0.9] },
          { kind: 'mediumSand', thickness_m: [0.4, 0.7] },
          { kind: 'coarseSand', thickness_m: [5, 6] },
        ],
        waterTable_m: [1, 2.5],
      },
    ],
  },
  kit: {},
  view: 'hole',
  senses: ['returns', 'tray', 'stem', 'pump', 'pit', 'feel', 'stick', 'funnel', 'clock'],
  gauges: [],
  hands: ['stem', 'pump', 'pit', 'fluid', 'tray', 'well', 'book'],
  opening: {
    rods: 1,
    rodsInAll: 4,
    starter_m: 0.3,
    pit_L: 940,
    primed: false,
    water_L: 1500,
    powder_kg: 3,
    petrol_L: 5,
    maxDepth_m: 8,
  },
  end: { rods: 3, depth_m: 4.4, cap_s: 10800 },
  faults: [],
  pass_points: 70,
  rubric: [
    { item: 'clearedStops', weight: 16, bands: { full_m: 0.02, none_m: 0.05 } },
    { item: 'notBuried', weight: 5, bands: { full_m: 0.02, none_m: 0.1 } },
    { item: 'fairFeed', weight: 5, bands: { loading_frac: 0.05, full_frac: 0.05, none_frac: 0.4 } },
    { item: 'depthReached', weight: 4, bands: { from_m: 1.5, goal_m: 4.4 } },
    { item: 'sampleEachRod', weight: 6, bands: { rods: 3, rod_m: 1.5 } },
    { item: 'labelsTrue', weight: 14, bands: { rods: 3, limit_m: 0.5 } },
    { item: 'namedRight', weight: 4, bands: { rods: 3 } },
    {
      item: 'fluidReady',
      weight: 4,
      bands: { depth_m: 3, full_gL: 0.5, none_gL: 0.1, bedFull_m: 0.02, bedNone_m: 0.05 },
    },
    {
      item: 'doseFits',
      weight: 10,
      bands: { depth_m: 3, least_gL: 0.5, most_gL: 1.6, full_frac: 0.95, none_frac: 0.2 },
    },
    { item: 'notTooThick', weight: 3, bands: { full_gL: 1.4, none_gL: 2.4 } },
    { item: 'noFishEyes', weight: 4, bands: {} },
    { item: 'jobTime', weight: 6, bands: { full_s: 4500, none_s: 8100 } },
    {
      item: 'suppliesUsed',
      weight: 3,
      bands: { powderFull_g: 1300, powderNone_g: 2200, waterFull_L: 500, waterNone_L: 1200 },
    },
    { item: 'cautionsRead', weight: 8, bands: {} },
    { item: 'rodsHandledStill', weight: 4, bands: { none: 2 } },
    { item: 'liftedBeforeStop', weight: 4, bands: { lift_m: 0.1 } },
  ],
  hints: [
    {
      id: 'start',
      ask: 'firstRods.hint.start',
      levels: ['firstRods.hint.start.1', 'firstRods.hint.start.2', 'firstRods.hint.start.3'],
    },
    {
      id: 'powder',
      ask: 'firstRods.hint.powder',
      levels: ['firstRods.hint.powder.1', 'firstRods.hint.powder.2', 'firstRods.hint.powder.3'],
    },
    {
      id: 'feed',
      ask: 'firstRods.hint.feed',
      levels: ['firstRods.hint.feed.1', 'firstRods.hint.feed.2', 'firstRods.hint.feed.3'],
    },
    {
      id: 'label',
      ask: 'firstRods.hint.label',
      levels: ['firstRods.hint.label.1', 'firstRods.hint.label.2', 'firstRods.hint.label.3'],
    },
    {
      id: 'clear',
      ask: 'firstRods.hint.clear',
      levels: ['firstRods.hint.clear.1', 'firstRods.hint.clear.2', 'firstRods.hint.clear.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'firstRods.card.start', hand: 'prime' },
    { id: 'powder', cue: { on: 'action', action: 'prime' }, text: 'firstRods.card.powder', hand: 'addAdditive' },
    { id: 'primed', cue: { on: 'event', event: 'primed' }, text: 'firstRods.card.primed', hand: 'setThrottle' },
    { id: 'flow', cue: { on: 'event', event: 'flowStarted' }, text: 'firstRods.card.flow', hand: 'setTurning' },
    { id: 'drilling', cue: { on: 'action', action: 'setFeed' }, text: 'firstRods.card.drilling' },
    { id: 'sample', cue: { on: 'depth', depth_m: 0.8 }, text: 'firstRods.card.sample' },
    { id: 'caught', cue: { on: 'event', event: 'sampleCaught' }, text: 'firstRods.card.caught', hand: 'nameSample' },
    { id: 'rod-down', cue: { on: 'event', event: 'rodDown' }, text: 'firstRods.card.rodDown' },
    { id: 'clear', cue: { on: 'event', event: 'clear' }, text: 'firstRods.card.clear', hand: 'setThrottle' },
    { id: 'stopped', cue: { on: 'event', event: 'flowStopped' }, text: 'firstRods.card.stopped' },
    { id: 'rod-added', cue: { on: 'event', event: 'rodAdded' }, text: 'firstRods.card.rodAdded', hand: 'setThrottle' },
    { id: 'stalled', cue: { on: 'event', event: 'stalled' }, text: 'firstRods.card.stalled' },
    { id: 'buried', cue: { on: 'event', event: 'buried' }, text: 'firstRods.card.buried' },
    { id: 'prime-lost', cue: { on: 'event', event: 'primeLost' }, text: 'firstRods.card.primeLost' },
    { id: 'done', cue: { on: 'depth', depth_m: 4.4 }, text: 'firstRods.card.done', hand: 'stopDrilling' },
  ],
  hazards: ['turningStem', 'rods', 'petrol', 'electric', 'pits', 'powder'],
  questions: [
    {
      ask: 'firstRods.ask.stop',
      answers: ['firstRods.ask.stop.1', 'firstRods.ask.stop.2', 'firstRods.ask.stop.3', 'firstRods.ask.stop.4'],
    },
    {
      ask: 'firstRods.ask.sample',
      answers: [
        'firstRods.ask.sample.1',
        'firstRods.ask.sample.2',
        'firstRods.ask.sample.3',
        'firstRods.ask.sample.4',
        'firstRods.ask.sample.5',
      ],
    },
    {
      ask: 'firstRods.ask.next',
      answers: [
        'firstRods.ask.next.1',
        'firstRods.ask.next.2',
        'firstRods.ask.next.3',
        'firstRods.ask.next.4',
        'firstRods.ask.next.5',
      ],
    },
  ],
};
