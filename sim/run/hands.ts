// How many hands of the crew are free: turning holds one, feeding holds one, each task holds its own.

import type { Run } from './run';

export function handsFree(run: Run): number {
  const { stem, tasks } = run.state;
  let busy = (stem.turning ? 1 : 0) + (stem.feed_frac > 0 ? 1 : 0);
  for (const task of tasks) busy += task.hands;
  return Math.max(0, run.kit.crew - busy);
}
