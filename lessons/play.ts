// A crew plays a lesson from the start to its end, by the same acts as a learner.

import { act, createRun, sensesOf, step, type Run, type Scenario } from '$sim';
import { createCrew } from './crews/index';
import type { Crew, Job } from './crews/crew';
import { isOver } from './over';
import { scenarioOf } from './scenario';
import type { Lesson } from './schema';

/** Lets the crew go on with a run until the lesson is over; stops for a moment each so many job seconds, so that other work can be done between. */
export function* playing(run: Run, lesson: Lesson, crew: Crew, slice_s: number): Generator<void, void> {
  let left_s = slice_s;
  while (!isOver(run, lesson)) {
    const deed = crew.decide(sensesOf(run));
    if (deed !== null) act(run, deed.action, deed.payload);
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

/** What a crew is told of a lesson: the depth and the day, of a well the site plan as well; nothing of the ground. Only the crew that acts by chance makes use of the seed. */
export function jobOf(lesson: Lesson, scenario?: Pick<Scenario, 'ground'> & Partial<Pick<Scenario, 'seed'>>): Job {
  const { depth_m, cap_s: time_s } = lesson.end;
  const chance = scenario?.seed ?? 0;
  if (!lesson.well || !scenario) return { depth_m, time_s, chance };
  const { site, contamination } = scenario.ground;
  return { depth_m, time_s, chance, well: { site, contamination } };
}

export function playCrew(lesson: Lesson, crewName: string, seed: number): Run {
  const scenario = scenarioOf(lesson, seed);
  return playOn(createRun(scenario), lesson, createCrew(crewName, jobOf(lesson, scenario)));
}
