// What each stretch of a run cost: what its beginning was worth less what its end was. The costs add up to what the careful crew would have reached less what was reached.

import type { Moment } from './moments';
import type { ShortItem, Value } from './value';

export interface Cost {
  /** Index of the moment at which the stretch begins. */
  readonly index: number;
  /** Index of the moment at which it ends. */
  readonly end: number;
  readonly from: Moment;
  readonly to: Moment;
  /** Points, to a tenth; negative where it was done better than the careful crew would have. */
  readonly points: number;
  readonly before: Value;
  readonly after: Value;
  /** What was lost there, the most first; the reasons are those of the end that followed. */
  readonly lost: readonly (ShortItem & { readonly lost: number })[];
}

/** Less than this is within what the same crew reaches one time and another, points. ASSUMED. */
export const LEAST_points = 0.5;

const tenths = (points: number): number => Math.round(points * 10);

/** The difference of two scores, to a tenth without rest. */
export const drop = (before: number, after: number): number => (tenths(before) - tenths(after)) / 10;

function lostItems(before: Value, after: Value): Cost['lost'] {
  return after.short
    .map((item) => ({
      ...item,
      lost: drop(before.short.find(({ id }) => id === item.id)?.points ?? item.max, item.points),
    }))
    .filter(({ lost }) => lost > 0)
    .sort((a, b) => b.lost - a.lost);
}

/** The costs between each known moment and the next known one, in the order of the run. */
export function costsOf(moments: readonly Moment[], values: readonly (Value | undefined)[]): Cost[] {
  const costs: Cost[] = [];
  let index = values.findIndex((value) => value !== undefined);
  for (let end = index + 1; index >= 0 && end < moments.length; end++) {
    const before = values[index];
    const after = values[end];
    if (!before || !after) continue;
    const points = drop(before.score, after.score);
    const [from, to] = [moments[index]!, moments[end]!];
    costs.push({ index, end, from, to, points, before, after, lost: lostItems(before, after) });
    index = end;
  }
  return costs;
}

/** The stretches that cost most, at most so many; none that can still be parted. */
export const dearest = (costs: readonly Cost[], most = 3): Cost[] =>
  costs
    .filter(({ index, end, points }) => end === index + 1 && points >= LEAST_points)
    .sort((a, b) => b.points - a.points)
    .slice(0, most);
