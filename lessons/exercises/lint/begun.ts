// A ground on which an exercise is played: the run as the learner finds it, kept so that each crew can take it over from there.

import type { Run } from '$sim';
import { markOf, runAtMark, type Mark, type Past } from '../../hindsight/index';
import { openStart } from '../../start';
import type { Lesson } from '../../schema';

export interface Begun {
  readonly lesson: Lesson;
  readonly seed: number;
  readonly start: Past;
  readonly mark: Mark;
}

/** Job seconds between two pauses: a page that is asked to wait has its turn many times a second. */
export const SLICE_s = 60;

/**
 * Begins a ground. Yields the share done now and then; null when the crew that works before does not get there. `noise`: another course of chance.
 */
export function* beginning(lesson: Lesson, seed: number, noise?: number): Generator<number, Begun | null> {
  const opened = openStart(lesson, seed, false, noise);
  try {
    while (!opened.advance(SLICE_s)) yield opened.share_frac;
  } catch (problem) {
    if (problem instanceof RangeError) return null;
    throw problem;
  }
  const { run } = opened;
  return {
    lesson,
    seed,
    start: { lesson, scenario: run.scenario, log: run.log, record: run.record },
    mark: markOf(run),
  };
}

/** A run of its own from there. */
export const runFrom = ({ start, mark }: Begun): Run => runAtMark(start, mark);
