// Lesson 15, the pass: a whole well on ground that nobody shows, by samples, sounds and the neighbours' levels alone. No advice but the cautions.

import type { Lesson } from '../schema';
import { blindWellGround } from './blind-well-ground';
import { ALL_HANDS, WELL_HAZARDS, WELL_KIT, WELL_OPENING, WELL_RUBRIC, WELL_SENSES } from './whole-well';

/** There are rods for this depth, m. */
const DEEP_m = 16;

export const blindWellLesson: Lesson = {
  id: 'blind-well',
  version: 1,
  title: 'blindWell.title',
  outcomes: [
    'blindWell.outcome.signs',
    'blindWell.outcome.stop',
    'blindWell.outcome.seal',
    'blindWell.outcome.clean',
    'blindWell.outcome.record',
  ],
  briefing: [
    'blindWell.brief.job',
    'blindWell.brief.blind',
    'blindWell.brief.neighbours',
    'blindWell.brief.stores',
    'blindWell.brief.pass',
    'blindWell.brief.end',
  ],
  ground: blindWellGround,
  kit: {},
  view: 'blind',
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
      id: 'deep',
      ask: 'blindWell.hint.deep',
      levels: ['blindWell.hint.deep.1', 'blindWell.hint.deep.2', 'blindWell.hint.deep.3'],
    },
    {
      id: 'seal',
      ask: 'blindWell.hint.seal',
      levels: ['blindWell.hint.seal.1', 'blindWell.hint.seal.2', 'blindWell.hint.seal.3'],
    },
    {
      id: 'clean',
      ask: 'blindWell.hint.clean',
      levels: ['blindWell.hint.clean.1', 'blindWell.hint.clean.2', 'blindWell.hint.clean.3'],
    },
  ],
  cards: [{ id: 'start', cue: { on: 'start' }, text: 'blindWell.card.start' }],
  hazards: WELL_HAZARDS,
  questions: [
    {
      ask: 'blindWell.ask.stop',
      answers: [
        'blindWell.ask.stop.1',
        'blindWell.ask.stop.2',
        'blindWell.ask.stop.3',
        'blindWell.ask.stop.4',
        'blindWell.ask.stop.5',
      ],
    },
    {
      ask: 'blindWell.ask.unsure',
      answers: [
        'blindWell.ask.unsure.1',
        'blindWell.ask.unsure.2',
        'blindWell.ask.unsure.3',
        'blindWell.ask.unsure.4',
        'blindWell.ask.unsure.5',
      ],
    },
    {
      ask: 'blindWell.ask.drink',
      answers: ['blindWell.ask.drink.1', 'blindWell.ask.drink.2', 'blindWell.ask.drink.3', 'blindWell.ask.drink.4'],
    },
    {
      ask: 'blindWell.ask.next',
      answers: [
        'blindWell.ask.next.1',
        'blindWell.ask.next.2',
        'blindWell.ask.next.3',
        'blindWell.ask.next.4',
        'blindWell.ask.next.5',
      ],
    },
  ],
};
