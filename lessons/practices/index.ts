// All practices as they are usually asked for, and one made to order.

import { SETTINGS } from '$sim';
import type { Lesson } from '../schema';
import { USUAL_ASKED, type Asked } from './asked';
import { openHole } from './open-hole';

const MAKERS: Readonly<Record<string, (asked: Asked) => Lesson>> = { 'open-hole': openHole };

export const PRACTICES: readonly Lesson[] = Object.values(MAKERS).map((make) => make(USUAL_ASKED));

/** A practice to order; null when there is none of that id. */
export function practiceFor(id: string, asked: Asked): Lesson | null {
  return Object.hasOwn(MAKERS, id) ? MAKERS[id]!(asked) : null;
}

/** A practice has nothing to be judged by. */
export const isScored = (lesson: Lesson): boolean => lesson.rubric.length > 0;

/** What was asked for, read from a practice; null for a lesson. */
export function askedOf(lesson: Lesson): Asked | null {
  if (!Object.hasOwn(MAKERS, lesson.id) || lesson.ground.by !== 'setting') return null;
  const wanted = lesson.ground.setting;
  const setting = SETTINGS.find((known) => known === wanted);
  if (setting === undefined) return null;
  return { depth_m: lesson.end.depth_m, setting, ...(lesson.opening.setOut ? { bare: true } : {}) };
}
