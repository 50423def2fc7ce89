// Which moment to value next: first the ends, then the middle of the stretch with the largest drop, until all is known. So the dear stretches come out early.

import { drop } from './costs';
import type { Value } from './value';

export interface Known {
  /** Values by index of the moment; the last is that of the run itself and stands from the beginning. */
  readonly values: readonly (Value | undefined)[];
  /** Indices that are being worked on. */
  readonly taken: ReadonlySet<number>;
}

/** The next index to value, or null when all are known or taken. */
export function nextIndex({ values, taken }: Known): number | null {
  const last = values.length - 1;
  if (last >= 0 && !values[0] && !taken.has(0)) return 0;
  let best: { index: number; drop: number; length: number } | null = null;
  let from = 0;
  for (let to = 1; to <= last; to++) {
    if (!values[to] && !taken.has(to)) continue;
    const length = to - from;
    if (length > 1) {
      const fall = Math.abs(fallAround(values, from, to));
      if (!best || fall > best.drop || (fall === best.drop && length > best.length))
        best = { index: from + Math.floor(length / 2), drop: fall, length };
    }
    from = to;
  }
  return best?.index ?? null;
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
