// The acts of a run that were really done, in their order: the log holds the refused ones too.

import type { ActionName, Payload, Run } from '$sim';

export interface DoneAct {
  readonly tick: number;
  readonly payload: Payload;
}

/** Every done act of one name. Of several at one second, the refused ones came first: who is refused tries again. */
export function doneActs({ log, record }: Run, action: ActionName): DoneAct[] {
  const refused = new Map<number, number>();
  for (const event of record.events)
    if (event.name === 'refused' && event.data.action === action)
      refused.set(event.tick, (refused.get(event.tick) ?? 0) + 1);
  const done: DoneAct[] = [];
  for (const [tick, name, payload] of log) {
    if (name !== action) continue;
    const left = refused.get(tick) ?? 0;
    if (left > 0) refused.set(tick, left - 1);
    else done.push({ tick, payload });
  }
  return done;
}
