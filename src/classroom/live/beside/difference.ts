// The first act in which two runs part. Nobody does anything in the same second as somebody else: what is compared is what was done, one after the other.
import { ownEntries } from '$lessons';
import type { ActionName, LogEntry, Payload, Run } from '$sim';

/** What is no work at the hole, or only words about it. */
const LEFT_OUT: readonly ActionName[] = [
  'readCaution',
  'useHint',
  'goBack',
  'note',
  'record',
  'nameSample',
  'logLayer',
  'waitFor',
  'takeSeat',
  'relieveCrew',
  'fault',
];

/** Acts that are done little by little: one after the other they are one, and how much of it is no decision of its own. */
const LITTLE_BY_LITTLE: readonly ActionName[] = [
  'setFeed',
  'lift',
  'lower',
  'workStem',
  'stir',
  'addWater',
  'topUp',
  'digOutPit',
  'catchSample',
  'feelFluid',
  'readStick',
];

/** Set step by step: of several settings in a row the last one counts. */
const SET: readonly ActionName[] = ['setThrottle', 'setFeed', 'planWell'];

export interface Doing {
  readonly time_s: number;
  readonly action: ActionName;
  readonly payload: Payload;
}

/** What was done in a run, in its order, each run of small steps as one. */
export function doingsOf(run: Pick<Run, 'log' | 'record' | 'state'>): Doing[] {
  const refused = new Set(
    run.record.events.filter(({ name }) => name === 'refused').map(({ tick, data }) => `${tick} ${data['action']}`),
  );
  const doings: Doing[] = [];
  for (const [time_s, action, payload] of ownEntries(run) as readonly LogEntry[]) {
    if (LEFT_OUT.includes(action) || refused.has(`${time_s} ${action}`)) continue;
    const last = doings.at(-1);
    if (last?.action !== action) doings.push({ time_s, action, payload });
    else if (SET.includes(action)) doings[doings.length - 1] = { ...last, payload };
    else if (!LITTLE_BY_LITTLE.includes(action)) doings.push({ time_s, action, payload });
  }
  return doings;
}

const same = (a: Doing, b: Doing): boolean =>
  a.action === b.action && (LITTLE_BY_LITTLE.includes(a.action) || sameAmounts(a.payload, b.payload));

function sameAmounts(a: Payload, b: Payload): boolean {
  const names = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...names].every((name) => (a[name] ?? null) === (b[name] ?? null));
}

export interface Difference {
  /** How many doings in a row were the same before. */
  readonly alike: number;
  /** What the first and the second did then; null: nothing more. */
  readonly first: Doing | null;
  readonly second: Doing | null;
}

/** The first doing in which two runs differ; null where there is none. */
export function firstDifference(
  first: Pick<Run, 'log' | 'record' | 'state'>,
  second: Pick<Run, 'log' | 'record' | 'state'>,
): Difference | null {
  const a = doingsOf(first);
  const b = doingsOf(second);
  let alike = 0;
  while (alike < a.length && alike < b.length && same(a[alike]!, b[alike]!)) alike++;
  if (alike === a.length && alike === b.length) return null;
  return { alike, first: a[alike] ?? null, second: b[alike] ?? null };
}
