// The start of a lesson, made while its briefing is read: where another crew worked before, it is played in parts so that the page stays alive.
import { openStart, type Lesson } from '$lessons';
import type { Run } from '$sim';
import { inParts, LOOK_s } from './parts';

/** Who waits for a start hears how far the crew before has come, 0 to 1, and may stop waiting. */
export interface Waiting {
  onShare?: (share_frac: number) => void;
  signal?: AbortSignal;
}

interface Made {
  readonly lesson: Lesson;
  readonly seed: number;
  readonly practice: boolean;
  run: Promise<Run>;
  share_frac: number;
  waiting: Waiting;
}

let made: Made | null = null;

function play(one: Made): Promise<Run> {
  const start = openStart(one.lesson, one.seed, one.practice);
  function* advancing(): Generator<null, Run> {
    while (!start.advance(LOOK_s)) yield null;
    return start.run;
  }
  return inParts(advancing(), () => {
    one.share_frac = start.share_frac;
    one.waiting.onShare?.(one.share_frac);
  });
}

function madeFor(lesson: Lesson, seed: number, practice: boolean): Made {
  if (made?.lesson === lesson && made.seed === seed && made.practice === practice) return made;
  const one = { lesson, seed, practice, share_frac: 0, waiting: {} } as Made;
  one.run = play(one);
  return (made = one);
}

/** The run as the learner will find it; asked for again, it is the same one. Nobody may act on it. */
export const startOf = (lesson: Lesson, seed: number, practice = true): Promise<Run> =>
  madeFor(lesson, seed, practice).run;

/** The same to be played: it belongs to the caller from then on. Null when nobody waits for it any more; then it is made on for the next who asks. */
export async function takeStart(
  lesson: Lesson,
  seed: number,
  waiting: Waiting = {},
  practice = true,
): Promise<Run | null> {
  const one = madeFor(lesson, seed, practice);
  one.waiting = waiting;
  waiting.onShare?.(one.share_frac);
  const gone = new Promise<null>((resolve) => waiting.signal?.addEventListener('abort', () => resolve(null)));
  const run = await Promise.race([one.run, gone]);
  one.waiting = {};
  if (run && made === one) made = null;
  return run;
}
