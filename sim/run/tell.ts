// Writes an event into the record and among the recent things a crew may have noticed.

import type { EventName } from './names';
import type { Run } from './run';

export function tell(run: Run, name: EventName, data: Readonly<Record<string, number | string>>): void {
  const { tick } = run.state;
  run.record.events.push({ tick, name, data });
  run.state.recent.push({ tick, name });
  // What a crew before did opens nothing to the one that relieves it.
  const own = !run.scenario.relieves || run.state.relief !== undefined;
  if (own && name === run.scenario.leavesFrom) run.state.leaving ??= 'offered';
}

/** Forgets what is older than the last second. Called as each step begins. */
export function forgetOld(run: Run): void {
  const { recent, tick } = run.state;
  if (recent.length > 0 && recent[0].tick < tick) run.state.recent = recent.filter((event) => event.tick >= tick);
}
