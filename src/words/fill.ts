// Fills the slots of a message. A slot is {name} or {name:how}.
//   {n}            a number by Intl, at most 2 decimals; text stays as it is
//   {n:1}          at most that many decimals (0 to 4)
//   {n:fixed1}     always that many decimals
//   {n:percent}    a share 0..1
//   {n:duration}   seconds as "1 h 24 min"
//   {n:date}       milliseconds since 1970 as day and time
//   {n:size}       bytes
//   {n:word}       the value is the key of another message
import { formatDate, formatFixed, formatNumber, formatPercent, formatSize } from './format';

export type SlotValue = number | string;
export type SlotData = Record<string, SlotValue>;

const SLOT = /\{(\w+)(?::(\w+))?\}/g;

export interface Lookups {
  word(key: string): string;
  duration(time_s: number): string;
}

export function fillSlots(text: string, data: SlotData | undefined, lookups: Lookups): string {
  return text.replace(SLOT, (slot, name: string, how: string | undefined) => {
    const value = data?.[name];
    if (value === undefined) return slot;
    if (how === 'word') return lookups.word(String(value));
    if (typeof value === 'string') return value;
    return slotNumber(value, how, lookups);
  });
}

function slotNumber(value: number, how: string | undefined, lookups: Lookups): string {
  if (how === undefined) return formatNumber(value);
  if (how === 'duration') return lookups.duration(value);
  if (how === 'percent') return formatPercent(value);
  if (how === 'date') return formatDate(value);
  if (how === 'size') return formatSize(value);
  if (how.startsWith('fixed')) return formatFixed(value, Number(how.slice(5)));
  return formatNumber(value, Number(how));
}
