// A run with a fault beside its twin without it, by the same acts: does anything part that a crew can notice, and does the learner see it?

import { act, sensesOf, step, type LogEntry, type Run } from '$sim';
import type { Lesson } from '../../schema';
import { SLICE_s } from './begun';
import { isShown, partedBy } from './noticing';

/**
 * shows: within a minute of being met. hidden: so it would, but the senses for it are off. silent: nobody can notice it. untried: it shows only
 * to who tries the fluid, and nobody did. unmet: it came, but too late to be met.
 */
export type Showing = 'shows' | 'hidden' | 'silent' | 'untried' | 'unmet';

export interface Pair {
  readonly run: Run;
  readonly twin: Run;
  /** Acts of both, and the first of them that is still to be done. */
  readonly log: readonly LogEntry[];
  next: number;
}

export interface Meeting {
  /** Is the fault met now? */
  met(run: Run): boolean;
  /** It shows only to who feels or times the fluid: then each reading counts, whenever it is taken. */
  readonly byReading: boolean;
  /** After this tick nothing is looked at any more. */
  readonly last_tick: number;
}

/** Design: a fault changes what is sensed within so many seconds of being met. */
const WITHIN_s = 60;

/** One second of both. */
function goOn(pair: Pair): void {
  const { run, twin, log } = pair;
  while (log[pair.next]?.[0] === run.state.tick) {
    const [, action, payload] = log[pair.next++]!;
    act(run, action, payload);
    act(twin, action, payload);
  }
  step(run);
  step(twin);
}

const readings = ({ state }: Run): string => `${state.feel?.tick} ${state.funnel?.tick}`;

/** Lets both go on until the fault shows, or can show no more. Yields now and then. */
export function* besideTwin(
  pair: Pair,
  lesson: Lesson,
  { met, byReading, last_tick }: Meeting,
): Generator<null, Showing> {
  const { run, twin } = pair;
  let met_tick = -1;
  let tried = false;
  let parted = false;
  for (let n = 1; run.state.tick < last_tick; n++) {
    if (n % SLICE_s === 0) yield null;
    const before = readings(run);
    goOn(pair);
    if (met_tick < 0 && met(run)) met_tick = run.state.tick;
    if (met_tick < 0) continue;
    const read = readings(run) !== before;
    tried ||= read;
    const soon = run.state.tick <= met_tick + WITHIN_s;
    if (!soon && !byReading) break;
    if (!soon && !read) continue;
    const keys = partedBy(sensesOf(run), sensesOf(twin));
    if (keys.length > 0 && isShown(keys, lesson)) return 'shows';
    parted ||= keys.length > 0;
  }
  if (parted) return 'hidden';
  if (met_tick < 0) return 'unmet';
  return byReading && !tried ? 'untried' : 'silent';
}
