// Any exercise that the form allows opens, is examined and is played for five minutes without a throw. Thousands of them in the sweep.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { baseOf, checkExercise, LESSON_ORDER, newExercise } from '$lessons';
import { anyExercise } from './anyExercise';
import { opensAndPlays } from './opens';

const BEGINS_LATER = LESSON_ORDER.filter((lesson) => baseOf({ lesson }).prologue);
const BEGINS_AT_ONCE = LESSON_ORDER.filter((lesson) => !BEGINS_LATER.includes(lesson));

function allOpen(exercises: ReturnType<typeof anyExercise>, numRuns: number, most_steps: number): void {
  fc.assert(
    fc.property(exercises, fc.integer({ min: 0, max: 4294967295 }), (exercise, seed) => {
      opensAndPlays(exercise, seed, most_steps);
    }),
    { numRuns, seed: 1 },
  );
}

describe('any exercise', { timeout: 120_000 }, () => {
  test('of a lesson that begins at once', () => allOpen(anyExercise(BEGINS_AT_ONCE), 40, 20));
  test('of a lesson in which another crew works before', () => allOpen(anyExercise(BEGINS_LATER), 5, 10));
  test('with little time, examined to the end', () => allOpen(anyExercise(BEGINS_AT_ONCE, 1200), 15, Infinity));
});

test('what the lesson cannot be judged by is told by its field', () => {
  const base = newExercise('first-rods', 'exercise-test', 'A test');
  const wrong = (change: object): string[] => {
    const checked = checkExercise({ ...base, ...change });
    return checked.ok ? [] : checked.problems.map(({ field }) => field);
  };
  expect(wrong({ weights: { ...base.weights, jobTime: 6.5, suppliesUsed: 2.5 } })).toEqual([]);
  expect(wrong({ weights: { ...base.weights, jobTime: 8.5, suppliesUsed: 0.5 } })).toEqual(['weights.suppliesUsed']);
  expect(wrong({ bands: { jobTime: { full_s: 100 } } })).toEqual([]);
  expect(wrong({ bands: { jobTime: { full_m: 1 } } })).toEqual(['bands.jobTime.full_m']);
  expect(wrong({ bands: { sealMade: {} } })).toEqual(['bands.sealMade']);
  expect(wrong({ bands: { jobTime: { full_s: -1 } } })).toEqual(['bands.jobTime.full_s']);
  for (const rods of [0, 1.5, 1001])
    expect(wrong({ bands: { labelsTrue: { rods } } })).toEqual(['bands.labelsTrue.rods']);
  expect(wrong({ bands: { sampleEachRod: { rod_m: 0 } } })).toEqual(['bands.sampleEachRod.rod_m']);
  expect(wrong({ bands: { fairFeed: { full_frac: 1.1 } } })).toEqual(['bands.fairFeed.full_frac']);
});
