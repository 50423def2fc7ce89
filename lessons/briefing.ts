// The briefing as sentences with their data: what a text may say of the opening comes from the opening itself.

import type { Lesson } from './schema';
import type { Said, WordData } from './words/index';

/** Data for every text of the lesson: the stocks at hand and the goal. */
export function lessonData(lesson: Lesson): WordData {
  const { powder_kg, water_L, petrol_L, pit_L, rodsInAll } = lesson.opening;
  return { powder_kg, water_L, petrol_L, pit_L, rodsInAll, rods: lesson.end.rods, goal_m: lesson.end.depth_m };
}

export function briefingOf(lesson: Lesson): Said[] {
  const data = lessonData(lesson);
  return lesson.briefing.map((key) => ({ key, data }));
}
