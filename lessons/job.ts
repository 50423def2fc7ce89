// What a crew is told of a lesson before it starts.

import type { Run, Scenario } from '$sim';
import type { Job } from './crews/crew';
import { startTick } from './own';
import type { Lesson } from './schema';

/**
 * What a crew is told of a lesson: the depth and the end of the day, a pit that is not the usual one, whether a log is wanted, of a well the site plan as well; nothing of the ground.
 * Only the crew that acts by chance makes use of the seed.
 */
export function jobOf(
  lesson: Lesson,
  scenario?: Pick<Scenario, 'ground'> & Partial<Pick<Scenario, 'seed'>>,
  start_tick = 0,
): Job {
  const { depth_m, cap_s, at } = lesson.end;
  const told = {
    ...(lesson.pit ? { pit_L: lesson.opening.pit_L } : {}),
    ...(lesson.rubric.some(({ item }) => item === 'changesFound') ? { log: true } : {}),
  };
  const common = { depth_m, time_s: start_tick + cap_s, chance: scenario?.seed ?? 0, ...told };
  if (!lesson.well || !scenario) return common;
  const { site, contamination } = scenario.ground;
  return { ...common, well: { site, contamination, ...(at === 'stopped' ? { holeOnly: true } : {}) } };
}

/** The same of a run that has begun: the day is counted from where the learner took over. */
export const jobFor = (run: Run, lesson: Lesson): Job => jobOf(lesson, run.scenario, startTick(run));
