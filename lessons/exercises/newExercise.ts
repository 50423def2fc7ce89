// An exercise to begin with: a lesson as it is, to be changed.

import { SIM_VERSION } from '$sim';
import type { LessonId } from '../contents';
import { EXERCISE_FORMAT, EXERCISE_FORMAT_VERSION, type Exercise } from './exerciseSchema';
import { baseOf } from './lessonOfExercise';

/** `id`: exercise- and some letters or digits that no other exercise has. `title`: in the instructor's language. */
export function newExercise(lesson: LessonId, id: string, title: string): Exercise {
  const base = baseOf({ lesson });
  return {
    format: EXERCISE_FORMAT,
    version: EXERCISE_FORMAT_VERSION,
    sim: SIM_VERSION,
    id,
    edition: 1,
    title,
    briefing: [],
    lesson,
    ground: { by: 'lesson' },
    stocks: {},
    view: base.view,
    senses: [...base.senses],
    gauges: [...base.gauges],
    hints: 3,
    coached: true,
    faults: base.faults.map((fault) => ({ ...fault })),
    live: false,
    cap_s: base.end.cap_s,
    pass_points: base.pass_points,
    weights: Object.fromEntries(base.rubric.map(({ item, weight }) => [item, weight])),
  };
}
