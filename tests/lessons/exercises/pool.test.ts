// Grounds that are equally hard: a class of forty gets forty of them, and the search finds such.
import { describe, expect, test } from 'vitest';
import {
  atOnce,
  calibratingPool,
  lessonOfExercise,
  newExercise,
  variantSeed,
  type Exercise,
  type PoolStep,
} from '$lessons';
import { largestGroup, measuring } from '../../../lessons/exercises/pool';
import { exerciseIn, namesIn } from './files';

const MOST_points = 5;
const NOISES = 5;

describe.each(namesIn('pools'))('the pool of %s', (name) => {
  const exercise = exerciseIn(`pools/${name}`);
  const pool = exercise.pool!;
  const seedOf = (number: number): number => variantSeed(exercise, 'B7', { number }, 1);

  test('gives forty learners of one class forty grounds', () => {
    const seeds = Array.from({ length: 40 }, (_, i) => seedOf(i + 1));
    expect(new Set(seeds).size).toBe(40);
    for (const seed of seeds) expect(pool.seeds).toContain(seed);
    expect(pool.spread_points).toBeLessThanOrEqual(MOST_points);
  });

  // All forty are measured in the sweep.
  test('is as hard for the first learner as for the last', () => {
    const lesson = lessonOfExercise(exercise);
    const means = [1, 20, 40].map((number) => atOnce(measuring(lesson, seedOf(number), NOISES))!.mean_points);
    expect(Math.max(...means) - Math.min(...means)).toBeLessThanOrEqual(pool.spread_points + 0.05);
  });
});

describe('the search', () => {
  const search = (exercise: Exercise, wanted: number) => {
    const steps: PoolStep[] = [];
    const task = calibratingPool(exercise, { wanted, noises: 2, from_seed: 11 });
    for (;;) {
      const { done, value } = task.next();
      if (done) return { pool: value, steps };
      steps.push(value);
    }
  };

  test('ends as soon as enough lie together, and tells how far it is', () => {
    const { pool, steps } = search(newExercise('round-the-loop', 'exercise-search', 'A search'), 3);
    expect(pool).toMatchObject({ seeds: [11, 12, 13] });
    expect(pool!.spread_points).toBeLessThanOrEqual(MOST_points);
    expect(new Set(steps.map(({ found }) => found))).toEqual(new Set([0, 1, 2]));
    steps.forEach(({ share_frac }, i) => {
      expect(share_frac).toBeGreaterThanOrEqual(i === 0 ? 0 : steps[i - 1]!.share_frac);
      expect(share_frac).toBeLessThanOrEqual(1);
    });
    expect(steps.at(-1)).toMatchObject({ doing: 'lint.doing.pool', data: { seed: 13, n: 2, of: 2 } });
  });

  test('finds nothing where the careful crew cannot do it', () => {
    expect(search(exerciseIn('unsolvable/no-water'), 1).pool).toBeNull();
  });

  test('plays once where one ground is laid out for all', () => {
    const ground: Exercise['ground'] = {
      by: 'layers',
      layers: [
        { kind: 'topsoil', thickness_m: 0.4 },
        { kind: 'silt', thickness_m: 1.1 },
        { kind: 'coarseSand', thickness_m: 2 },
      ],
      waterTable_m: 2,
      swing_m: 1,
      confinedRise_m: 0,
      perched: false,
      salt: null,
      seed: 3,
    };
    const { pool, steps } = search({ ...newExercise('first-rods', 'exercise-search', 'A search'), ground }, 30);
    expect(pool).toMatchObject({ spread_points: 0 });
    expect(pool!.seeds).toHaveLength(30);
    expect(new Set(steps.map(({ data }) => data.seed))).toEqual(new Set([11]));
  });
});

test('the largest group is taken whole, of equal ones the better', () => {
  const group = (...points: number[]) =>
    largestGroup(
      points.map((mean_points, seed) => ({ seed, mean_points })),
      MOST_points,
    ).map(({ mean_points }) => mean_points);
  expect(group(90, 70, 95, 94, 80, 72, 76)).toEqual([90, 94, 95]);
  expect(group(70, 74, 75, 81, 82, 86)).toEqual([81, 82, 86]);
  expect(group(70, 75.1)).toEqual([75.1]);
  expect(group()).toEqual([]);
});
