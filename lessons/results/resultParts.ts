// The letters of a result cut in parts for pictures: R, which of how many, a short name that all parts of it share, and the bytes in signs that a picture packs densely.
// Three of 41 signs stand for two bytes; all 41 are among the signs of the alphanumeric mode of QR codes (ISO/IEC 18004), and no blank is among them.

import { hashOf } from '$sim';
import { bytesOf, lettersOf } from '../exercises/packed';

const SIGNS = '0123456789ABCDEFGHIJKLMNOPQRSTUVWXYZ+-./:';
const BASE = SIGNS.length;
const VALUE = new Map([...SIGNS].map((sign, i) => [sign, i]));

/** More pictures than these nobody photographs. */
export const MOST_PARTS = 4;
const PART = /^R([1-4])\/([1-4]):([0-9A-F]{6}):([0-9A-Z+\-./:]+)$/;
/** What stands before the bytes, signs. */
const HEAD = 'R1/4:012345:'.length;

function signsOf(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 2) {
    const two = i + 1 < bytes.length;
    let word = two ? bytes[i]! * 256 + bytes[i + 1]! : bytes[i]!;
    for (let k = two ? 3 : 2; k > 0; k--) {
      text += SIGNS[word % BASE]!;
      word = Math.floor(word / BASE);
    }
  }
  return text;
}

/** null where no bytes can have given these signs. */
function bytesOfSigns(text: string): Uint8Array | null {
  if (text.length % 3 === 1) return null;
  const bytes: number[] = [];
  for (let i = 0; i < text.length; i += 3) {
    const group = text.slice(i, i + 3);
    let word = 0;
    for (let k = group.length - 1; k >= 0; k--) word = word * BASE + VALUE.get(group[k]!)!;
    const two = group.length === 3;
    if (word >= (two ? 65536 : 256)) return null;
    if (two) bytes.push(Math.floor(word / 256), word % 256);
    else bytes.push(word);
  }
  return Uint8Array.from(bytes);
}

/** How many bytes a part of so many signs holds. */
export const bytesInPart = (signs: number): number => Math.floor((signs - HEAD) / 3) * 2;

/**
 * The letters of packResult as at most 4 texts of at most `most` signs each, all about as long; null where they do not fit.
 * Each may stand in a picture of its own, in any order.
 */
export function resultParts(letters: string, most: number): string[] | null {
  const bytes = bytesOf(letters);
  if (bytes === null || bytesInPart(most) < 1) return null;
  const count = Math.ceil(bytes.length / bytesInPart(most));
  if (count > MOST_PARTS) return null;
  // An even number, so that each part but the last fills its signs.
  const each = Math.ceil(bytes.length / count / 2) * 2;
  const id = hashOf(letters).slice(0, 6).toUpperCase();
  return Array.from(
    { length: count },
    (_, i) => `R${i + 1}/${count}:${id}:${signsOf(bytes.subarray(i * each, (i + 1) * each))}`,
  );
}

export interface PartOf {
  readonly id: string;
  readonly number: number;
  readonly of: number;
  readonly bytes: Uint8Array;
}

/** A text as a part of a result; null where it is none. */
export function partOf(text: string): PartOf | null {
  const found = PART.exec(text);
  if (!found) return null;
  const [number, of] = [Number(found[1]), Number(found[2])];
  const bytes = bytesOfSigns(found[4]!);
  return bytes === null || number > of ? null : { id: found[3]!, number, of, bytes };
}

export interface Joined {
  /** Letters of the results of which all parts are there. */
  readonly whole: readonly string[];
  /** Results of which parts are missing: which are there, of how many. */
  readonly open: readonly { readonly id: string; readonly there: readonly number[]; readonly of: number }[];
  /** Texts that are no parts, as they came. */
  readonly rest: readonly string[];
}

/** Puts the parts of any number of results together, in whatever order and however often they came. */
export function joinParts(texts: readonly string[]): Joined {
  const rest: string[] = [];
  const sets = new Map<string, (PartOf | undefined)[]>();
  for (const text of texts) {
    const part = partOf(text.trim());
    if (part === null) {
      rest.push(text);
      continue;
    }
    const key = `${part.id}/${part.of}`;
    const set = sets.get(key) ?? Array.from<PartOf | undefined>({ length: part.of });
    set[part.number - 1] = part;
    sets.set(key, set);
  }
  const whole: string[] = [];
  const open: Joined['open'][number][] = [];
  for (const set of sets.values()) {
    const there = set.filter((part) => part !== undefined);
    const { id, of } = there[0]!;
    if (there.length < of) open.push({ id, there: there.map((part) => part.number), of });
    else whole.push(lettersOf(Uint8Array.from(there.flatMap((part) => [...part.bytes]))));
  }
  return { whole, open, rest };
}
