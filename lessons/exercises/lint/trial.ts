// What somebody would find who tries the fluid now: between the fingers, and by the funnel. Played on a copy, so that the run goes on as it was.

import { act, restoreRun, sensesOf, snapshotOf, step, type ActionName, type Run, type Senses } from '$sim';

export type Tried = Pick<Senses, 'feel' | 'funnel'>;

/** A trial takes no longer than this, s. */
const LONGEST_s = 300;

function carriedOut(run: Run, action: ActionName): void {
  if (act(run, action, {}).kind !== 'done') return;
  for (let s = 0; s < LONGEST_s && run.state.tasks.some((task) => task.action === action); s++) step(run);
}

/** Both readings, without their times; null where no hand was free. */
export function tryFluid(run: Run): Tried {
  const copy = restoreRun(run.scenario, snapshotOf(run));
  copy.state.feel = null;
  copy.state.funnel = null;
  act(copy, 'setFeed', { feed_frac: 0 });
  carriedOut(copy, 'feelFluid');
  carriedOut(copy, 'funnelTest');
  const { feel, funnel } = sensesOf(copy);
  return { feel: feel && { ...feel, time_s: 0 }, funnel: funnel && { ...funnel, time_s: 0 } };
}
