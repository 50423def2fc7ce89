// All lessons, in the order they are learnt. Practices have a list of their own; both are found by their id.

import { PRACTICES } from '../practices/index';
import type { Lesson } from '../schema';
import { badDayLesson } from './bad-day';
import { blindWellLesson } from './blind-well';
import { firstRodsLesson } from './first-rods';
import { openWellLesson } from './open-well';
import { casingDownLesson } from './casing-down';
import { clearWaterLesson } from './clear-water';
import { deepEnoughLesson } from './deep-enough';
import { theScreenLesson } from './the-screen';
import { theSealLesson } from './the-seal';
import { slickFluidLesson } from './slick-fluid';
import { standingSandLesson } from './standing-sand';
import { fallingPitLesson } from './falling-pit';
import { stiffClayLesson } from './stiff-clay';
import { fullPitLesson } from './full-pit';
import { readingTheTrayLesson } from './reading-the-tray';
import { roundTheLoopLesson } from './round-the-loop';

export const LESSONS: readonly Lesson[] = [
  roundTheLoopLesson,
  firstRodsLesson,
  slickFluidLesson,
  readingTheTrayLesson,
  standingSandLesson,
  fallingPitLesson,
  stiffClayLesson,
  fullPitLesson,
  deepEnoughLesson,
  theScreenLesson,
  casingDownLesson,
  theSealLesson,
  clearWaterLesson,
  openWellLesson,
  blindWellLesson,
  badDayLesson,
];

export function lessonById(id: string): Lesson | null {
  return [...LESSONS, ...PRACTICES].find((lesson) => lesson.id === id) ?? null;
}
