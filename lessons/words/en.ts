// All English words of the lessons in one typed record. English is the source; other languages follow its keys.

import { badDay } from './en/badDay';
import { blindWell } from './en/blindWell';
import { cli } from './en/cli';
import { casingDown } from './en/casingDown';
import { clearWater } from './en/clearWater';
import { deepEnough } from './en/deepEnough';
import { drillRubric } from './en/drillRubric';
import { theScreen } from './en/theScreen';
import { theSeal } from './en/theSeal';
import { contents } from './en/contents';
import { exercises } from './en/exercises';
import { lint } from './en/lint';
import { firstRods } from './en/firstRods';
import { holeDrillRubric } from './en/holeDrillRubric';
import { hazards } from './en/hazards';
import { openHole } from './en/openHole';
import { openWell } from './en/openWell';
import { problems } from './en/problems';
import { roundTheLoop } from './en/roundTheLoop';
import { slickFluid } from './en/slickFluid';
import { standingSand } from './en/standingSand';
import { fallingPit } from './en/fallingPit';
import { stiffClay } from './en/stiffClay';
import { fullPit } from './en/fullPit';
import { readingTheTray } from './en/readingTheTray';
import { rubric } from './en/rubric';
import { wellRubric } from './en/wellRubric';
import { why } from './en/why';

export const en = {
  ...roundTheLoop,
  ...contents,
  ...firstRods,
  ...slickFluid,
  ...standingSand,
  ...fallingPit,
  ...stiffClay,
  ...fullPit,
  ...readingTheTray,
  ...openHole,
  ...openWell,
  ...blindWell,
  ...badDay,
  ...rubric,
  ...casingDown,
  ...clearWater,
  ...deepEnough,
  ...drillRubric,
  ...holeDrillRubric,
  ...theScreen,
  ...theSeal,
  ...wellRubric,
  ...why,
  ...hazards,
  ...problems,
  ...exercises,
  ...lint,
  ...cli,
} as const;
