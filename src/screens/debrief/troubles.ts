// The trouble a run met, kind by kind, as the crew could notice it: which sentence, and when. For a debrief without points.
import type { EventName, RunEvent } from '$sim';
import { feltMessage, isDanger } from '../../app/felt';

export interface Trouble {
  readonly key: string;
  /** When it began, the first few. */
  readonly times_s: readonly number[];
  readonly more: number;
}

/** What is trouble but leaves the crew time: the clock does not slow for it. */
const LESSER: readonly EventName[] = [
  'strainerBlocked',
  'pitLow',
  'pitFull',
  'primeFailed',
  'pumpWorn',
  'tight',
  'balled',
  'bitRefused',
  'waterOut',
  'powderOut',
  'petrolOut',
  'nightfall',
];
const SHOWN = 3;

/** In the order in which each kind was first met. */
export function troublesOf(events: readonly RunEvent[]): Trouble[] {
  const times = new Map<string, number[]>();
  for (const event of events) {
    if (!isDanger(event.name) && !LESSER.includes(event.name)) continue;
    const message = feltMessage(event);
    if (!message) continue;
    const met = times.get(message.key) ?? [];
    met.push(event.tick);
    times.set(message.key, met);
  }
  return [...times].map(([key, met]) => ({
    key,
    times_s: met.slice(0, SHOWN),
    more: Math.max(0, met.length - SHOWN),
  }));
}
