// A fingerprint of any plain data: 16 hex digits from two 32-bit lanes over every name, number and text in it.
// Two equal states give equal fingerprints in every engine; a change of the last bit of one number changes it,
// because each lane's step can be undone for any word (no two words lead to the same lane value).

let laneA = 0;
let laneB = 0;
const bits = new DataView(new ArrayBuffer(8));

const TAG = { null: 1, false: 2, true: 3, number: 4, text: 5, list: 6, record: 7 } as const;

function word(w: number): void {
  let k = Math.imul(w ^ (w >>> 15), 0x85ebca6b);
  k ^= k >>> 13;
  let a = laneA ^ k;
  a = (a << 13) | (a >>> 19);
  laneA = (Math.imul(a, 5) + 0x3c6ef372) | 0;
  k = Math.imul(w ^ (w >>> 16), 0xc2b2ae35);
  k ^= k >>> 14;
  let b = laneB ^ k;
  b = (b << 11) | (b >>> 21);
  laneB = (Math.imul(b, 9) + 0x1b873593) | 0;
}

function numberBits(value: number): boolean {
  // NaN and the infinities have no business in a state.
  if (!(value - value === 0)) return false;
  bits.setFloat64(0, value === 0 ? 0 : value, true);
  word(TAG.number);
  word(bits.getInt32(0, true));
  word(bits.getInt32(4, true));
  return true;
}

function text(value: string): void {
  word(TAG.text);
  word(value.length);
  for (let i = 0; i < value.length; i++) word(value.charCodeAt(i));
}

type NumberArray =
  Float64Array | Float32Array | Int32Array | Uint32Array | Int16Array | Uint16Array | Int8Array | Uint8Array;

const isNumberArray = (value: object): value is NumberArray =>
  ArrayBuffer.isView(value) && !(value instanceof DataView);

/** Walks one value into the lanes; false as soon as something cannot be hashed. */
function walk(value: unknown): boolean {
  switch (typeof value) {
    case 'number':
      return numberBits(value);
    case 'string':
      text(value);
      return true;
    case 'boolean':
      word(value ? TAG.true : TAG.false);
      return true;
    case 'object':
      break;
    default:
      return false;
  }
  if (value === null) {
    word(TAG.null);
    return true;
  }
  if (Array.isArray(value) || isNumberArray(value)) {
    word(TAG.list);
    word(value.length);
    for (let i = 0; i < value.length; i++) if (!walk(value[i])) return false;
    return true;
  }
  const keys = Object.keys(value).sort();
  word(TAG.record);
  word(keys.length);
  for (const key of keys) {
    text(key);
    if (!walk((value as Record<string, unknown>)[key])) return false;
  }
  return true;
}

/** Path to the first value that cannot be hashed, for the error sentence. */
function badPath(value: unknown, path: string): string | null {
  if (typeof value === 'number') return value - value === 0 ? null : path;
  if (value === null || typeof value === 'string' || typeof value === 'boolean') return null;
  if (typeof value !== 'object') return path;
  if (Array.isArray(value) || isNumberArray(value)) {
    for (let i = 0; i < value.length; i++) {
      const bad = badPath(value[i], `${path}[${i}]`);
      if (bad !== null) return bad;
    }
    return null;
  }
  for (const key of Object.keys(value).sort()) {
    const bad = badPath((value as Record<string, unknown>)[key], path === '' ? key : `${path}.${key}`);
    if (bad !== null) return bad;
  }
  return null;
}

const hex = (lane: number): string => (lane >>> 0).toString(16).padStart(8, '0');

/** Last stirring of a lane, so that near states do not look alike. */
function stirred(lane: number): number {
  let h = Math.imul(lane ^ (lane >>> 16), 0x7feb352d);
  h = Math.imul(h ^ (h >>> 15), 0x846ca68b);
  return h ^ (h >>> 16);
}

/**
 * Fingerprint of plain data: records (keys in sorted order, their names count), lists and typed arrays (alike),
 * numbers as 64-bit floats (-0 counts as 0), text, booleans, null.
 * Throws RangeError naming the path of a NaN, an infinity, an undefined or a function.
 */
export function hashOf(value: unknown): string {
  laneA = 0x2545f491;
  laneB = 0x6c8e9cf5;
  if (!walk(value)) throw new RangeError(`Only finite plain data can be hashed; not so at '${badPath(value, '')}'.`);
  return hex(stirred(laneA)) + hex(stirred(laneB));
}
