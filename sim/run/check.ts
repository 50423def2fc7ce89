// The check of a payload against the table of actions: an entry that is malformed is named by its field and goes no further.

import { ACTION_SPECS, type FieldSpec } from './actions';
import { ACTION_NAMES, type ActionName } from './names';

export type FieldProblem =
  | 'missing'
  | 'notNumber'
  | 'notWhole'
  | 'tooSmall'
  | 'tooLarge'
  | 'notAllowed'
  | 'tooLong'
  | 'unknownAction'
  | 'unknownField';

export interface Malformed {
  readonly kind: 'malformed';
  readonly field: string;
  readonly problem: FieldProblem;
  readonly min?: number;
  readonly max?: number;
}

export type Payload = Readonly<Record<string, unknown>>;

function problemOf(spec: FieldSpec, value: unknown): Malformed | null {
  const bad = (problem: FieldProblem, min?: number, max?: number): Malformed => ({
    kind: 'malformed',
    field: spec.name,
    problem,
    min,
    max,
  });
  switch (spec.type) {
    case 'number':
      if (typeof value !== 'number' || !Number.isFinite(value)) return bad('notNumber', spec.min, spec.max);
      if (value < spec.min) return bad('tooSmall', spec.min, spec.max);
      if (value > spec.max) return bad('tooLarge', spec.min, spec.max);
      return spec.whole && !Number.isInteger(value) ? bad('notWhole', spec.min, spec.max) : null;
    case 'boolean':
      return typeof value === 'boolean' ? null : bad('notAllowed');
    case 'word':
      return typeof value === 'string' && spec.words.includes(value) ? null : bad('notAllowed');
    default:
      if (typeof value !== 'string') return bad('notAllowed');
      return value.length > spec.maxLength ? bad('tooLong', 0, spec.maxLength) : null;
  }
}

export function isActionName(name: unknown): name is ActionName {
  return typeof name === 'string' && (ACTION_NAMES as readonly string[]).includes(name);
}

/** The first thing wrong with the entry, or null. Fields that the table does not know are wrong too: a log holds nothing that is not understood. */
export function malformedIn(name: unknown, payload: unknown): Malformed | null {
  if (!isActionName(name)) return { kind: 'malformed', field: 'action', problem: 'unknownAction' };
  if (typeof payload !== 'object' || payload === null || Array.isArray(payload))
    return { kind: 'malformed', field: 'payload', problem: 'missing' };
  const given = payload as Payload;
  const { fields } = ACTION_SPECS[name];
  for (const spec of fields) {
    const value = given[spec.name];
    if (value === undefined || value === null) {
      if (!spec.optional) return { kind: 'malformed', field: spec.name, problem: 'missing' };
      continue;
    }
    const problem = problemOf(spec, value);
    if (problem) return problem;
  }
  for (const key of Object.keys(given)) {
    if (!fields.some((spec) => spec.name === key)) return { kind: 'malformed', field: key, problem: 'unknownField' };
  }
  if (name === 'waitFor' && (given.time_s ?? null) === null && (given.until ?? null) === null)
    return { kind: 'malformed', field: 'time_s', problem: 'missing' };
  return null;
}
