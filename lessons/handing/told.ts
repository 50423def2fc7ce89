// What a crew can tell the next one: what it did, and when; where the bit stood by the rod marks. Never anything that nobody could see.

import type { ActionName, LogEntry, Run, Senses } from '$sim';
import { acceptedActs } from '../rubric/episodes';

export interface Told {
  /** Accepted acts of a name on this hole, oldest first. */
  acts(action: ActionName): readonly LogEntry[];
  /** Sum of a figure over them. */
  sum(action: ActionName, field: string): number;
  /** Job second of the last one, or -1. */
  last_s(action: ActionName): number;
  /** Rods in the stem at a job second. */
  rodsAt(time_s: number): number;
  /** Depth of the bit at a job second, m; where it is now when nobody remembers. */
  bitAt_m(time_s: number): number;
  /** What was felt last of the events named, or null. */
  lastFelt(...names: readonly string[]): { readonly name: string; readonly tick: number } | null;
}

export function toldBy(run: Pick<Run, 'log' | 'record'>, senses: Senses): Told {
  const { events, trace } = run.record;
  const begun = events.findLast(({ name }) => name === 'newHole')?.tick ?? 0;
  const since = { log: run.log.filter(([tick]) => tick >= begun), events };
  const known = new Map<ActionName, readonly LogEntry[]>();
  const acts = (action: ActionName): readonly LogEntry[] => {
    if (!known.has(action)) known.set(action, acceptedActs(since, action));
    return known.get(action)!;
  };
  const after = (action: ActionName, time_s: number): number => acts(action).filter(([tick]) => tick > time_s).length;
  return {
    acts,
    sum: (action, field) => acts(action).reduce((sum, [, , payload]) => sum + Number(payload[field] ?? 0), 0),
    last_s: (action) => acts(action).at(-1)?.[0] ?? -1,
    rodsAt: (time_s) => Math.max(1, senses.stem.rods - after('addRod', time_s) + after('removeRod', time_s)),
    bitAt_m: (time_s) => {
      for (let row = trace.length - 1; row >= 0; row--)
        if (trace.columns.time_s[row]! <= time_s) return trace.columns.bit_m[row]!;
      return senses.stem.bit_m;
    },
    lastFelt: (...names) => events.findLast(({ name }) => names.includes(name)) ?? null,
  };
}
