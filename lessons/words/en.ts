// All English words of the lessons in one typed record. English is the source; other languages follow its keys.

import { cli } from './en/cli';
import { firstRods } from './en/firstRods';
import { hazards } from './en/hazards';
import { openHole } from './en/openHole';
import { problems } from './en/problems';
import { rubric } from './en/rubric';

export const en = { ...firstRods, ...openHole, ...rubric, ...hazards, ...problems, ...cli } as const;
