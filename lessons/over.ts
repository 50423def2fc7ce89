// When a run of a lesson is over, and how it ended.

import { jobOver, type Run } from '$sim';
import { startTick } from './own';
import { isScored } from './practices/index';
import type { Lesson } from './schema';
import type { Said } from './words/index';

/** The learner's time is up. */
const timeUp = (run: Run, lesson: Lesson): boolean => run.state.tick - startTick(run) >= lesson.end.cap_s;

/** The job is done, the hole given up, or the time is over. */
export function isOver(run: Run, lesson: Lesson): boolean {
  return jobOver(run) || timeUp(run, lesson);
}

/** The lesson ends with the hole, not with a well handed over. */
export const endsAtStop = ({ well, end }: Lesson): boolean => !well || end.at === 'stopped';

export function outcomeOf(run: Run, lesson: Lesson): Said {
  const { job } = run.state.machine;
  const data = { depth_m: Math.round(run.state.hole.depth_m * 100) / 100 };
  if (job === 'abandoned') return { key: 'outcome.givenUp', data };
  if (job === 'handedOver') return { key: 'outcome.handedOver', data };
  if (job === 'pullingOut' && endsAtStop(lesson)) {
    // With a well in view the crew itself decides how deep it goes.
    if (lesson.well) return { key: 'outcome.drilled', data };
    const reached = run.state.hole.depth_m >= lesson.end.depth_m && run.state.stem.rods >= lesson.end.rods;
    if (!reached) return { key: 'outcome.stoppedShort', data };
    return { key: isScored(lesson) ? 'outcome.reached' : 'outcome.depthReached', data };
  }
  if (!timeUp(run, lesson)) return { key: 'outcome.running', data };
  return { key: endsAtStop(lesson) ? 'outcome.timeUp' : 'outcome.noWell', data };
}
