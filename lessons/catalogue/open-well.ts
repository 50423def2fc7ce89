// Lesson 14, a whole well with the ground shown: spot, hole, plan, casing, pack, seal, development, test, hand-over.

import type { Lesson } from '../schema';
import { openWellGround } from './open-well-ground';
import { ALL_HANDS, WELL_HAZARDS, WELL_KIT, WELL_OPENING, WELL_RUBRIC, WELL_SENSES } from './whole-well';

/** What the neighbours tell: usable sand and gravel lie above this depth, m. */
const DEEP_m = 15;

export const openWellLesson: Lesson = {
  id: 'open-well',
  version: 2,
  title: 'openWell.title',
  outcomes: [
    'openWell.outcome.site',
    'openWell.outcome.screen',
    'openWell.outcome.casing',
    'openWell.outcome.seal',
    'openWell.outcome.clear',
  ],
  briefing: [
    'openWell.brief.job',
    'openWell.brief.site',
    'openWell.brief.ground',
    'openWell.brief.deep',
    'openWell.brief.powder',
    'openWell.brief.plan',
    'openWell.brief.end',
  ],
  ground: openWellGround,
  kit: {},
  view: 'open',
  senses: WELL_SENSES,
  gauges: [],
  hands: ALL_HANDS,
  opening: WELL_OPENING,
  well: WELL_KIT,
  end: { rods: 12, depth_m: DEEP_m, cap_s: 259200 },
  faults: [],
  pass_points: 70,
  rubric: WELL_RUBRIC,
  hints: [
    {
      id: 'spot',
      ask: 'openWell.hint.spot',
      levels: ['openWell.hint.spot.1', 'openWell.hint.spot.2', 'openWell.hint.spot.3'],
    },
    {
      id: 'deep',
      ask: 'openWell.hint.deep',
      levels: ['openWell.hint.deep.1', 'openWell.hint.deep.2', 'openWell.hint.deep.3'],
    },
    {
      id: 'screen',
      ask: 'openWell.hint.screen',
      levels: ['openWell.hint.screen.1', 'openWell.hint.screen.2', 'openWell.hint.screen.3'],
    },
    {
      id: 'pull',
      ask: 'openWell.hint.pull',
      levels: ['openWell.hint.pull.1', 'openWell.hint.pull.2', 'openWell.hint.pull.3'],
    },
    {
      id: 'seal',
      ask: 'openWell.hint.seal',
      levels: ['openWell.hint.seal.1', 'openWell.hint.seal.2', 'openWell.hint.seal.3'],
    },
    {
      id: 'wash',
      ask: 'openWell.hint.wash',
      levels: ['openWell.hint.wash.1', 'openWell.hint.wash.2', 'openWell.hint.wash.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'openWell.card.start' },
    { id: 'site', cue: { on: 'event', event: 'siteChosen' }, text: 'openWell.card.site' },
    { id: 'dug', cue: { on: 'action', action: 'setOut' }, text: 'openWell.card.dug' },
    { id: 'flow', cue: { on: 'event', event: 'flowStarted' }, text: 'openWell.card.flow' },
    { id: 'sample', cue: { on: 'depth', depth_m: 1.2 }, text: 'openWell.card.sample' },
    { id: 'caught', cue: { on: 'event', event: 'sampleCaught' }, text: 'openWell.card.caught' },
    { id: 'rod-down', cue: { on: 'event', event: 'rodDown' }, text: 'openWell.card.rodDown' },
    { id: 'deep', cue: { on: 'depth', depth_m: 8 }, text: 'openWell.card.deep' },
    { id: 'lost', cue: { on: 'event', event: 'returnsLost' }, text: 'openWell.card.lost' },
    { id: 'buried', cue: { on: 'event', event: 'buried' }, text: 'openWell.card.buried' },
    { id: 'stop', cue: { on: 'event', event: 'drillingStopped' }, text: 'openWell.card.stop' },
    { id: 'planned', cue: { on: 'event', event: 'wellPlanned' }, text: 'openWell.card.planned' },
    { id: 'pulled', cue: { on: 'event', event: 'stemPulled' }, text: 'openWell.card.pulled' },
    { id: 'hung', cue: { on: 'event', event: 'casingHung' }, text: 'openWell.card.hung' },
    { id: 'floats', cue: { on: 'event', event: 'casingFloats' }, text: 'openWell.card.floats' },
    { id: 'snapped', cue: { on: 'event', event: 'casingSnapped' }, text: 'openWell.card.snapped' },
    { id: 'landed', cue: { on: 'event', event: 'casingLanded' }, text: 'openWell.card.landed' },
    { id: 'poured', cue: { on: 'event', event: 'packPoured' }, text: 'openWell.card.poured' },
    { id: 'sounded', cue: { on: 'event', event: 'sounded' }, text: 'openWell.card.sounded' },
    { id: 'seal', cue: { on: 'event', event: 'sealPlaced' }, text: 'openWell.card.sealPlaced' },
    { id: 'seal-set', cue: { on: 'event', event: 'sealSet' }, text: 'openWell.card.sealSet' },
    { id: 'clear', cue: { on: 'event', event: 'wellClear' }, text: 'openWell.card.clear' },
    { id: 'test', cue: { on: 'event', event: 'testDone' }, text: 'openWell.card.test' },
    { id: 'disinfected', cue: { on: 'event', event: 'disinfected' }, text: 'openWell.card.disinfected' },
    { id: 'head-works', cue: { on: 'event', event: 'headWorksDone' }, text: 'openWell.card.headWorks' },
  ],
  hazards: WELL_HAZARDS,
  questions: [
    {
      ask: 'openWell.ask.screen',
      answers: ['openWell.ask.screen.1', 'openWell.ask.screen.2', 'openWell.ask.screen.3', 'openWell.ask.screen.4'],
    },
    {
      ask: 'openWell.ask.seal',
      answers: ['openWell.ask.seal.1', 'openWell.ask.seal.2', 'openWell.ask.seal.3', 'openWell.ask.seal.4'],
    },
    {
      ask: 'openWell.ask.wash',
      answers: ['openWell.ask.wash.1', 'openWell.ask.wash.2', 'openWell.ask.wash.3', 'openWell.ask.wash.4'],
    },
    {
      ask: 'openWell.ask.next',
      answers: [
        'openWell.ask.next.1',
        'openWell.ask.next.2',
        'openWell.ask.next.3',
        'openWell.ask.next.4',
        'openWell.ask.next.5',
        'openWell.ask.next.6',
      ],
    },
  ],
};
