// An act of a log in words: what was done, and the amounts that were given.
import type { ActionName, Payload } from '$sim';
import { hasMessage, say, type KeyedMessage } from '../../words';

/** Units by the last part of a field's name, and what a value is shown times. */
const UNITS: readonly { readonly ends: string; readonly key: string; readonly times?: number }[] = [
  { ends: '_Lmin', key: 'work.unit.Lmin' },
  { ends: '_mgL', key: 'work.unit.mgL' },
  { ends: '_min', key: 'work.unit.perMin' },
  { ends: '_frac', key: 'live.unit.frac' },
  { ends: '_mmh', key: 'live.unit.mmh' },
  { ends: '_mm', key: 'live.unit.mm' },
  { ends: '_ms', key: 'live.unit.ms' },
  { ends: '_m3', key: 'work.unit.L', times: 1000 },
  { ends: '_L', key: 'work.unit.L' },
  { ends: '_g', key: 'work.unit.g' },
  { ends: '_m', key: 'work.unit.m' },
  { ends: '_s', key: 'work.unit.s' },
];

/** Where the words of a chosen value stand, by the field. */
const CHOSEN: Readonly<Record<string, readonly string[]>> = {
  additive: ['work.additive.'],
  manner: ['live.manner.'],
  chamber: ['live.chamber.'],
  pack: ['work.pack.'],
  seal: ['work.seal.'],
  material: ['work.seal.', 'work.pack.'],
  method: ['work.develop.'],
  what: ['work.mend.'],
  fault: ['live.fault.'],
  seat: ['live.seat.'],
  kind: ['work.kind.'],
  main: ['work.kind.'],
  until: ['work.wait.'],
};

function amountOf(field: string, value: unknown): string | null {
  if (typeof value === 'number') {
    const unit = UNITS.find(({ ends }) => field.endsWith(ends));
    return unit ? say(unit.key, { value: value * (unit.times ?? 1) }) : null;
  }
  if (typeof value === 'boolean') return field === 'on' ? say(value ? 'live.on' : 'live.off') : null;
  const key = (CHOSEN[field] ?? []).map((place) => `${place}${String(value)}`).find(hasMessage);
  return key ? say(key) : null;
}

/** How many amounts of one act are told: a plan of a well has more than a line holds. */
const TOLD = 4;

/** Hints that nobody asked for: what was shown without being a hint of the lesson. */
const SHOWN = ['steering', 'ground', 'example'];

/** What was done and how much of it, without a point at the end. */
export function actWords(action: ActionName, payload: Payload): KeyedMessage {
  const { hint } = payload;
  if (action === 'useHint' && SHOWN.includes(String(hint))) return { key: `live.shown.${String(hint)}` };
  const amounts = Object.entries(payload)
    .map(([field, value]) => amountOf(field, value))
    .filter((amount) => amount !== null)
    .slice(0, TOLD);
  const did = `did.${action}`;
  return amounts.length === 0
    ? { key: 'live.did', data: { did } }
    : { key: 'live.didWith', data: { did, amounts: amounts.join(', ') } };
}
