// Reads what is handed in: a result's file, its letters, its parts, or a run file with its exercise. Reading never throws: whatever is wrong comes back as a sentence's key with its field.

import * as v from 'valibot';
import { SIM_VERSION, type LogEntry } from '$sim';
import { brokenOff } from '../brokenOff';
import { unpack } from '../exercises/packed';
import { readRunFile, RUN_FORMAT } from '../runfile';
import type { WordData, WordKey } from '../words/index';
import { logOfText } from './logText';
import { FIELD_NAMES } from './resultFile';
import { resultCheck, resultOfFile } from './resultOf';
import { joinParts } from './resultParts';
import {
  LOG_LIMIT,
  RESULT_FORMAT,
  RESULT_FORMAT_VERSION,
  RESULT_LIMIT,
  ResultFileSchema,
  ResultPackedSchema,
  type Result,
} from './resultSchema';

export type ResultProblemKey = Extract<WordKey, `problem.result.${string}` | `problem.file.${string}`>;
export interface ResultProblem {
  readonly ok: false;
  readonly problem: ResultProblemKey;
  /** Where, as a path; '' where it is the whole. */
  readonly field: string;
  readonly data: WordData;
}
export type ReadResult = { readonly ok: true; readonly result: Result } | ResultProblem;

const problem = (key: ResultProblemKey, field = '', data: WordData = {}): ResultProblem => ({
  ok: false,
  problem: key,
  field,
  data: field === '' ? data : { field, ...data },
});

const inMB = (characters: number): number => Math.round(characters / 104857.6) / 10;
const badField = (field: string): ResultProblem => problem('problem.result.badField', field);
const newer = (version: number): ResultProblem =>
  problem('problem.result.newer', 'version', { version, known: RESULT_FORMAT_VERSION });

type Checked = Omit<v.InferOutput<typeof ResultPackedSchema>, 'version'>;

/** The entries of a log's text; those of another version of the physics may have acts that are not known here. */
function entriesOf({ sim, ticks, start_tick, log }: Checked): readonly LogEntry[] | ResultProblem {
  if (sim !== SIM_VERSION) return [];
  const read = logOfText(log);
  if (!read.ok) return badField(`log.${read.line}`);
  const outside = read.log.findIndex(([tick]) => tick > ticks || tick < (start_tick ?? 0));
  return outside < 0 ? read.log : badField(`log.${outside}`);
}

function resultFrom(checked: Checked, check: string | null): ReadResult {
  const entries = entriesOf(checked);
  if ('ok' in entries) return entries;
  const { log, ...fields } = checked;
  const result = { format: RESULT_FORMAT, version: RESULT_FORMAT_VERSION, ...fields, log: entries } as const;
  const altered = check !== null && resultCheck(result, log) !== check;
  return { ok: true, result: altered ? { ...result, altered } : result };
}

function fromFile(value: unknown): ReadResult {
  const { version } = value as { version?: unknown };
  if (typeof version === 'number' && version > RESULT_FORMAT_VERSION) return newer(version);
  const parsed = v.safeParse(ResultFileSchema, value);
  if (!parsed.success) return badField(v.getDotPath(parsed.issues[0]) || 'result');
  const { format: _format, version: _version, check, ...fields } = parsed.output;
  const unpacked = unpack(fields.log, LOG_LIMIT);
  if (!unpacked.ok || typeof unpacked.value !== 'string') return badField('log');
  return resultFrom({ ...fields, log: unpacked.value }, check);
}

function fromLetters(letters: string): ReadResult {
  const unpacked = unpack(letters, LOG_LIMIT);
  if (!unpacked.ok) return problem(unpacked.why === 'damaged' ? 'problem.result.damaged' : 'problem.result.notOne');
  const { value } = unpacked;
  if (!Array.isArray(value) || typeof value[0] !== 'number') return problem('problem.result.notOne');
  const [version, ...values] = value as [number, ...unknown[]];
  if (version > RESULT_FORMAT_VERSION) return newer(version);
  if (values.length !== FIELD_NAMES.length + 1) return problem('problem.result.notOne');
  const given = [...FIELD_NAMES, 'log'].map((name, i) => [name, values[i]] as const);
  const leftOut = (one: unknown): boolean => Array.isArray(one) && one.length === 0;
  const named = Object.fromEntries(given.filter(([, one]) => !leftOut(one)));
  const parsed = v.safeParse(ResultPackedSchema, { version, ...named });
  if (!parsed.success) return badField(v.getDotPath(parsed.issues[0]) || 'result');
  const { version: _version, ...fields } = parsed.output;
  return resultFrom(fields, null);
}

function fromRunFile(text: string): ReadResult {
  const read = readRunFile(text);
  if (!read.ok) return problem(read.problem, String(read.data.field ?? ''), read.data);
  if (read.file.exercise === undefined) return problem('problem.result.noExercise', 'exercise');
  return { ok: true, result: resultOfFile(read.file) };
}

function fromJson(text: string): ReadResult {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return problem(brokenOff(text) ? 'problem.result.truncated' : 'problem.result.notOne');
  }
  const { format } = (value ?? {}) as { format?: unknown };
  if (format === RUN_FORMAT) return fromRunFile(text);
  return format === RESULT_FORMAT ? fromFile(value) : problem('problem.result.notOne');
}

/** Reads one result. Whether it can be reproduced is for judging to find out. */
export function readResult(text: string): ReadResult {
  if (text.length > RESULT_LIMIT)
    return problem('problem.result.tooLarge', '', { size_MB: inMB(text.length), limit_MB: inMB(RESULT_LIMIT) });
  const trimmed = text.trim();
  if (trimmed === '') return problem('problem.result.empty');
  if (trimmed.startsWith('{')) return fromJson(trimmed);
  const { whole, open, rest } = joinParts(trimmed.split(/\s+/));
  const part = open[0];
  if (part) return problem('problem.result.parts', '', { there: part.there.length, of: part.of });
  const letters = [...whole, ...rest];
  return letters.length === 1 ? fromLetters(letters[0]!) : problem('problem.result.notOne');
}
