// Lesson 13, clear water: polymer broken, washed, tested, a pump that reaches the driest level, disinfected, handed over.

import type { Lesson } from '../schema';
import { WELL_DRILL_KIT, WELL_DRILL_OPENING } from './well-drill';
import { ALL_HANDS, WELL_SENSES } from './whole-well';

/** Water stands four metres down now, and six and a half to seven and a half in the driest month: beyond what a pump at the surface lifts. */
const ground: Lesson['ground'] = {
  by: 'recipe',
  recipes: [
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'silt', thickness_m: [1.2, 1.6] },
        { kind: 'fineSand', thickness_m: [2, 2.5] },
        { kind: 'mediumSand', thickness_m: [2.2, 2.8] },
        { kind: 'coarseSand', thickness_m: [5.5, 6] },
        { kind: 'firmClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [4, 4.5],
      swing_m: [2.6, 3],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'firmClay', thickness_m: [1.2, 1.6] },
        { kind: 'siltySand', thickness_m: [2, 2.5] },
        { kind: 'mediumSand', thickness_m: [2.2, 2.8] },
        { kind: 'coarseSand', thickness_m: [5.5, 6] },
        { kind: 'silt', thickness_m: [15, 20] },
      ],
      waterTable_m: [4, 4.5],
      swing_m: [2.6, 3],
    },
    {
      layers: [
        { kind: 'topsoil', thickness_m: [0.3, 0.5] },
        { kind: 'silt', thickness_m: [1.2, 1.6] },
        { kind: 'fineSand', thickness_m: [2.4, 3] },
        { kind: 'coarseSand', thickness_m: [8, 8.5] },
        { kind: 'stiffClay', thickness_m: [15, 20] },
      ],
      waterTable_m: [4, 4.5],
      swing_m: [2.6, 3],
    },
  ],
};

export const clearWaterLesson: Lesson = {
  id: 'clear-water',
  version: 1,
  title: 'clearWater.title',
  outcomes: [
    'clearWater.outcome.wash',
    'clearWater.outcome.test',
    'clearWater.outcome.lift',
    'clearWater.outcome.disinfect',
    'clearWater.outcome.record',
  ],
  briefing: [
    'clearWater.brief.job',
    'clearWater.brief.powder',
    'clearWater.brief.dry',
    'clearWater.brief.chlorine',
    'clearWater.brief.end',
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
  prologue: { crew: 'careful', until: { before: 'breakPolymer' } },
  faults: [],
  pass_points: 70,
  rubric: [
    {
      item: 'developed',
      weight: 24,
      essential: true,
      bands: { full_frac: 0.85, none_frac: 0.5, full_NTU: 5, none_NTU: 50 },
    },
    { item: 'polymerBreak', weight: 8, bands: { full_mgL: 500, none_mgL: 100, full_s: 7200, none_s: 0 } },
    { item: 'sandFree', weight: 6, bands: { full_mgL: 5, none_mgL: 50 } },
    { item: 'testRun', weight: 15, bands: { test_s: 7200, recovery_s: 1800 } },
    { item: 'liftFits', weight: 16, bands: {} },
    { item: 'disinfected', weight: 14, essential: true, bands: {} },
    { item: 'chlorineGone', weight: 5, bands: { full_mgL: 0.5, none_mgL: 5 } },
    { item: 'recordKept', weight: 6, bands: { fields: 8 } },
    { item: 'cautionsRead', weight: 6, bands: {} },
  ],
  hints: [
    {
      id: 'wash',
      ask: 'clearWater.hint.wash',
      levels: ['clearWater.hint.wash.1', 'clearWater.hint.wash.2', 'clearWater.hint.wash.3'],
    },
    {
      id: 'clean',
      ask: 'clearWater.hint.clean',
      levels: ['clearWater.hint.clean.1', 'clearWater.hint.clean.2', 'clearWater.hint.clean.3'],
    },
    {
      id: 'lift',
      ask: 'clearWater.hint.lift',
      levels: ['clearWater.hint.lift.1', 'clearWater.hint.lift.2', 'clearWater.hint.lift.3'],
    },
    {
      id: 'disinfect',
      ask: 'clearWater.hint.disinfect',
      levels: ['clearWater.hint.disinfect.1', 'clearWater.hint.disinfect.2', 'clearWater.hint.disinfect.3'],
    },
  ],
  cards: [
    { id: 'start', cue: { on: 'start' }, text: 'clearWater.card.start' },
    { id: 'broken', cue: { on: 'action', action: 'breakPolymer' }, text: 'clearWater.card.broken' },
    { id: 'washing', cue: { on: 'action', action: 'develop' }, text: 'clearWater.card.washing' },
    { id: 'clear', cue: { on: 'event', event: 'wellClear' }, text: 'clearWater.card.clear' },
    { id: 'dipped', cue: { on: 'event', event: 'dipped' }, text: 'clearWater.card.dipped' },
    { id: 'test', cue: { on: 'event', event: 'testDone' }, text: 'clearWater.card.test' },
    { id: 'disinfected', cue: { on: 'event', event: 'disinfected' }, text: 'clearWater.card.disinfected' },
    { id: 'head-works', cue: { on: 'event', event: 'headWorksDone' }, text: 'clearWater.card.headWorks' },
  ],
  hazards: ['petrol', 'hoses', 'chlorine', 'water'],
  questions: [
    {
      ask: 'clearWater.ask.wash',
      answers: ['clearWater.ask.wash.1', 'clearWater.ask.wash.2', 'clearWater.ask.wash.3', 'clearWater.ask.wash.4'],
    },
    {
      ask: 'clearWater.ask.lift',
      answers: ['clearWater.ask.lift.1', 'clearWater.ask.lift.2', 'clearWater.ask.lift.3'],
    },
    {
      ask: 'clearWater.ask.next',
      answers: [
        'clearWater.ask.next.1',
        'clearWater.ask.next.2',
        'clearWater.ask.next.3',
        'clearWater.ask.next.4',
        'clearWater.ask.next.5',
      ],
    },
  ],
};
