// A crew plays a lesson from the start to its end, by the same acts as a learner.

import { act, sensesOf, step, type Run } from '$sim';
import { createCrew } from './crews/index';
import type { Crew } from './crews/crew';
import { takeOver } from './handing/takeOver';
import { jobFor } from './job';
import { isOver } from './over';
import { startRun } from './start';
import type { Lesson } from './schema';

/** The crew looks and does one act or none. */
export function crewActs(run: Run, crew: Crew): void {
  const deed = crew.decide(sensesOf(run));
  if (deed !== null) act(run, deed.action, deed.payload);
}

/** A crew of that name for a run as it stands: where others have worked before, it knows what they did. */
export function crewFor(run: Run, lesson: Lesson, name: string): Crew {
  const job = jobFor(run, lesson);
  return run.log.length === 0 ? createCrew(name, job) : takeOver(name, job, run);
}

/** The crew that the rest was left to; null where it was not. */
export function restCrew(run: Run, lesson: Lesson): Crew | null {
  return lesson.leaves && run.state.leaving === 'left' ? crewFor(run, lesson, lesson.leaves.crew) : null;
}

/**
 * Lets the crew go on with a run until the lesson is over; where the rest may be left to another, it is, as soon as may be.
 * Stops for a moment each so many job seconds, so that other work can be done between.
 */
export function* playing(run: Run, lesson: Lesson, first: Crew, slice_s: number): Generator<void, void> {
  let left_s = slice_s;
  let crew = first;
  let rest = false;
  while (!isOver(run, lesson)) {
    if (run.state.leaving === 'offered') act(run, 'leaveToCrew', {});
    if (run.state.leaving === 'left' && !rest) {
      rest = true;
      crew = restCrew(run, lesson) ?? crew;
    }
    crewActs(run, crew);
    // Who waits looks up again when the wait is over: with what it waited for, or with anything that a crew would turn round for.
    do {
      if (!isOver(run, lesson)) step(run);
      if (--left_s <= 0) {
        left_s = slice_s;
        yield;
      }
    } while (run.state.wait !== null && !isOver(run, lesson));
  }
}

/** The same without a stop. */
export function playOn(run: Run, lesson: Lesson, crew: Crew): Run {
  playing(run, lesson, crew, Infinity).next();
  return run;
}

export function playCrew(lesson: Lesson, crewName: string, seed: number): Run {
  const run = startRun(lesson, seed);
  return playOn(run, lesson, crewFor(run, lesson, crewName));
}
