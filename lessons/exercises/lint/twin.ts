// A run with a fault beside its twin without it, by the same acts: does anything part that a crew can notice, and does the learner see it?

import { act, sensesOf, step, type LogEntry, type Run, type Senses } from '$sim';
import type { Lesson } from '../../schema';
import { SLICE_s } from './begun';
import { isShown, partedBy } from './noticing';
import { tryFluid, type Tried } from './trial';

/**
 * shows: within a minute of being met, or by a reading of the fluid that was taken. tried: nobody did, but who tries the fluid finds it. hidden: the
 * senses for it are off. silent: nobody can notice it. unmet: it came, but too late.
 */
export type Showing = 'shows' | 'tried' | 'hidden' | 'silent' | 'unmet';

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
  /** It shows only to who feels or times the fluid: then it may show whenever that is done. */
  readonly byTrial: boolean;
  /** After this tick nothing is looked at any more. */
  readonly last_tick: number;
}

/** Design: a fault changes what is sensed within so many seconds of being met. */
const WITHIN_s = 60;
/** From then on the fluid is tried so often, s. */
const TRY_EVERY_s = 120;

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
const fluidOf = (run: Run): Tried => {
  const { feel, funnel } = sensesOf(run);
  return { feel, funnel };
};

/** Gathers what parted, and whether the learner sees it. */
class Parted {
  #ever = false;
  #tried = false;
  constructor(readonly lesson: Lesson) {}

  /** True when it can be seen. */
  look<Part extends Partial<Senses>>(here: Part, there: Part): boolean {
    const keys = partedBy(here, there);
    this.#ever ||= keys.length > 0;
    return keys.length > 0 && isShown(keys, this.lesson);
  }

  try(run: Run, twin: Run): void {
    this.#tried ||= this.look(tryFluid(run), tryFluid(twin));
  }

  get showing(): Showing {
    return this.#tried ? 'tried' : this.#ever ? 'hidden' : 'silent';
  }
}

/** Lets both go on until the fault shows, or can show no more. Yields now and then. */
export function* besideTwin(pair: Pair, lesson: Lesson, meeting: Meeting): Generator<null, Showing> {
  const { run, twin } = pair;
  const { met, byTrial, last_tick } = meeting;
  const parted = new Parted(lesson);
  let met_tick = -1;
  for (let n = 1; run.state.tick < last_tick; n++) {
    if (n % SLICE_s === 0) yield null;
    const before = readings(run);
    goOn(pair);
    if (met_tick < 0 && met(run)) met_tick = run.state.tick;
    if (met_tick < 0) continue;
    const since_s = run.state.tick - met_tick;
    if (since_s <= WITHIN_s && parted.look(sensesOf(run), sensesOf(twin))) return 'shows';
    if (since_s > WITHIN_s && !byTrial) return parted.showing;
    if (byTrial && readings(run) !== before && parted.look(fluidOf(run), fluidOf(twin))) return 'shows';
    if (byTrial && since_s % TRY_EVERY_s === WITHIN_s) parted.try(run, twin);
  }
  // A run that was over before the minute was tells nothing.
  return byTrial && met_tick >= 0 ? parted.showing : 'unmet';
}
