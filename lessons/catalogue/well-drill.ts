// What the drills about a well have in common: a cart for nine rods, one bit, one pump, all that a well is made of.

import type { Lesson } from '../schema';
import { WELL_KIT, WELL_OPENING } from './whole-well';

export const WELL_DRILL_OPENING: Lesson['opening'] = { ...WELL_OPENING, rodsInAll: 9, maxDepth_m: 14 };

export const WELL_DRILL_KIT: NonNullable<Lesson['well']> = { ...WELL_KIT, bits_mm: [100], pumps: ['small'] };
