// Was it the decision or the ground? The same acts on other grounds that looked the same so far.

import { playLog } from '$sim';
import type { Moment } from './moments';
import { runAtMark, type Mark, type Past } from './marks';
import { drop } from './costs';
import { elsewhere } from './otherGrounds';
import { carriedOn } from './value';

/** Grounds that a decision is tried on. Design: at least eight. */
export const GROUNDS = 8;

/** What a stretch would have cost on each of the grounds that could be had, points. */
export type Luck = readonly number[];

/** What the acts of a stretch cost on the n-th other ground; null where there is none. Yields now and then. */
export function* costElsewhere(past: Past, from: Mark, to: Moment, n: number): Generator<null, number | null> {
  const scenario = elsewhere(past.lesson, runAtMark(past, from), n);
  if (!scenario) return null;
  const there: Past = { ...past, scenario };
  const before = yield* carriedOn(runAtMark(there, from), past.lesson);
  const run = runAtMark(there, from);
  playLog(run, past.log.slice(0, to.entries), from.entries, to.tick);
  const after = yield* carriedOn(run, past.lesson);
  return drop(before.score, after.score);
}

/** On how many of the grounds it cost at least half of what it cost here. */
export const costsThere = (here_points: number, luck: Luck): number =>
  luck.filter((points) => points >= here_points / 2).length;
