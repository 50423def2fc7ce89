// All lessons, in the order they are learnt. Practices have a list of their own; both are found by their id.

import { PRACTICES } from '../practices/index';
import type { Lesson } from '../schema';
import { blindWellLesson } from './blind-well';
import { firstRodsLesson } from './first-rods';
import { openWellLesson } from './open-well';
import { casingDownLesson } from './casing-down';
import { clearWaterLesson } from './clear-water';
import { deepEnoughLesson } from './deep-enough';
import { theScreenLesson } from './the-screen';
import { theSealLesson } from './the-seal';

export const LESSONS: readonly Lesson[] = [
  firstRodsLesson,
  deepEnoughLesson,
  theScreenLesson,
  casingDownLesson,
  theSealLesson,
  clearWaterLesson,
  openWellLesson,
  blindWellLesson,
];

export function lessonById(id: string): Lesson | null {
  return [...LESSONS, ...PRACTICES].find((lesson) => lesson.id === id) ?? null;
}
