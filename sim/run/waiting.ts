// A wait ends when what it waits for is there, when its time is up, or when something happens that a crew would turn round for.

import { morningNext } from './daylight';
import { HIDDEN_EVENTS, type EventName } from './names';
import type { Run } from './run';

/** Small news that does not end a wait by itself. */
const SMALL: readonly EventName[] = [
  ...HIDDEN_EVENTS,
  'taskDone',
  'refused',
  'sampleCaught',
  'flowStarted',
  'rodAdded',
  'rodRemoved',
  'primed',
];

export function watchWait(run: Run): void {
  const { wait, recent, tick, tasks, completion } = run.state;
  if (!wait) return;
  // The tick has not been counted on yet: what happened in this second ends the wait with it.
  // Whoever waits for something else lets the water come to rest.
  const passed = wait.until === 'recovered' ? '' : 'recovered';
  const news = recent.some(({ tick: at, name }) => at === tick && name !== passed && !SMALL.includes(name));
  const done =
    (wait.until === 'taskDone' && tasks.length === 0) || (wait.until === 'recovered' && run.state.well?.still === true);
  if (wait.until === 'morning' && morningNext(run.scenario, tick)) run.state.wait = null;
  const set = wait.until === 'set' && completion.seals.every(({ told }) => told);
  if (done || set || news || tick + 1 >= wait.endTick) run.state.wait = null;
}
