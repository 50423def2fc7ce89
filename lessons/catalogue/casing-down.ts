// Lesson 11, the way down: rods out, joints, casing in, what hangs, and the pack.

import type { Lesson } from '../schema';
import { WELL_DRILL_KIT, WELL_DRILL_OPENING } from './well-drill';
import { ALL_HANDS, WELL_SENSES } from './whole-well';

/** Loose sand with ground water near the surface: the wall stands by the level in the hole alone. */
const ground: Lesson['ground'] = {
  by: 'recipe',
  recipes: [
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'silt', thickness_m: [0.8, 1.2] },
        { kind: 'fineSand', thickness_m: [0.8, 1.2] },
        { kind: 'mediumSand', thickness_m: [1, 1.5] },
        { kind: 'coarseSand', thickness_m: [5, 6] },
        { kind: 'firmClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [0.6, 1],
      swing_m: [0.8, 1.2],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'siltySand', thickness_m: [0.8, 1.2] },
        { kind: 'mediumSand', thickness_m: [1.5, 2] },
        { kind: 'coarseSand', thickness_m: [5, 6] },
        { kind: 'silt', thickness_m: [15, 20] },
      ],
      waterTable_m: [0.6, 1],
      swing_m: [0.8, 1.2],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'silt', thickness_m: [0.6, 0.9] },
        { kind: 'softClay', thickness_m: [0.5, 0.8] },
        { kind: 'fineSand', thickness_m: [0.8, 1.2] },
        { kind: 'coarseSand', thickness_m: [5.5, 6.5] },
        { kind: 'stiffClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [0.6, 1],
      swing_m: [0.8, 1.2],
    },
  ],
};

export const casingDownLesson: Lesson = {
  id: 'casing-down',
  version: 1,
  title: 'casingDown.title',
  outcomes: [
    'casingDown.outcome.pull',
    'casingDown.outcome.joints',
    'casingDown.outcome.run',
    'casingDown.outcome.hung',
    'casingDown.outcome.pack',
  ],
  briefing: [
    'casingDown.brief.job',
    'casingDown.brief.water',
    'casingDown.brief.stem',
    'casingDown.brief.pack',
    'casingDown.brief.end',
  ],
  ground,
  kit: {},
  view: 'hole',
  senses: WELL_SENSES,
  gauges: [],
  hands: ALL_HANDS,
  opening: WELL_DRILL_OPENING,
  well: WELL_DRILL_KIT,
  end: { rods: 9, depth_m: 13.5, cap_s: 259200 },
  prologue: { crew: 'careful', until: { event: 'wellPlanned' } },
  leaves: { crew: 'careful', from: 'sounded' },
  faults: [],
  pass_points: 70,
  rubric: [
    { item: 'levelKept', weight: 20, bands: { full_m: 0.4, none_m: 1 } },
    { item: 'casingSoon', weight: 12, bands: { full_s: 900, none_s: 3600 } },
    { item: 'casingDown', weight: 18, essential: true, bands: { full_m: 0.15, none_m: 1 } },
    { item: 'jointsSet', weight: 10, bands: { set_s: 300 } },
    { item: 'hungGently', weight: 6, bands: { full_s: 60, none_s: 150 } },
    { item: 'packFell', weight: 14, bands: {} },
    { item: 'packDone', weight: 12, bands: { above_m: 0.5, sound_frac: 0.5 } },
    { item: 'cautionsRead', weight: 8, bands: {} },
  ],
  hints: [
    {
      id: 'ready',
      ask: 'casingDown.hint.ready',
      levels: ['casingDown.hint.ready.1', 'casingDown.hint.ready.2', 'casingDown.hint.ready.3'],
    },
    {
      id: 'pull',
      ask: 'casingDown.hint.pull',
      levels: ['casingDown.hint.pull.1', 'casingDown.hint.pull.2', 'casingDown.hint.pull.3'],
    },
    {
      id: 'hung',
      ask: 'casingDown.hint.hung',
      levels: ['casingDown.hint.hung.1', 'casingDown.hint.hung.2', 'casingDown.hint.hung.3'],
    },
    {
      id: 'pack',
      ask: 'casingDown.hint.pack',
      levels: ['casingDown.hint.pack.1', 'casingDown.hint.pack.2', 'casingDown.hint.pack.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'casingDown.card.start' },
    { id: 'joined', cue: { on: 'event', event: 'casingJoined' }, text: 'casingDown.card.joined' },
    { id: 'stopped', cue: { on: 'event', event: 'drillingStopped' }, text: 'casingDown.card.stopped' },
    { id: 'pulled', cue: { on: 'event', event: 'stemPulled' }, text: 'casingDown.card.pulled' },
    { id: 'hung', cue: { on: 'event', event: 'casingHung' }, text: 'casingDown.card.hung' },
    { id: 'floats', cue: { on: 'event', event: 'casingFloats' }, text: 'casingDown.card.floats' },
    { id: 'snapped', cue: { on: 'event', event: 'casingSnapped' }, text: 'casingDown.card.snapped' },
    { id: 'landed', cue: { on: 'event', event: 'casingLanded' }, text: 'casingDown.card.landed' },
    { id: 'poured', cue: { on: 'event', event: 'packPoured' }, text: 'casingDown.card.poured' },
    { id: 'sounded', cue: { on: 'event', event: 'sounded' }, text: 'casingDown.card.sounded' },
    { id: 'left', cue: { on: 'event', event: 'leftToCrew' }, text: 'casingDown.card.left' },
  ],
  hazards: ['turningStem', 'rods', 'pits', 'lifting', 'glue', 'hoses'],
  questions: [
    {
      ask: 'casingDown.ask.level',
      answers: ['casingDown.ask.level.1', 'casingDown.ask.level.2', 'casingDown.ask.level.3', 'casingDown.ask.level.4'],
    },
    {
      ask: 'casingDown.ask.pack',
      answers: ['casingDown.ask.pack.1', 'casingDown.ask.pack.2', 'casingDown.ask.pack.3'],
    },
    {
      ask: 'casingDown.ask.next',
      answers: [
        'casingDown.ask.next.1',
        'casingDown.ask.next.2',
        'casingDown.ask.next.3',
        'casingDown.ask.next.4',
        'casingDown.ask.next.5',
      ],
    },
  ],
};
