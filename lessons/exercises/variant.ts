// Which ground a learner gets: from class, place and attempt, so that no phone has to ask another and neighbours in a room have different ones.

import { createStream } from '$sim';
import { exerciseHash } from './exerciseHash';
import type { Exercise } from './exerciseSchema';

/** A learner by number, 1 to 999, or by picture, 0 for the first of the pictures. */
export type Place = { readonly number: number } | { readonly picture: number };

/** The most that a class is called by. */
export const CLASS_CODE = /^[A-Z0-9]{1,12}$/;

/** The class code as typed, in capitals and without blanks or hyphens; null where it is none. */
export function classCodeOf(text: string): string | null {
  const code = text.toUpperCase().replace(/[\s-]+/g, '');
  return CLASS_CODE.test(code) ? code : null;
}

/** The numbers of the pool in the order of that class. */
function shuffled(seeds: readonly number[], name: string): number[] {
  const stream = createStream(name);
  const order = [...seeds];
  for (let i = order.length - 1; i > 0; i--) {
    const j = Math.floor(stream.uniform() * (i + 1));
    [order[i], order[j]] = [order[j]!, order[i]!];
  }
  return order;
}

const common = (a: number, b: number): number => (b === 0 ? a : common(b, a % b));

/** From one attempt to the next so many places on: a third of the pool, and no ground comes again before all others have. */
function stride(size: number): number {
  let step = Math.max(1, Math.floor(size / 3));
  while (common(step, size) !== 1) step++;
  return step;
}

/**
 * The number of the ground for a learner's attempt (1, 2, ...). With a pool: numbers count from its beginning, pictures from its end, so
 * that all differ while there are grounds enough. Without one: any number, the same one each time.
 */
export function variantSeed(exercise: Exercise, code: string, place: Place, attempt: number): number {
  const name = `variant/${exerciseHash(exercise)}/${code}`;
  const who = 'number' in place ? place.number - 1 : -1 - place.picture;
  if (!exercise.pool) return Math.floor(createStream(`${name}/${who}/${attempt}`).uniform() * 4294967296);
  const order = shuffled(exercise.pool.seeds, name);
  const size = order.length;
  const index = (who + (attempt - 1) * stride(size)) % size;
  return order[(index + size) % size]!;
}
