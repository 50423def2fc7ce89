// An exercise as a file, a link or a text, and back. Reading never throws: whatever is wrong comes back as a sentence's key with its field.

import { SIM_VERSION } from '$sim';
import { brokenOff } from '../brokenOff';
import { checkExercise, exerciseProblem, type ExerciseProblem } from './checkExercise';
import { EXERCISE_FORMAT, EXERCISE_FORMAT_VERSION, EXERCISE_LIMIT, type Exercise } from './exerciseSchema';
import { exerciseHash } from './exerciseHash';
import { pack, unpack } from './packed';
import { classCodeOf } from './variant';

export type ReadExercise =
  | {
      readonly ok: true;
      readonly exercise: Exercise;
      /** Of the link that it came by; null where that named none. */
      readonly classCode: string | null;
      /** Made with another version of the physics: it can be played, but grounds and points may differ. */
      readonly otherVersion: boolean;
    }
  | ExerciseProblem;

/** The part of a link after the #: the class, where there is one, and the exercise. */
const LINK = /#\/exercise\/([A-Z0-9]{1,12}|-)\/([A-Za-z0-9_-]+)$/;
const PACKED = /^[A-Za-z0-9_-]+$/;

/** The letters of an exercise, as links and pictures carry them. */
export const packExercise = (exercise: Exercise): string => pack(exercise);

/** What stands behind the address of the page in a link. */
export const exerciseFragment = (exercise: Exercise, classCode: string | null): string =>
  `#/exercise/${classCode ?? '-'}/${packExercise(exercise)}`;

/** The exercise as a file's content: what it is can be read, what lies in the ground not at a glance. */
export function writeExercise(exercise: Exercise): string {
  const { format, version, sim, title, edition } = exercise;
  const head = { format, version, sim, title, edition, hash: exerciseHash(exercise) };
  return `${JSON.stringify({ ...head, packed: packExercise(exercise) }, null, 2)}\n`;
}

const inkB = (size: number): number => Math.round(size / 102.4) / 10;
const tooLarge = (size: number): ExerciseProblem =>
  exerciseProblem('problem.exercise.tooLarge', '', { size_kB: inkB(size), limit_kB: inkB(EXERCISE_LIMIT) });

/** Refuses a file by its size, bytes, before it is read; null when it may be. */
export const exerciseTooLarge = (size: number): ExerciseProblem | null =>
  size > EXERCISE_LIMIT ? tooLarge(size) : null;

function fromData(value: unknown, classCode: string | null): ReadExercise {
  const head = value as { format?: unknown; version?: unknown } | null;
  if (typeof head !== 'object' || head === null || head.format !== EXERCISE_FORMAT)
    return exerciseProblem('problem.exercise.notOne');
  if (typeof head.version === 'number' && head.version > EXERCISE_FORMAT_VERSION)
    return exerciseProblem('problem.exercise.newer', '', { version: head.version, known: EXERCISE_FORMAT_VERSION });
  const checked = checkExercise(value);
  if (!checked.ok) return checked.problems[0]!;
  return { ok: true, exercise: checked.exercise, classCode, otherVersion: checked.exercise.sim !== SIM_VERSION };
}

function fromLetters(letters: string, classCode: string | null): ReadExercise {
  const unpacked = unpack(letters, EXERCISE_LIMIT);
  if (unpacked.ok) return fromData(unpacked.value, classCode);
  if (unpacked.why === 'tooLarge') return tooLarge(EXERCISE_LIMIT + 1);
  return exerciseProblem(unpacked.why === 'damaged' ? 'problem.exercise.damaged' : 'problem.exercise.notOne');
}

function fromJson(text: string): ReadExercise {
  let value: unknown;
  try {
    value = JSON.parse(text);
  } catch {
    return exerciseProblem(brokenOff(text) ? 'problem.exercise.truncated' : 'problem.exercise.notOne');
  }
  const { packed, format } = (value ?? {}) as { packed?: unknown; format?: unknown };
  if (format !== EXERCISE_FORMAT || packed === undefined) return fromData(value, null);
  if (typeof packed !== 'string' || !PACKED.test(packed)) return exerciseProblem('problem.exercise.badField', 'packed');
  return fromLetters(packed, null);
}

/** Reads a file's content, covered or plain, a link, or the letters alone. */
export function readExercise(text: string): ReadExercise {
  if (text.length > EXERCISE_LIMIT) return tooLarge(text.length);
  const trimmed = text.trim();
  if (trimmed === '') return exerciseProblem('problem.exercise.empty');
  if (trimmed.startsWith('{')) return fromJson(trimmed);
  const link = LINK.exec(trimmed);
  if (link) return fromLetters(link[2]!, classCodeOf(link[1]!));
  return PACKED.test(trimmed) ? fromLetters(trimmed, null) : exerciseProblem('problem.exercise.notOne');
}
