// All English words of the lessons in one typed record. English is the source; other languages follow its keys.

import { blindWell } from './en/blindWell';
import { cli } from './en/cli';
import { firstRods } from './en/firstRods';
import { hazards } from './en/hazards';
import { openHole } from './en/openHole';
import { openWell } from './en/openWell';
import { problems } from './en/problems';
import { rubric } from './en/rubric';
import { wellRubric } from './en/wellRubric';
import { why } from './en/why';

export const en = {
  ...firstRods,
  ...openHole,
  ...openWell,
  ...blindWell,
  ...rubric,
  ...wellRubric,
  ...why,
  ...hazards,
  ...problems,
  ...cli,
} as const;
