// One crew's way through an exercise on one ground, from where the learner takes over to the end, with the moments at which things went wrong.

import { FAULT_COME, type Run } from '$sim';
import type { Crew } from '../../crews/crew';
import { grade, type Grade } from '../../grade';
import { markOf, type Mark, type Past } from '../../hindsight/index';
import { startTick } from '../../own';
import { crewFor, playing } from '../../play';
import type { Lesson } from '../../schema';
import { runFrom, SLICE_s, type Begun } from './begun';

/** A fault of the scenario that came: when, and a mark of the run from before. */
export interface Strike {
  /** Index among the scenario's faults. */
  readonly index: number;
  readonly tick: number;
  readonly mark: Mark;
}

export interface Way {
  readonly begun: Begun;
  readonly run: Run;
  readonly grade: Grade;
  /** Faults that came on the way; empty where nobody watched for them. */
  readonly strikes: readonly Strike[];
  /** Indices of those that had come before the learner did. */
  readonly before: readonly number[];
}

/** Job seconds between two marks while a fault is still to come. */
const MARK_EVERY_s = 600;
/** A crew needs about this share of the time that there is. Only for telling how far it is. */
const USUAL_frac = 0.5;

const comeIn = ({ state }: Run): number[] =>
  state.faults.due.flatMap((due, index) => (due === FAULT_COME ? [index] : []));

/** Watches for faults that come, tick by tick. */
class Watch {
  readonly strikes: Strike[] = [];
  #come: number[];
  #mark: Mark;

  constructor(run: Run) {
    this.#come = comeIn(run);
    this.#mark = markOf(run);
  }

  look(run: Run): void {
    const { faults, tick } = run.state;
    if (faults.left === faults.due.length - this.#come.length) {
      if (faults.left > 0 && tick - this.#mark.tick >= MARK_EVERY_s) this.#mark = markOf(run);
      return;
    }
    const now = comeIn(run);
    for (const index of now) if (!this.#come.includes(index)) this.strikes.push({ index, tick, mark: this.#mark });
    this.#come = now;
  }
}

/** Plays a crew from where the learner takes over to the end, watching for faults or not. Yields the share done now and then. */
export function* goingOn(
  begun: Begun,
  crewOf: (run: Run, lesson: Lesson) => Crew,
  watched = false,
): Generator<number, Way> {
  const { lesson } = begun;
  const run = runFrom(begun);
  const before = comeIn(run);
  const watch = watched && run.state.faults.left > 0 ? new Watch(run) : null;
  let told_s = run.state.tick;
  for (const _ of playing(run, lesson, crewOf(run, lesson), watch ? 1 : SLICE_s)) {
    watch?.look(run);
    if (run.state.tick - told_s < SLICE_s) continue;
    told_s = run.state.tick;
    yield Math.min(1, (told_s - startTick(run)) / (USUAL_frac * lesson.end.cap_s));
  }
  watch?.look(run);
  return { begun, run, grade: grade(run, lesson), strikes: watch?.strikes ?? [], before };
}

/** The same by the name of the crew. */
export const wayOf = (begun: Begun, crewName: string, watched = false): Generator<number, Way> =>
  goingOn(begun, (run, lesson) => crewFor(run, lesson, crewName), watched);

/** The finished run as looking back on it needs it. */
export const pastOf = ({ begun, run }: Way): Past => ({
  lesson: begun.lesson,
  scenario: run.scenario,
  log: run.log,
  record: run.record,
});
