// The start of a lesson, made while its briefing is read: where another crew worked before, it is played in parts so that the page stays alive.
import { openStart, type Lesson } from '$lessons';
import type { Run } from '$sim';

/** Job seconds played before the page has its turn again. */
const PART_s = 300;

let made: { readonly lesson: Lesson; readonly seed: number; readonly run: Promise<Run> } | null = null;

async function make(lesson: Lesson, seed: number): Promise<Run> {
  const start = openStart(lesson, seed);
  while (!start.advance(PART_s)) await new Promise((resolve) => setTimeout(resolve));
  return start.run;
}

/** The run as the learner will find it; asked for again, it is the same one. Nobody may act on it. */
export function startOf(lesson: Lesson, seed: number): Promise<Run> {
  if (made?.lesson !== lesson || made.seed !== seed) made = { lesson, seed, run: make(lesson, seed) };
  return made.run;
}

/** The same to be played: from now on it belongs to the caller. */
export function takeStart(lesson: Lesson, seed: number): Promise<Run> {
  const run = startOf(lesson, seed);
  made = null;
  return run;
}
