// The log of a run for whoever looks on: what was done, by whom, and what happened, also what no crew can notice.
import { seatOf, seatsOf } from '$lessons';
import { HIDDEN_EVENTS, type ActionName, type LogEntry, type Run, type RunEvent } from '$sim';
import { feltMessage } from '../../app/felt';
import type { KeyedMessage } from '../../words';
import { actWords } from './actWords';
import type { LogLine } from './talk';

/** So many of the newest lines are told. */
const NEWEST = 60;

function hiddenWords({ name, data }: RunEvent): KeyedMessage | null {
  if (name === 'wallFails') {
    const { cause, from_m, to_m } = data;
    return { key: 'live.hidden.wallFails', data: { cause: `wall.${cause}`, from_m: from_m ?? 0, to_m: to_m ?? 0 } };
  }
  if (name === 'layerChanged')
    return {
      key: 'live.hidden.layerChanged',
      data: { kind: `cutaway.kind.${data['kind']}`, depth_m: data['depth_m'] ?? 0 },
    };
  return HIDDEN_EVENTS.includes(name) ? { key: `live.hidden.${name}` } : null;
}

function lineOfEvent(event: RunEvent): LogLine | null {
  const { tick: time_s, name, data } = event;
  const hidden = hiddenWords(event);
  if (hidden) return { time_s, words: hidden, who: null, sort: 'hidden' };
  if (name === 'refused') {
    const did = `did.${data['action']}`;
    const why = `refusal.${data['reason']}`;
    return { time_s, words: { key: 'live.refused', data: { did, why } }, who: null, sort: 'refused' };
  }
  const felt = feltMessage(event);
  return felt && { time_s, words: { key: felt.key, data: felt.data }, who: null, sort: 'event' };
}

/** Acts with who sat at them, refused ones left out: their event tells of them. */
function linesOfActs(log: readonly LogEntry[], refused: ReadonlySet<string>): LogLine[] {
  const from = Math.max(0, log.length - NEWEST);
  const sits = { ...seatsOf(log.slice(0, from)) };
  const lines: LogLine[] = [];
  for (const [time_s, action, payload] of log.slice(from)) {
    if (action === 'takeSeat') Object.assign(sits, { [payload['seat'] as string]: payload['who'] });
    if (refused.has(nameOf(time_s, action))) continue;
    const seat = seatOf(action);
    const who = action === 'takeSeat' ? (payload['who'] as string) : ((seat && sits[seat]) ?? null);
    lines.push({ time_s, words: actWords(action, payload), who, sort: 'act' });
  }
  return lines;
}

const nameOf = (tick: number, action: ActionName | string | number | undefined): string => `${tick} ${action}`;

/** The newest lines of a run, newest first. */
export function logLines({ log, record }: Pick<Run, 'log' | 'record'>): LogLine[] {
  const events = record.events.slice(-2 * NEWEST);
  const refused = new Set(
    events.filter(({ name }) => name === 'refused').map(({ tick, data }) => nameOf(tick, data['action'])),
  );
  const happened = events.map(lineOfEvent).filter((line) => line !== null);
  // Sorting keeps the order of equal times: in one second what was done stands before what came of it.
  return [...linesOfActs(log, refused), ...happened]
    .sort((a, b) => a.time_s - b.time_s)
    .slice(-NEWEST)
    .reverse();
}
