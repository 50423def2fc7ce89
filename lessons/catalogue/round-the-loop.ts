// Lesson 1, round the loop: a pit half empty, a strainer in the mud, a dry pump. Get the fluid round, keep it going round, drill a first rod and a bit.

import type { Lesson } from '../schema';

export const roundTheLoopLesson: Lesson = {
  id: 'round-the-loop',
  version: 1,
  title: 'roundTheLoop.title',
  outcomes: [
    'roundTheLoop.outcome.prime',
    'roundTheLoop.outcome.strainer',
    'roundTheLoop.outcome.level',
    'roundTheLoop.outcome.listen',
  ],
  briefing: [
    'roundTheLoop.brief.job',
    'roundTheLoop.brief.kit',
    'roundTheLoop.brief.pit',
    'roundTheLoop.brief.strainer',
    'roundTheLoop.brief.end',
  ],
  // Ground that a short stem drills in water alone; the order and the thickness say nothing of the loop.
  ground: {
    by: 'recipe',
    recipes: [
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.6] },
          { kind: 'siltySand', thickness_m: [0.6, 1.2] },
          { kind: 'fineSand', thickness_m: [5, 6] },
        ],
        waterTable_m: [0.8, 1.5],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.6] },
          { kind: 'silt', thickness_m: [0.5, 1] },
          { kind: 'siltySand', thickness_m: [5, 6] },
        ],
        waterTable_m: [0.8, 1.5],
      },
      {
        layers: [
          { kind: 'topsoil', thickness_m: [0.3, 0.6] },
          { kind: 'fineSand', thickness_m: [0.8, 1.4] },
          { kind: 'siltySand', thickness_m: [5, 6] },
        ],
        waterTable_m: [0.8, 1.5],
      },
    ],
  },
  // The strainer lies on the floor of the pit.
  kit: { strainer_m: 0.02 },
  view: 'open',
  senses: ['returns', 'stem', 'pump', 'pit', 'stick', 'clock'],
  gauges: ['flow', 'pitLevel'],
  hands: ['stem', 'pump', 'pit', 'book'],
  opening: {
    rods: 1,
    rodsInAll: 2,
    starter_m: 0.3,
    pit_L: 420,
    primed: false,
    water_L: 1500,
    powder_kg: 0,
    petrol_L: 5,
    maxDepth_m: 5,
  },
  end: { rods: 2, depth_m: 2.4, cap_s: 5400 },
  faults: [],
  pass_points: 70,
  rubric: [
    { item: 'pumpKeptWater', weight: 20, bands: { none: 2 } },
    { item: 'strainerOpen', weight: 20, bands: { full_frac: 0.25, none_frac: 0.7 } },
    { item: 'pitStood', weight: 16, bands: { full_m: 0.35, none_m: 0.75 } },
    { item: 'depthReached', weight: 12, bands: { from_m: 0.6, goal_m: 2.4 } },
    { item: 'clearedStops', weight: 10, bands: { full_m: 0.02, none_m: 0.05 } },
    { item: 'jobTime', weight: 6, bands: { full_s: 2400, none_s: 4800 } },
    { item: 'cautionsRead', weight: 8, bands: {} },
    { item: 'rodsHandledStill', weight: 4, bands: { none: 2 } },
    { item: 'liftedBeforeStop', weight: 4, bands: { lift_m: 0.1 } },
  ],
  hints: [
    {
      id: 'start',
      ask: 'roundTheLoop.hint.start',
      levels: ['roundTheLoop.hint.start.1', 'roundTheLoop.hint.start.2', 'roundTheLoop.hint.start.3'],
    },
    {
      id: 'strainer',
      ask: 'roundTheLoop.hint.strainer',
      levels: ['roundTheLoop.hint.strainer.1', 'roundTheLoop.hint.strainer.2', 'roundTheLoop.hint.strainer.3'],
    },
    {
      id: 'level',
      ask: 'roundTheLoop.hint.level',
      levels: ['roundTheLoop.hint.level.1', 'roundTheLoop.hint.level.2', 'roundTheLoop.hint.level.3'],
    },
    {
      id: 'gulp',
      ask: 'roundTheLoop.hint.gulp',
      levels: ['roundTheLoop.hint.gulp.1', 'roundTheLoop.hint.gulp.2', 'roundTheLoop.hint.gulp.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'roundTheLoop.card.start', hand: 'prime' },
    { id: 'primed', cue: { on: 'event', event: 'primed' }, text: 'roundTheLoop.card.primed', hand: 'setThrottle' },
    {
      id: 'opened',
      cue: { on: 'action', action: 'setThrottle' },
      text: 'roundTheLoop.card.opened',
      hand: 'setTurning',
    },
    {
      id: 'turning',
      cue: { on: 'action', action: 'setTurning' },
      text: 'roundTheLoop.card.turning',
      hand: 'setStrainer',
    },
    { id: 'hung', cue: { on: 'action', action: 'setStrainer' }, text: 'roundTheLoop.card.hung', hand: 'addWater' },
    { id: 'filled', cue: { on: 'action', action: 'addWater' }, text: 'roundTheLoop.card.filled' },
    { id: 'flow', cue: { on: 'event', event: 'returnsBack' }, text: 'roundTheLoop.card.flow' },
    { id: 'gulps', cue: { on: 'event', event: 'pumpGulps' }, text: 'roundTheLoop.card.gulps' },
    { id: 'shut', cue: { on: 'event', event: 'strainerBlocked' }, text: 'roundTheLoop.card.shut' },
    { id: 'prime-lost', cue: { on: 'event', event: 'primeLost' }, text: 'roundTheLoop.card.primeLost' },
    { id: 'rod-down', cue: { on: 'event', event: 'rodDown' }, text: 'roundTheLoop.card.rodDown' },
    { id: 'done', cue: { on: 'depth', depth_m: 2.4 }, text: 'roundTheLoop.card.done' },
  ],
  hazards: ['turningStem', 'rods', 'petrol', 'electric', 'pits', 'hoses'],
  questions: [
    {
      ask: 'roundTheLoop.ask.sound',
      answers: [
        'roundTheLoop.ask.sound.1',
        'roundTheLoop.ask.sound.2',
        'roundTheLoop.ask.sound.3',
        'roundTheLoop.ask.sound.4',
      ],
    },
    {
      ask: 'roundTheLoop.ask.why',
      answers: ['roundTheLoop.ask.why.1', 'roundTheLoop.ask.why.2', 'roundTheLoop.ask.why.3', 'roundTheLoop.ask.why.4'],
    },
    {
      ask: 'roundTheLoop.ask.next',
      answers: [
        'roundTheLoop.ask.next.1',
        'roundTheLoop.ask.next.2',
        'roundTheLoop.ask.next.3',
        'roundTheLoop.ask.next.4',
      ],
    },
  ],
};
