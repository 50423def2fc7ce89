// The part of a lesson that is left open when all before it has been shown.

import type { Lesson } from '../schema';
import type { Until } from '../start';

/** The last rod, m, and the least that is left of a short hole. */
const ROD_m = 1.5;
const LEAST_frac = 0.4;

/**
 * Up to where a crew shows the way before the learner goes on alone: a hole up to its last rod, a well up to the end of the drilling, or,
 * where the casing stands already, up to its test. null where the lesson is one decision only: then there is nothing to show before it.
 */
export function lastPartFrom({ leaves, well, end, prologue }: Lesson): Until | null {
  if (leaves) return null;
  if (well && end.at !== 'stopped') return { event: prologue ? 'testDone' : 'drillingStopped' };
  return { depth_m: Math.max(end.depth_m - ROD_m, end.depth_m * (1 - LEAST_frac)) };
}
