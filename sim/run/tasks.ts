// Acts that take time: begun, worked at each second, ended.

import { ACTION_SPECS } from './actions';
import type { Payload } from './check';
import { deedOf } from './deeds/all';
import type { Deed } from './deeds/deed';
import type { ActionName } from './names';
import type { Run } from './run';
import type { Task } from './state';
import { tell } from './tell';

/** Opens a task for an act that takes time; null for one that is done at once. */
export function beginTask(run: Run, action: ActionName, payload: Payload, deed: Deed): Task | null {
  const spec = ACTION_SPECS[action];
  const time_s = deed.time_s ? deed.time_s(run, payload) : spec.time_s;
  if (time_s <= 0) return null;
  const task: Task = {
    action,
    hands: deed.hands?.(payload) ?? spec.hands,
    endTick: run.state.tick + Math.ceil(time_s),
    data: {},
    word: '',
  };
  run.state.tasks.push(task);
  return task;
}

/** One second of every task under way; those whose time is up end in the order they were begun. */
export function workTasks(run: Run): void {
  const { tasks, tick } = run.state;
  if (tasks.length === 0) return;
  let ended = 0;
  for (const task of tasks) {
    if (tick < task.endTick) deedOf(task.action).during?.(run, task);
    else ended++;
  }
  if (ended === 0) return;
  run.state.tasks = tasks.filter((task) => tick < task.endTick);
  for (const task of tasks) {
    if (tick < task.endTick) continue;
    deedOf(task.action).end?.(run, task);
    tell(run, 'taskDone', { action: task.action });
  }
}
