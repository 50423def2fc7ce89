// All lessons, in the order they are learnt.

import type { Lesson } from '../schema';
import { firstRodsLesson } from './first-rods';

export const LESSONS: readonly Lesson[] = [firstRodsLesson];

export function lessonById(id: string): Lesson | null {
  return LESSONS.find((lesson) => lesson.id === id) ?? null;
}
