// A learner's progress as one file: written, and read from outside. Reading never throws; whatever is wrong is named by its field.
// Points in it are the learner's own account; where they must be proven, run files are played again.
import * as v from 'valibot';
import type { KeyedMessage } from '../words';
import { isPicture } from './pictures';
import type { Learner, Shown } from './records';

export const PROGRESS_FORMAT = 'hand-jetting-progress';
export const PROGRESS_VERSION = 1;
/** Longest file that is read, characters: thousands of tries take less. */
export const PROGRESS_LIMIT = 512 * 1024;

const Id = v.pipe(v.string(), v.regex(/^[a-z][a-z0-9-]{0,39}$/));
const Who = v.pipe(
  v.string(),
  v.check((id) => isPicture(id) || /^T-(0[1-9]|[1-9]\d{1,2})$/.test(id)),
);
const Share = v.pipe(v.number(), v.minValue(0), v.maxValue(1));
/** Milliseconds since 1970; the largest day that a date can hold. */
const Moment_ms = v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(8.64e15));
const Whole = (least: number, most: number) => v.pipe(v.number(), v.integer(), v.minValue(least), v.maxValue(most));

const ProgressSchema = v.strictObject({
  format: v.literal(PROGRESS_FORMAT),
  version: v.literal(PROGRESS_VERSION),
  who: Who,
  made_ms: Moment_ms,
  best: v.record(
    Id,
    v.strictObject({
      score: v.pipe(v.number(), v.minValue(0), v.maxValue(100)),
      passed: v.boolean(),
      tries: Whole(1, 100000),
    }),
  ),
  shown: v.record(Id, v.strictObject({ best_frac: Share, last_frac: Share, last_ms: Moment_ms })),
  seen: v.record(Id, v.pipe(v.array(Whole(0, 4294967295)), v.maxLength(20000))),
});

export type ReadProgress =
  { readonly ok: true; readonly learner: Learner } | { readonly ok: false; readonly problem: KeyedMessage };

export function writeProgress(learner: Learner): string {
  const { id, made_ms, best, shown = {}, seen = {} } = learner;
  const file = { format: PROGRESS_FORMAT, version: PROGRESS_VERSION, who: id, made_ms, best, shown, seen };
  return `${JSON.stringify(file)}\n`;
}

/** The same progress under another sign. */
export function underSign(learner: Learner, id: string): Learner {
  const picture = isPicture(id) ? id : null;
  return { ...learner, id, picture, number: picture === null ? Number(id.slice(2)) : null };
}

const refused = (key: string, data: KeyedMessage['data'] = {}): ReadProgress => ({ ok: false, problem: { key, data } });

export function readProgress(text: string): ReadProgress {
  if (text.length > PROGRESS_LIMIT) return refused('progress.tooLarge', { limit: PROGRESS_LIMIT });
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return refused('progress.notJson');
  }
  const head = value as { format?: unknown; version?: unknown } | null;
  if (typeof head !== 'object' || head === null || head.format !== PROGRESS_FORMAT)
    return refused('progress.wrongFormat');
  if (typeof head.version === 'number' && head.version > PROGRESS_VERSION) return refused('progress.newer');
  const result = v.safeParse(ProgressSchema, value);
  if (!result.success) return refused('progress.badField', { field: v.getDotPath(result.issues[0]) ?? 'file' });
  const { who, made_ms, best, shown, seen } = result.output;
  const learner = { id: who, picture: null, number: null, made_ms, best, shown: shown as Shown, seen };
  return { ok: true, learner: underSign(learner, who) };
}

/** Refuses a file by its size before it is read. */
export async function readProgressFile(file: Blob): Promise<ReadProgress> {
  if (file.size > PROGRESS_LIMIT) return refused('progress.tooLarge', { limit: PROGRESS_LIMIT });
  try {
    return readProgress(await file.text());
  } catch {
    return refused('file.unreadable');
  }
}
