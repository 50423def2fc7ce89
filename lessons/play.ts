// A crew plays a lesson from the start to its end, by the same acts as a learner.

import { act, createRun, sensesOf, step, type Run } from '$sim';
import { createCrew } from './crews/index';
import type { Crew, Job } from './crews/crew';
import { isOver } from './over';
import { scenarioOf } from './scenario';
import type { Lesson } from './schema';

/** Lets the crew go on with a run until the lesson is over. */
export function playOn(run: Run, lesson: Lesson, crew: Crew): Run {
  while (!isOver(run, lesson)) {
    const deed = crew.decide(sensesOf(run));
    if (deed !== null) act(run, deed.action, deed.payload);
    if (!isOver(run, lesson)) step(run);
  }
  return run;
}

/** What a crew is told of a lesson: the depth and the day, nothing of the ground. */
export const jobOf = (lesson: Lesson): Job => ({ depth_m: lesson.end.depth_m, time_s: lesson.end.cap_s });

export function playCrew(lesson: Lesson, crewName: string, seed: number): Run {
  return playOn(createRun(scenarioOf(lesson, seed)), lesson, createCrew(crewName, jobOf(lesson)));
}
