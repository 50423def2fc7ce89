// Files of a class as somebody may have altered them: by bytes, by fields, inside the packed letters, by mixing parts. The same number always gives the same text.
import {
  exerciseFragment,
  lessonOfExercise,
  newExercise,
  pack,
  packExercise,
  packResult,
  playCrew,
  resultOf,
  resultParts,
  unpack,
  writeExercise,
  writeResult,
  writeRunFile,
  type Exercise,
} from '$lessons';
import { createStream, type Stream } from '$sim';

export type FileKind = 'exercise' | 'result';
export interface Altered {
  readonly kind: FileKind;
  /** What was done. */
  readonly how: string;
  readonly text: string;
}

const LIMIT = 4 * 1024 * 1024;
/** What a script would have to do to be noticed. */
export const SCRIPT = 'globalThis.ranFromFile=true';
const SCRIPTS = [
  `<img src=x onerror="${SCRIPT}">`,
  `<script>${SCRIPT}</script>`,
  `javascript:${SCRIPT}`,
  '${' + SCRIPT + '}',
  `=cmd|' /c x'!A1`,
  `"};${SCRIPT};//`,
];

interface Base {
  readonly kind: FileKind;
  readonly name: string;
  readonly text: string;
}

/** The exercise of the results. */
export const LAID: Exercise = {
  ...newExercise('first-rods', 'exercise-laid', 'Laid by hand'),
  briefing: ['Dig with care.'],
  ground: {
    by: 'layers',
    layers: [
      { kind: 'topsoil', thickness_m: 0.5 },
      { kind: 'silt', thickness_m: 1.2 },
      { kind: 'coarseSand', thickness_m: 6 },
    ],
    waterTable_m: 2,
    swing_m: 1,
    confinedRise_m: 0,
    perched: false,
    salt: null,
    seed: 7,
  },
  pool: { sim: '0', seeds: [3, 5, 8], spread_points: 4 },
};

function basesOf(): Base[] {
  const lesson = lessonOfExercise(LAID);
  const run = playCrew(lesson, 'green', 3);
  const sitting = { classCode: 'B7', attempt: 1, spent_s: 60 };
  const result = resultOf(run, lesson, { who: 'T-01', sitting, answers: { 'a.question': ['one'], other: 'text' } });
  const well = newExercise('bad-day', 'exercise-well', 'A whole well');
  return [
    { kind: 'exercise', name: 'file', text: writeExercise(LAID) },
    { kind: 'exercise', name: 'plain file', text: JSON.stringify(LAID) },
    { kind: 'exercise', name: 'plain file of a well', text: JSON.stringify(well) },
    { kind: 'exercise', name: 'link', text: exerciseFragment(LAID, 'B7') },
    { kind: 'exercise', name: 'letters', text: packExercise(well) },
    { kind: 'result', name: 'file', text: writeResult(result) },
    { kind: 'result', name: 'letters', text: packResult(result) },
    { kind: 'result', name: 'parts', text: resultParts(packResult(result), 200)!.join('\n') },
    { kind: 'result', name: 'run file', text: writeRunFile(run, lesson, { who: 'T-01', sitting }) },
  ];
}

let bases: Base[] | null = null;

const below = (stream: Stream, count: number): number => Math.floor(stream.uniform() * count);
const pick = <One>(stream: Stream, list: readonly One[]): One => list[below(stream, list.length)]!;

/** What stands in place of a value: of another type, too large, too deep, or up to something. */
function strange(stream: Stream): unknown {
  return pick<() => unknown>(stream, [
    () => null,
    () => stream.uniform() < 0.5,
    () => -1,
    () => 1e308,
    () => 0.1 + below(stream, 1000),
    () => below(stream, 4294967296),
    () => '',
    () => pick(stream, SCRIPTS),
    () => 'x'.repeat(100 + below(stream, 100000)),
    () => '\u0000\u202e\ud800',
    () => [],
    () => ({}),
    () => JSON.parse('{"__proto__":{"polluted":true},"constructor":{"prototype":{"polluted":true}}}'),
    () => Array.from({ length: 5000 }, (_, i) => i),
    () => deep(300),
  ])();
}

function deep(levels: number): unknown {
  let value: unknown = 1;
  for (let i = 0; i < levels; i++) value = i % 2 ? [value] : { a: value };
  return value;
}

/** Every place in the data, as the record or list it stands in and its key. */
function placesIn(value: unknown, found: [object, string][] = []): [object, string][] {
  if (typeof value !== 'object' || value === null) return found;
  for (const key of Object.keys(value)) {
    found.push([value, key]);
    placesIn((value as Record<string, unknown>)[key], found);
  }
  return found;
}

/** The data with one thing changed. */
function fieldChanged(value: unknown, stream: Stream): string {
  const places = placesIn(value);
  if (places.length === 0) return 'nothing';
  const [holder, key] = pick(stream, places) as [Record<string, unknown>, string];
  const act = below(stream, 5);
  if (act === 0) delete holder[key];
  else if (act === 1) {
    const name = pick(stream, ['extra', '__proto__', 'constructor', 'toString', 'a.b', '']);
    Object.defineProperty(holder, name, {
      value: strange(stream),
      enumerable: true,
      configurable: true,
      writable: true,
    });
  } else if (act === 2) {
    const [other, otherKey] = pick(stream, places) as [Record<string, unknown>, string];
    holder[key] = structuredClone(other[otherKey]);
  } else holder[key] = strange(stream);
  return ['field left out', 'field added', 'value of another field', 'strange value', 'strange value'][act]!;
}

function dataChanged(text: string, stream: Stream): { how: string; text: string } | null {
  if (!text.startsWith('{')) {
    const letters = text.split('/').at(-1)!;
    const unpacked = unpack(letters, LIMIT);
    if (!unpacked.ok) return null;
    const how = fieldChanged(unpacked.value, stream);
    return { how: `${how}, packed again`, text: text.replace(letters, pack(unpacked.value)) };
  }
  const value = JSON.parse(text) as Record<string, unknown>;
  const inner = typeof value.packed === 'string' ? 'packed' : typeof value.log === 'string' ? 'log' : null;
  if (inner && stream.uniform() < 0.4) {
    const unpacked = unpack(value[inner] as string, LIMIT);
    if (!unpacked.ok) return null;
    const log = typeof unpacked.value === 'string' ? bytesChanged(unpacked.value, stream) : null;
    const how = log ? log.how : fieldChanged(unpacked.value, stream);
    return {
      how: `${how}, packed again`,
      text: JSON.stringify({ ...value, [inner]: pack(log ? log.text : unpacked.value) }),
    };
  }
  const how = fieldChanged(value, stream);
  let changed = JSON.stringify(value);
  // What JSON cannot say by way of data: numbers beyond all numbers, brackets without end.
  const raw = pick(stream, [
    '1e999',
    '-1e999',
    '['.repeat(20000) + ']'.repeat(20000),
    '{"a":'.repeat(5000) + '1' + '}'.repeat(5000),
  ]);
  if (stream.uniform() < 0.15) changed = changed.replace(/:(\d+(\.\d+)?)/, `:${raw}`);
  return { how, text: changed };
}

function bytesChanged(text: string, stream: Stream): { how: string; text: string } {
  const at = below(stream, text.length);
  const end = Math.min(text.length, at + 1 + below(stream, 40));
  const sign = (): string => String.fromCharCode(32 + below(stream, 95));
  switch (below(stream, 6)) {
    case 0:
      return { how: 'byte changed', text: text.slice(0, at) + sign() + text.slice(at + 1) };
    case 1:
      return { how: 'bytes left out', text: text.slice(0, at) + text.slice(end) };
    case 2:
      return {
        how: 'bytes put in',
        text: text.slice(0, at) + Array.from({ length: end - at }, sign).join('') + text.slice(at),
      };
    case 3:
      return { how: 'cut off', text: text.slice(0, at) };
    case 4:
      return { how: 'bytes twice', text: text.slice(0, end) + text.slice(at) };
    default:
      return {
        how: 'strange byte',
        text:
          text.slice(0, at) + pick(stream, ['\u0000', '\ufeff', '\ud800', '\u2028', '\n', '"']) + text.slice(at + 1),
      };
  }
}

function partsMixed(stream: Stream, texts: readonly string[]): { how: string; text: string } {
  const parts = [...texts];
  const at = below(stream, parts.length);
  const other = below(stream, parts.length);
  [parts[at], parts[other]] = [parts[other]!, parts[at]!];
  if (stream.uniform() < 0.5) parts[at] = parts[at]!.replace(/^R\d/, `R${below(stream, 10)}`);
  else parts[at] = parts[at]!.replace(/^(R\d\/\d:)[0-9A-F]{6}/, `$1${String(100000 + below(stream, 900000))}`);
  return { how: 'parts mixed', text: parts.join(stream.uniform() < 0.5 ? '\n' : ' ') };
}

export function alteredFile(n: number): Altered {
  bases ??= basesOf();
  const stream = createStream(`altered/${n}`);
  const { kind, name, text } = bases[n % bases.length]!;
  const parts = name === 'parts' && stream.uniform() < 0.5 ? partsMixed(stream, text.split('\n')) : null;
  const changed = parts ?? (stream.uniform() < 0.6 ? dataChanged(text, stream) : null) ?? bytesChanged(text, stream);
  return { kind, how: `${kind}, ${name}: ${changed.how}`, text: changed.text };
}
