// How a run of a lesson begins: at the first second, or where another crew that worked before is relieved.

import { act, createRun, jobOver, sensesOf, step, type Run } from '$sim';
import { createCrew } from './crews/index';
import type { Crew, Job } from './crews/crew';
import { jobOf } from './job';
import { scenarioOf } from './scenario';
import type { Lesson } from './schema';

/** The crew before has no hurry; but a job that takes it longer than this has gone wrong, s. */
const LONGEST_s = 259200;

export type Until = NonNullable<Lesson['prologue']>['until'];

/** A start under way: the work of the crew before, played in parts so that a page stays alive. */
export interface Start {
  readonly run: Run;
  /** Share of the way, 0 to 1, by the depth of the hole; what comes after the drilling is quickly played. */
  readonly share_frac: number;
  /** Plays on for so many job seconds at most; true when the learner can take over. Throws a RangeError when the crew before never gets there. */
  advance(most_s: number): boolean;
}

/** Whether what the crew was to do is done; looks only at events not looked at before. */
export function watcher(run: Run, until: Until): () => boolean {
  if ('depth_m' in until) return () => run.state.hole.depth_m >= until.depth_m;
  if ('before' in until) return () => false;
  let seen = 0;
  return () => {
    const { events } = run.record;
    while (seen < events.length) if (events[seen++]!.name === until.event) return true;
    return false;
  };
}

/** The crew before has the same job and no hurry; where it only ends the hole it leaves plan and casing to whoever relieves it. */
function jobBefore({ prologue }: Lesson, job: Job): Job {
  const holeOnly = prologue && 'event' in prologue.until && prologue.until.event === 'drillingStopped';
  const asked = { ...(holeOnly ? { holeOnly } : {}), ...(prologue?.seal ? { seal: prologue.seal } : {}) };
  return { ...job, time_s: LONGEST_s, ...(job.well ? { well: { ...job.well, ...asked } } : {}) };
}

/** `noise`: as in scenarioOf. */
export function openStart(lesson: Lesson, seed: number, practice = true, noise?: number): Start {
  const scenario = scenarioOf(lesson, seed, practice, noise);
  const run = createRun(scenario);
  const { prologue } = lesson;
  if (!prologue) return { run, share_frac: 1, advance: () => true };
  const crew: Crew = createCrew(prologue.crew, jobBefore(lesson, jobOf(lesson, scenario)));
  const done = watcher(run, prologue.until);
  const relieve = (): true => {
    act(run, 'relieveCrew', {});
    return true;
  };
  return {
    run,
    get share_frac() {
      return run.state.relief ? 1 : Math.min(1, run.state.hole.depth_m / reachOf_m(lesson));
    },
    advance(most_s) {
      if (run.state.relief) return true;
      const last = run.state.tick + most_s;
      while (run.state.tick < last) {
        if (jobOver(run) || run.state.tick > LONGEST_s)
          throw new RangeError(`The crew before does not get there on seed ${seed}.`);
        if (run.state.wait === null) {
          const deed = crew.decide(sensesOf(run));
          if (deed !== null && 'before' in prologue.until && deed.action === prologue.until.before) return relieve();
          if (deed !== null) act(run, deed.action, deed.payload);
          if (done()) return relieve();
        }
        step(run);
        if (done()) return relieve();
      }
      return false;
    },
  };
}

/** The depth by which the way is reckoned, m. */
function reachOf_m({ prologue, end }: Lesson): number {
  return prologue && 'depth_m' in prologue.until ? prologue.until.depth_m : end.depth_m;
}

/** A run as the learner finds it. The same lesson and seed always give the same one. */
export function startRun(lesson: Lesson, seed: number, practice = true): Run {
  const start = openStart(lesson, seed, practice);
  while (!start.advance(LONGEST_s));
  return start.run;
}
