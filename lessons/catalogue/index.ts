// All lessons, in the order they are learnt. Practices have a list of their own; both are found by their id.

import { PRACTICES } from '../practices/index';
import type { Lesson } from '../schema';
import { blindWellLesson } from './blind-well';
import { firstRodsLesson } from './first-rods';
import { openWellLesson } from './open-well';

export const LESSONS: readonly Lesson[] = [firstRodsLesson, openWellLesson, blindWellLesson];

export function lessonById(id: string): Lesson | null {
  return [...LESSONS, ...PRACTICES].find((lesson) => lesson.id === id) ?? null;
}
