// A log as a short text, and back: a line for each act, such as `21f.35`: seconds since the act before, the act's code, its fields in the order of ACTION_SPECS.
// A field that is left out is empty, null is ~, true and false are + and -, a text stands in quotes as in JSON.

import { ACTION_SPECS, malformedIn, type ActionName, type LogEntry } from '$sim';
import { ACTION_CODES, ACTION_OF_CODE } from './actionCodes';

const LINE = /^(\d{1,7})([a-z]|[A-Z][a-z])(.*)$/;
const VALUE = /^(?:"(?:[^"\\]|\\.)*"|[^",]*)(?=,|$)/;
const NUMBER = /^-?(?:\d+(?:\.\d+)?|\.\d+)(?:e[+-]?\d+)?$/;

/** The shortest text that comes back as the same number, to the bit. */
const numberText = (value: number): string => (Object.is(value, -0) ? '-0' : String(value).replace(/^(-?)0\./, '$1.'));

function valueText(value: unknown, word: boolean): string {
  if (value === undefined) return '';
  if (value === null) return '~';
  if (typeof value === 'number') return numberText(value);
  if (typeof value === 'boolean') return value ? '+' : '-';
  return word ? String(value) : JSON.stringify(value);
}

/** The log of a run, seconds counted from its beginning. */
export function logText(log: readonly LogEntry[]): string {
  let last = 0;
  const lines = log.map(([tick, action, payload]) => {
    const since = tick - last;
    last = tick;
    const values = ACTION_SPECS[action].fields.map(({ name, type }) => valueText(payload[name], type === 'word'));
    return `${since}${ACTION_CODES[action]}${values.join(',').replace(/,+$/, '')}`;
  });
  return lines.join('\n');
}

/** undefined where it cannot be one. */
function valueOf(text: string, type: string): unknown {
  if (text === '~') return null;
  if (type === 'number') return NUMBER.test(text) ? Number(text) : undefined;
  if (type === 'boolean') return text === '+' ? true : text === '-' ? false : undefined;
  if (type === 'word') return text;
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
}

/** null where the fields are not those of the act. */
function payloadOf(action: ActionName, text: string): Record<string, unknown> | null {
  const payload: Record<string, unknown> = {};
  let rest = text;
  for (const { name, type } of ACTION_SPECS[action].fields) {
    const found = VALUE.exec(rest)?.[0];
    if (found === undefined) return null;
    if (found !== '') {
      const value = valueOf(found, type);
      if (value === undefined) return null;
      payload[name] = value;
    }
    rest = rest.slice(found.length + 1);
  }
  return rest === '' ? payload : null;
}

export type ReadLog =
  | { readonly ok: true; readonly log: LogEntry[] }
  /** The line that no log can hold, counted from 0. */
  | { readonly ok: false; readonly line: number };

/** Undoes logText; takes no entry that the run would call malformed. Never throws. */
export function logOfText(text: string): ReadLog {
  const log: LogEntry[] = [];
  let tick = 0;
  const lines = text === '' ? [] : text.split('\n');
  for (const [line, entry] of lines.entries()) {
    const parts = LINE.exec(entry);
    const action = parts && ACTION_OF_CODE.get(parts[2]!);
    const payload = action ? payloadOf(action, parts[3]!) : null;
    if (!action || payload === null || malformedIn(action, payload) !== null) return { ok: false, line };
    tick += Number(parts[1]);
    log.push([tick, action, payload]);
  }
  return { ok: true, log };
}
