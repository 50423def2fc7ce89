// What a moment was worth: the score that the careful crew reaches when it takes the run over there, with all that was done so far in log and record.

import { verdictOf, type Run } from '$sim';
import { atOnce } from '../atOnce';
import { takeOver } from '../handing/takeOver';
import { grade, type GradedItem } from '../grade';
import { jobFor } from '../job';
import { playing } from '../play';
import type { Lesson } from '../schema';
import { runAtMark, SLICE_s, type Mark, type Past } from './marks';

export type ShortItem = Pick<GradedItem, 'id' | 'points' | 'max' | 'reason'>;

export interface Value {
  /** 0 to 100, to a tenth. */
  readonly score: number;
  /** Items that did not earn all their points. */
  readonly short: readonly ShortItem[];
  /** Of the well that came of it; null where there is none. */
  readonly well: { readonly dry_Lmin: number; readonly leak_d: number } | null;
  readonly ticks: number;
}

/** What a run came to, once it is over. */
export function valueOf(run: Run, lesson: Lesson): Value {
  const { score, items } = grade(run, lesson);
  const verdict = verdictOf(run);
  return {
    score,
    short: items
      .filter(({ points, max }) => points < max)
      .map(({ id, points, max, reason }) => ({ id, points, max, reason })),
    well: verdict && { dry_Lmin: verdict.yield.dry_Lmin, leak_d: verdict.leak.annulus_d },
    ticks: run.state.tick,
  };
}

/** Lets the careful crew take a run over and play it to its end. Yields now and then. */
export function* carriedOn(run: Run, lesson: Lesson): Generator<null, Value> {
  for (const _ of playing(run, lesson, takeOver('careful', jobFor(run, lesson), run), SLICE_s)) yield null;
  return valueOf(run, lesson);
}

/** What the moment of a mark was worth. Yields now and then. */
export function* valuing(past: Past, mark: Mark): Generator<null, Value> {
  return yield* carriedOn(runAtMark(past, mark), past.lesson);
}

export const valueAt = (past: Past, mark: Mark): Value => atOnce(valuing(past, mark));
