// Which moment to value next: first one near the end, which takes the least time, then the beginning and, while that is worked
// on, more from the end; then the middle of the stretch with the largest drop, until no stretch falls that can be parted. So a
// first figure and the dear stretches come out early, and short level ones are never parted.

import { drop, LEAST_points } from './costs';
import type { Value } from './value';

export interface Known {
  /** Values by index of the moment; the last is that of the run itself and stands from the beginning. */
  readonly values: readonly (Value | undefined)[];
  /** Indices that are being worked on. */
  readonly taken: ReadonlySet<number>;
}

/** A level stretch may stay whole up to this share of the run: a loss and a gain must lie this close to hide each other. ASSUMED. */
const LEVEL_frac = 1 / 8;

/** Must a stretch between two moments be parted, if it falls by so much? One that is neither long nor falls says all it can say. */
export const mustBeParted = (stretch: number, of: number, fall_points: number): boolean =>
  stretch > 1 && (stretch > Math.max(1, of * LEVEL_frac) || Math.abs(fall_points) >= LEAST_points);

/** The next index to value, or null when nothing is left to part, or what is left hangs on what is taken. */
export function nextIndex({ values, taken }: Known): number | null {
  const last = values.length - 1;
  if (last < 0) return null;
  if (!values[0]) {
    const late = lateIndex({ values, taken });
    const begun = taken.size > 0 || values.some((value, index) => value && index < last);
    if (late !== null && (taken.has(0) || !begun)) return late;
    if (!taken.has(0)) return 0;
  }
  let best: { index: number; fall: number; length: number } | null = null;
  let from = 0;
  for (let to = 1; to <= last; to++) {
    if (!values[to] && !taken.has(to)) continue;
    const length = to - from;
    const fall = Math.abs(fallAround(values, from, to));
    if (mustBeParted(length, last, fall)) {
      if (!best || fall > best.fall || (fall === best.fall && length > best.length))
        best = { index: from + Math.floor(length / 2), fall, length };
    }
    from = to;
  }
  return best?.index ?? null;
}

/** So large a part of what lies before the earliest moment that is known or taken is parted off at its end. */
const LATE_frac = 1 / 6;

/** A moment near the end of what lies before the earliest one that is known or taken; null when none is left between. */
function lateIndex({ values, taken }: Known): number | null {
  let first = 1;
  while (first < values.length && !values[first] && !taken.has(first)) first++;
  const index = first - Math.max(1, Math.floor(first * LATE_frac));
  return index > 0 ? index : null;
}

/** Has the looking back come to its end: both ends valued, and no stretch between two known moments left to be parted? */
export function complete(values: Known['values']): boolean {
  const last = values.length - 1;
  if (last < 0 || !values[0] || !values[last]) return false;
  let from = 0;
  for (let to = 1; to <= last; to++) {
    if (!values[to]) continue;
    if (mustBeParted(to - from, last, drop(values[from]!.score, values[to]!.score))) return false;
    from = to;
  }
  return true;
}

/** The drop between the nearest known values around a gap, shared among the gaps that lie between them. */
function fallAround(values: Known['values'], from: number, to: number): number {
  let low = from;
  let high = to;
  while (low > 0 && !values[low]) low--;
  while (high < values.length - 1 && !values[high]) high++;
  const before = values[low];
  const after = values[high];
  if (!before || !after) return 0;
  return (drop(before.score, after.score) * (to - from)) / (high - low);
}

/** Are the dearest known for sure, as far as halves tell: no stretch still to be parted fell by more than the least of them? */
export function settled(values: Known['values'], leastOfDearest: number): boolean {
  let from = 0;
  if (!values[0]) return false;
  for (let to = 1; to < values.length; to++) {
    const after = values[to];
    if (!after) continue;
    if (to - from > 1 && drop(values[from]!.score, after.score) > leastOfDearest) return false;
    from = to;
  }
  return true;
}
