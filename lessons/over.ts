// When a run of a lesson is over, and how it ended.

import { jobOver, type Run } from '$sim';
import { isScored } from './practices/index';
import type { Lesson } from './schema';
import type { Said } from './words/index';

/** The job is done, the hole given up, or the time is over. */
export function isOver(run: Run, lesson: Lesson): boolean {
  return jobOver(run) || run.state.tick >= lesson.end.cap_s;
}

export function outcomeOf(run: Run, lesson: Lesson): Said {
  const { job } = run.state.machine;
  const data = { depth_m: Math.round(run.state.hole.depth_m * 100) / 100 };
  if (job === 'abandoned') return { key: 'outcome.givenUp', data };
  if (job === 'handedOver') return { key: 'outcome.handedOver', data };
  if (job === 'pullingOut' && !lesson.well) {
    const reached = run.state.hole.depth_m >= lesson.end.depth_m && run.state.stem.rods >= lesson.end.rods;
    if (!reached) return { key: 'outcome.stoppedShort', data };
    return { key: isScored(lesson) ? 'outcome.reached' : 'outcome.depthReached', data };
  }
  if (run.state.tick < lesson.end.cap_s) return { key: 'outcome.running', data };
  return { key: lesson.well ? 'outcome.noWell' : 'outcome.timeUp', data };
}
