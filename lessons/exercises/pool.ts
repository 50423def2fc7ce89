// Looks for grounds that are equally hard, for the pool of an exercise: the careful crew plays each several times, and those belong together whose
// middles lie close.

import { SIM_VERSION } from '$sim';
import type { Lesson } from '../schema';
import { MOST_SEEDS, type Exercise } from './exerciseSchema';
import { lessonOfExercise } from './lessonOfExercise';
import { beginning } from './lint/begun';
import { SPREAD_points } from './lint/cautions';
import { oneDecimal, type LintStep } from './lint/finding';
import { mapped } from './lint/mapped';
import { wayOf } from './lint/way';

export type Pool = NonNullable<Exercise['pool']>;

export interface PoolWanted {
  /** Grounds that are wanted, 1 to 200. */
  readonly wanted: number;
  /** Courses of chance on each ground that its middle is taken over; left out: five. */
  readonly noises?: number;
  /** Number of the first ground that is tried; the next ones follow. Left out: 1. */
  readonly from_seed?: number;
}

export interface PoolStep extends LintStep {
  /** Grounds that lie together so far. */
  readonly found: number;
}

/** A ground that the careful crew passes on whatever chance does, and its middle there. */
export interface Measured {
  readonly seed: number;
  readonly mean_points: number;
}

const NOISES = 5;
/** There are so many numbers of grounds. */
const SEEDS = 4294967296;
/** So many grounds are tried for each that is wanted, and so many besides, before it is left at what there is. */
const TRIES_each = 3;
const TRIES_besides = 20;

/**
 * Mean of the careful crew's points on a ground over so many courses of chance, 1, 2, ...; null where it does not pass on one of them. Yields the share
 * done now and then.
 */
export function* measuring(lesson: Lesson, seed: number, noises: number): Generator<number, Measured | null> {
  let sum = 0;
  for (let noise = 1; noise <= noises; noise++) {
    const begun = yield* mapped(beginning(lesson, seed, noise), () => (noise - 1) / noises);
    if (!begun) return null;
    const { grade } = yield* mapped(wayOf(begun, 'careful'), (share_frac) => (noise - 1 + share_frac) / noises);
    if (!grade.passed) return null;
    sum += grade.score;
  }
  return { seed, mean_points: sum / noises };
}

/** One ground for all, and nothing that comes by chance: then all numbers are alike. */
const allAlike = ({ ground, faults }: Lesson): boolean =>
  ground.by === 'recipe' && ground.seed !== undefined && faults.length === 0;

/** The largest group whose means lie within so many points, largest less smallest; of equally large ones the one of the higher points. */
export function largestGroup(measured: readonly Measured[], within_points: number): Measured[] {
  const sorted = [...measured].sort((a, b) => a.mean_points - b.mean_points || a.seed - b.seed);
  let best: Measured[] = [];
  let first = 0;
  for (let last = 0; last < sorted.length; last++) {
    while (sorted[last]!.mean_points - sorted[first]!.mean_points > within_points) first++;
    if (last - first + 1 >= best.length) best = sorted.slice(first, last + 1);
  }
  return best;
}

const poolOf = (group: readonly Measured[]): Pool => ({
  sim: SIM_VERSION,
  seeds: group.map(({ seed }) => seed).sort((a, b) => a - b),
  spread_points: oneDecimal(group.at(-1)!.mean_points - group[0]!.mean_points),
});

/**
 * Grounds of an exercise, its own pool left aside, on which the careful crew's middle lies within 5 points (largest less smallest), and which it passes
 * on whatever chance does. Ends when as many as are wanted are found, or when enough were tried: then with the largest group there is, or null where
 * there is none. Yields often; never throws.
 */
export function* calibratingPool(
  exercise: Exercise,
  { wanted, noises = NOISES, from_seed = 1 }: PoolWanted,
): Generator<PoolStep, Pool | null> {
  const lesson = lessonOfExercise(exercise);
  const want = Math.min(MOST_SEEDS, Math.max(1, wanted));
  const most = TRIES_each * want + TRIES_besides;
  const measured: Measured[] = [];
  let group: Measured[] = [];
  for (let tried = 0; tried < most && group.length < want; tried++) {
    const seed = (from_seed + tried) % SEEDS;
    const [known] = measured;
    if (known && allAlike(lesson)) measured.push({ ...known, seed });
    else {
      const one = yield* mapped(measuring(lesson, seed, noises), (part_frac): PoolStep => ({
        share_frac: Math.max(group.length / want, (tried + part_frac) / most),
        doing: 'lint.doing.pool',
        data: { seed, n: Math.floor(part_frac * noises) + 1, of: noises },
        found: group.length,
      }));
      if (one) measured.push(one);
      else if (allAlike(lesson)) return null;
    }
    group = largestGroup(measured, SPREAD_points);
  }
  return group.length > 0 ? poolOf(group) : null;
}
