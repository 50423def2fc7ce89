// The form of a result: a run of an exercise without what the exercise says already. With the exercise it is the whole run.

import * as v from 'valibot';
import type { LogEntry } from '$sim';
import {
  AnswersSchema,
  ClaimedSchema,
  HashText,
  MOST_TICKS,
  RUN_FILE_LIMIT,
  SittingSchema,
  Text,
  Whole,
} from '../runfile';

export const RESULT_FORMAT = 'hand-jetting-result';
export const RESULT_FORMAT_VERSION = 1;
/** Longest text that is read as a result, characters; a whole well takes a thousandth of it. */
export const RESULT_LIMIT = RUN_FILE_LIMIT;
/** Longest log as text, characters. */
export const LOG_LIMIT = 2 * 1024 * 1024;

const { classCode, attempt, spent_s } = SittingSchema.entries;

/** Every field but the log, in the order in which they are packed. */
export const ResultFields = {
  /** Version of the physics that the run was played with. */
  sim: Text(20),
  /** exerciseHash of the exercise, its id and its edition: the last two only to say which, where the first differs. */
  exercise: HashText,
  exerciseId: Text(40),
  edition: Whole(9999),
  /** Sign of the learner: a number as T-07, or a picture. */
  who: v.pipe(Text(60), v.regex(/^[^\u0000-\u001f\u007f]*$/, 'one line')),
  /** Both null where the run was not played for a class. */
  classCode: v.nullable(classCode),
  attempt: v.nullable(attempt),
  practice: v.boolean(),
  seed: Whole(4294967295),
  /** Where the learner took over from the crew before; a lesson without one has none. */
  start_tick: v.exactOptional(Whole(MOST_TICKS)),
  ticks: Whole(MOST_TICKS),
  hash: HashText,
  /** Never trusted: only played again. */
  claimed: ClaimedSchema,
  finished: v.boolean(),
  /** Time at the screen, as the device counted it. */
  spent_s,
  answers: v.exactOptional(AnswersSchema),
};

type Fields = v.InferOutput<v.StrictObjectSchema<typeof ResultFields, undefined>>;

export interface Result extends Fields {
  readonly format: typeof RESULT_FORMAT;
  readonly version: typeof RESULT_FORMAT_VERSION;
  /** The learner's own entries: the crew before is played anew. Of another version of the physics it stays packed, and this is empty. */
  readonly log: readonly LogEntry[];
  /** Found on reading: the text does not say what was once written. */
  readonly altered?: true;
}

/** As a file: the log packed, and a fingerprint over all the rest and the log. */
export const ResultFileSchema = v.strictObject({
  format: v.literal(RESULT_FORMAT),
  version: v.literal(RESULT_FORMAT_VERSION),
  ...ResultFields,
  log: v.pipe(v.string(), v.regex(/^[A-Za-z0-9_-]+$/)),
  check: HashText,
});

/** As it is packed whole: letters have a check of their own. */
export const ResultPackedSchema = v.strictObject({
  version: v.literal(RESULT_FORMAT_VERSION),
  ...ResultFields,
  log: v.pipe(v.string(), v.maxLength(LOG_LIMIT)),
});
