// Plain data packed into letters that links, pictures and messages carry unchanged: JSON, deflated (RFC 1951), in base64url (RFC 4648).
// It is also the light cover that keeps layers from being read at a glance; it hides nothing from whoever wants to look.

import { deflateSync, Inflate, strFromU8, strToU8 } from 'fflate';

const LETTERS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789-_';
const VALUE = new Map([...LETTERS].map((letter, i) => [letter, i]));
const CHUNK = 4096;

/** Bytes in base64url. */
export function lettersOf(bytes: Uint8Array): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const left = bytes.length - i;
    const word = (bytes[i]! << 16) | ((bytes[i + 1] ?? 0) << 8) | (bytes[i + 2] ?? 0);
    text += LETTERS[word >>> 18]! + LETTERS[(word >>> 12) & 63]!;
    if (left > 1) text += LETTERS[(word >>> 6) & 63]!;
    if (left > 2) text += LETTERS[word & 63]!;
  }
  return text;
}

/** Undoes lettersOf; null where a letter is none of the alphabet, or the length or the last letter cannot be. */
export function bytesOf(text: string): Uint8Array | null {
  if (text.length % 4 === 1) return null;
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let bits = 0;
  let word = 0;
  let at = 0;
  for (const letter of text) {
    const value = VALUE.get(letter);
    if (value === undefined) return null;
    word = ((word << 6) | value) & 0xffffff;
    bits += 6;
    if (bits >= 8) {
      bits -= 8;
      bytes[at++] = (word >>> bits) & 255;
    }
  }
  return (word & ((1 << bits) - 1)) === 0 ? bytes : null;
}

/** A fingerprint of the bytes, so that an altered letter is found: CRC-32 of ISO 3309, four bytes. */
function checkOf(bytes: Uint8Array): number {
  let crc = -1;
  for (const byte of bytes) {
    crc ^= byte;
    for (let k = 0; k < 8; k++) crc = (crc >>> 1) ^ (0xedb88320 & -(crc & 1));
  }
  return ~crc >>> 0;
}

export function pack(value: unknown): string {
  const bytes = deflateSync(strToU8(JSON.stringify(value)), { level: 9 });
  const all = new Uint8Array(bytes.length + 4);
  all.set(bytes);
  new DataView(all.buffer).setUint32(bytes.length, checkOf(bytes));
  return lettersOf(all);
}

export type Unpacked =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly why: 'notPacked' | 'damaged' | 'tooLarge' };

/** The bytes behind the deflated ones, at most `limit`; null where there are more. Throws on what is not deflated. */
function inflated(bytes: Uint8Array, limit: number): Uint8Array | null {
  const parts: Uint8Array[] = [];
  let length = 0;
  let whole = false;
  const inflate = new Inflate((part, last) => {
    parts.push(part);
    length += part.length;
    whole = last;
  });
  // In small bites: a short text may stand for an endless one.
  for (let i = 0; i < bytes.length && length <= limit; i += CHUNK)
    inflate.push(bytes.subarray(i, i + CHUNK), i + CHUNK >= bytes.length);
  if (length > limit) return null;
  if (!whole) throw new RangeError('The deflated text breaks off.');
  const all = new Uint8Array(length);
  let at = 0;
  for (const part of parts) {
    all.set(part, at);
    at += part.length;
  }
  return all;
}

/** Undoes pack. `limit`: most bytes of JSON that may come out. Never throws. */
export function unpack(text: string, limit: number): Unpacked {
  const all = bytesOf(text);
  if (all === null || all.length < 6) return { ok: false, why: 'notPacked' };
  const bytes = all.subarray(0, -4);
  if (new DataView(all.buffer).getUint32(bytes.length) !== checkOf(bytes)) return { ok: false, why: 'damaged' };
  try {
    const json = inflated(bytes, limit);
    if (json === null) return { ok: false, why: 'tooLarge' };
    return { ok: true, value: JSON.parse(strFromU8(json)) };
  } catch {
    return { ok: false, why: 'damaged' };
  }
}
