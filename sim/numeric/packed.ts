// A row of 64-bit floats as one short text, exact to the last bit: stretches of one repeated value are written once.
// The bytes: for each stretch its length as a base-128 number with a lowest bit that says "repeated", then one value
// or all of them, big end first; the bytes as base 64 without padding.

const DIGITS = 'ABCDEFGHIJKLMNOPQRSTUVWXYZabcdefghijklmnopqrstuvwxyz0123456789+/';
const VALUE_OF = new Map(Array.from(DIGITS, (digit, value) => [digit, value] as const));
const BYTES = 8;
/** A repeat shorter than this is cheaper among the single values. */
const WORTH_REPEATING = 3;

const bits = new DataView(new ArrayBuffer(BYTES));

/** Equal to the last bit: -0 is not 0. */
function same(a: number, b: number): boolean {
  return a === b && (a !== 0 || 1 / a === 1 / b);
}

function pushLength(bytes: number[], length: number, repeated: boolean): void {
  let rest = length * 2 + (repeated ? 1 : 0);
  for (; rest >= 128; rest = Math.floor(rest / 128)) bytes.push(128 + (rest % 128));
  bytes.push(rest);
}

function pushValue(bytes: number[], value: number): void {
  bits.setFloat64(0, value);
  for (let i = 0; i < BYTES; i++) bytes.push(bits.getUint8(i));
}

/** How many values from `at` on are the same as the one there. */
function repeatsFrom(values: Float64Array, at: number): number {
  let end = at + 1;
  while (end < values.length && same(values[end], values[at])) end++;
  return end - at;
}

function pushSingles(bytes: number[], values: Float64Array, from: number, to: number): void {
  if (to <= from) return;
  pushLength(bytes, to - from, false);
  for (let i = from; i < to; i++) pushValue(bytes, values[i]);
}

function base64(bytes: readonly number[]): string {
  let text = '';
  for (let i = 0; i < bytes.length; i += 3) {
    const left = bytes.length - i;
    const word = bytes[i] * 65536 + (left > 1 ? bytes[i + 1] : 0) * 256 + (left > 2 ? bytes[i + 2] : 0);
    text += DIGITS[(word >> 18) & 63] + DIGITS[(word >> 12) & 63];
    if (left > 1) text += DIGITS[(word >> 6) & 63];
    if (left > 2) text += DIGITS[word & 63];
  }
  return text;
}

function bytesOf(text: string): Uint8Array {
  const bytes = new Uint8Array(Math.floor((text.length * 3) / 4));
  let word = 0;
  let held = 0;
  let next = 0;
  for (const digit of text) {
    const value = VALUE_OF.get(digit);
    if (value === undefined) throw new RangeError(`'${digit}' is no digit of a packed row.`);
    word = ((word << 6) | value) & 0xffff;
    held += 6;
    if (held < 8) continue;
    held -= 8;
    bytes[next++] = (word >> held) & 255;
  }
  return bytes;
}

/** The row as text. Worked value: 120 zeros are written in 14 signs. */
export function packed(values: Float64Array): string {
  const bytes: number[] = [];
  let from = 0;
  for (let at = 0; at < values.length;) {
    const repeats = repeatsFrom(values, at);
    if (repeats >= WORTH_REPEATING) {
      pushSingles(bytes, values, from, at);
      pushLength(bytes, repeats, true);
      pushValue(bytes, values[at]);
      from = at + repeats;
    }
    at += repeats;
  }
  pushSingles(bytes, values, from, values.length);
  return base64(bytes);
}

/** The row that a text was made of. Throws RangeError for a text that `packed` cannot have written. */
export function unpacked(text: string): Float64Array {
  const bytes = bytesOf(text);
  const view = new DataView(bytes.buffer);
  const values: number[] = [];
  for (let at = 0; at < bytes.length;) {
    let head = 0;
    for (let place = 1, more = true; more; place *= 128) {
      if (at >= bytes.length) throw new RangeError('A packed row ends in the middle of a length.');
      head += (bytes[at] & 127) * place;
      more = bytes[at++] >= 128;
    }
    const length = Math.floor(head / 2);
    const stored = head % 2 === 1 ? 1 : length;
    if (length === 0 || at + stored * BYTES > bytes.length)
      throw new RangeError('A packed row ends in the middle of a stretch.');
    for (let i = 0; i < length; i++) values.push(view.getFloat64(at + (stored === 1 ? 0 : i) * BYTES));
    at += stored * BYTES;
  }
  return Float64Array.from(values);
}
