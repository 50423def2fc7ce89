// The ground that an exercise and a number make, as the instructor is shown it: beds, water, salt, what lies hidden in it.
import { lessonOfExercise, scenarioOf, type Exercise } from '$lessons';
import type { Ground } from '$sim';

export interface Shown {
  readonly ground: Ground;
  /** How deep the hole is to go, or may go, m. */
  readonly goal_m: number;
  /** How deep it is worth looking, m. */
  readonly shown_m: number;
  readonly beds: readonly { readonly kind: string; readonly top_m: number; readonly bottom_m: number }[];
  /** Stretches of water that is not fresh. */
  readonly salty: readonly { readonly top_m: number; readonly bottom_m: number; readonly salt_gL: number }[];
}

/** Water with more than this is tasted, g/L. */
const SALTY_gL = 1;
const BELOW_m = 1.5;
const LEAST_m = 5;

function saltyOf({ salinity, depth_m }: Ground): Shown['salty'] {
  return salinity.flatMap(({ from_m, salt_gL }, i) => {
    const bottom_m = salinity[i + 1]?.from_m ?? depth_m;
    return salt_gL > SALTY_gL && bottom_m > from_m ? [{ top_m: from_m, bottom_m, salt_gL }] : [];
  });
}

/** Null where no ground can be made of it. */
export function groundShown(exercise: Exercise, seed: number): Shown | null {
  try {
    const lesson = lessonOfExercise(exercise);
    const { ground } = scenarioOf(lesson, seed);
    const goal_m = lesson.end.depth_m;
    const shown_m = Math.min(ground.depth_m, Math.max(LEAST_m, goal_m + BELOW_m, ground.lowestWater_m + BELOW_m));
    const beds = ground.layers
      .filter(({ top_m }) => top_m < shown_m)
      .map(({ kind, top_m, bottom_m }) => ({ kind, top_m, bottom_m: Math.min(bottom_m, shown_m) }));
    return { ground, goal_m, shown_m, beds, salty: saltyOf(ground) };
  } catch {
    return null;
  }
}
