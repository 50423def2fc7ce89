// Who sits where for a class: the ground and the attempt that follow from the learner's sign and the class code.
import { variantSeed, type Exercise, type Place, type Sitting } from '$lessons';
import { PICTURE_NAMES } from '../app/pictures';
import { begunBy } from '../app/progress';
import type { Learner } from '../app/records';

/** The place of a learner's sign; null where a sign from elsewhere is neither number nor picture. */
export function placeOfWho(who: string): Place | null {
  const picture = (PICTURE_NAMES as readonly string[]).indexOf(who);
  if (picture >= 0) return { picture };
  const number = /^T-(\d{2,3})$/.exec(who);
  return number && Number(number[1]) > 0 ? { number: Number(number[1]) } : null;
}

/** The next attempt of a learner for a class, and the number of its ground. */
export function nextSitting(
  exercise: Exercise,
  learner: Learner,
  classCode: string,
): { seed: number; sitting: Sitting } {
  const attempt = begunBy(learner, exercise.id, classCode) + 1;
  const place = placeOfWho(learner.id) ?? { number: 1 };
  return { seed: variantSeed(exercise, classCode, place, attempt), sitting: { classCode, attempt } };
}

/** Letters and digits that are not mistaken for one another when read aloud or from a wall. */
const LETTERS = 'ACDEFHJKLMNPRTUVWXY3479';
const CODE_LENGTH = 4;

/** A new class code. `draw`: whole numbers from 0 to 4294967295. */
export function newClassCode(draw: () => number): string {
  return Array.from({ length: CODE_LENGTH }, () => LETTERS[draw() % LETTERS.length]).join('');
}

/** An id for a new exercise. */
export function newExerciseId(draw: () => number): string {
  return `exercise-${(draw() % 2176782336).toString(36).padStart(6, '0')}`;
}
