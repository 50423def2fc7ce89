// The grounds of a class, for its answer key: one for each learner and attempt, or one for all where all stand on the same.
import { lessonOfExercise, variantSeed, type Exercise } from '$lessons';
import { PICTURE_NAMES } from '../../app/pictures';

export interface Asked {
  readonly code: string;
  /** Learners T-01 to this one. */
  readonly numbers: number;
  readonly pictures: boolean;
  readonly attempt: number;
}

export interface KeyGround {
  readonly seed: number;
  /** Signs of those who stand on it. */
  readonly who: readonly string[];
}

export const MOST_NUMBERS = 60;
export const MOST_ATTEMPT = 99;

/** Layers, water and what goes wrong are the same for everybody; only chance differs. */
export function sameForAll(exercise: Exercise): boolean {
  const { ground, faults } = lessonOfExercise(exercise);
  return ground.by === 'recipe' && ground.seed !== undefined && faults.length === 0;
}

/** In the order of the signs; a ground that several have stands once. */
export function groundsOf(exercise: Exercise, { code, numbers, pictures, attempt }: Asked): KeyGround[] {
  const places = [
    ...Array.from({ length: numbers }, (_, i) => ({
      who: `T-${String(i + 1).padStart(2, '0')}`,
      place: { number: i + 1 },
    })),
    ...(pictures ? PICTURE_NAMES.map((who, picture) => ({ who, place: { picture } })) : []),
  ];
  const bySeed = new Map<number, string[]>();
  for (const { who, place } of places) {
    const seed = variantSeed(exercise, code, place, attempt);
    bySeed.set(seed, [...(bySeed.get(seed) ?? []), who]);
  }
  const grounds = [...bySeed].map(([seed, who]) => ({ seed, who }));
  return sameForAll(exercise) && grounds.length > 0
    ? [{ seed: grounds[0]!.seed, who: grounds.flatMap(({ who }) => who) }]
    : grounds;
}
