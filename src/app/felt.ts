// What a crew notices of the run's events, as messages: the text log, the live region and the slow-down read these.
import { HIDDEN_EVENTS, type EventName, type RunEvent } from '$sim';
import { hasMessage, type SlotData } from '../words';

export interface FeltMessage {
  /** Counts up over the session, so that a list of messages has keys. */
  readonly number: number;
  readonly time_s: number;
  readonly key: string;
  readonly data: SlotData;
  readonly urgent: boolean;
}

/** Events after which the clock falls back to real time: what the crew does in the next seconds decides. */
export const DANGERS: readonly EventName[] = [
  'stuck',
  'stalled',
  'pumpGulps',
  'primeLost',
  'sealBurnt',
  'returnsLost',
  'buried',
  'driveHot',
  'engineStopped',
  'hoseBurst',
  'casingHung',
  'casingFloats',
  'casingSnapped',
];

export function isDanger(name: EventName): boolean {
  return DANGERS.includes(name);
}

/**
 * The message of an event, or null where the crew notices nothing or another event already says it.
 * Only the action's name is passed on: the event's figures are for the debrief, no crew can feel them.
 */
export function feltMessage(event: RunEvent): Omit<FeltMessage, 'number'> | null {
  if (HIDDEN_EVENTS.includes(event.name) || event.name === 'refused') return null;
  const key = event.name === 'taskDone' ? `event.taskDone.${event.data['action']}` : `event.${event.name}`;
  if (!hasMessage(key)) return null;
  return { time_s: event.tick, key, data: publicData(event), urgent: isDanger(event.name) };
}

function publicData(event: RunEvent): SlotData {
  const { rods, sample, label_m } = event.data;
  const data: SlotData = {};
  if (rods !== undefined) data['n'] = rods;
  if (sample !== undefined) data['sample'] = sample;
  if (label_m !== undefined) data['label_m'] = label_m;
  return data;
}
