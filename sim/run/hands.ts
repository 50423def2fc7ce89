// How many hands of the crew are free: turning holds one, feeding holds one, each task holds its own.

import type { Run } from './run';

/** Hands that are on the site. */
export function handsThere(run: Run): number {
  return Math.max(0, run.kit.crew - (run.state.faults.helperBack_tick > 0 ? 1 : 0));
}

export function busyHands(run: Run): number {
  const { stem, tasks } = run.state;
  let busy = (stem.turning ? 1 : 0) + (stem.feed_frac > 0 ? 1 : 0);
  for (const task of tasks) busy += task.hands;
  return busy;
}

export function handsFree(run: Run): number {
  return Math.max(0, handsThere(run) - busyHands(run));
}
