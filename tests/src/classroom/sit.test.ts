// Who gets which ground: place, attempt and class decide, and nothing else.
import { describe, expect, test } from 'vitest';
import { classCodeOf, newExercise, variantSeed, type Exercise } from '../../../lessons';
import { newClassCode, newExerciseId, nextSitting, placeOfWho } from '../../../src/classroom/sit';
import { PICTURE_NAMES } from '../../../src/app/pictures';
import { withBegun } from '../../../src/app/progress';
import type { Learner } from '../../../src/app/records';

const seeds = Array.from({ length: 60 }, (_, i) => 1000 + i * 17);
const exercise: Exercise = {
  ...newExercise('first-rods', 'exercise-test', 'A test'),
  pool: { sim: '0', seeds, spread_points: 4 },
};
const learner = (id: string): Learner => ({ id, picture: null, number: null, made_ms: 0, best: {} });

describe('the ground of a learner', () => {
  test('differs for forty numbers and all pictures of one class', () => {
    const who = [...Array.from({ length: 40 }, (_, i) => `T-${String(i + 1).padStart(2, '0')}`), ...PICTURE_NAMES];
    const grounds = who.map((id) => variantSeed(exercise, 'B7', placeOfWho(id)!, 1));
    expect(new Set(grounds).size).toBe(who.length);
    for (const ground of grounds) expect(seeds).toContain(ground);
  });

  test('is another at each attempt until all have come', () => {
    const grounds = seeds.map((_, i) => variantSeed(exercise, 'B7', { number: 3 }, i + 1));
    expect(new Set(grounds).size).toBe(seeds.length);
  });

  test('is the same on every device, and another in another class', () => {
    const at = (code: string): number[] =>
      Array.from({ length: 10 }, (_, i) => variantSeed(exercise, code, { number: i + 1 }, 1));
    expect(at('B7')).toEqual(at('B7'));
    expect(at('B7')).not.toEqual(at('C2'));
  });

  test('is any number where no grounds were found, by the same rule', () => {
    const { pool: _pool, ...open } = exercise;
    const one = variantSeed(open, 'B7', { number: 1 }, 1);
    expect(variantSeed(open, 'B7', { number: 1 }, 1)).toBe(one);
    expect(variantSeed(open, 'B7', { number: 2 }, 1)).not.toBe(one);
    expect(Number.isInteger(one) && one >= 0 && one <= 4294967295).toBe(true);
  });
});

describe('a sitting', () => {
  test('counts the attempts of one learner in one class', () => {
    const first = nextSitting(exercise, learner('T-04'), 'B7');
    expect(first.sitting).toEqual({ classCode: 'B7', attempt: 1 });
    const once = withBegun(learner('T-04'), exercise.id, 'B7', 1);
    expect(nextSitting(exercise, once, 'B7').sitting.attempt).toBe(2);
    expect(nextSitting(exercise, once, 'B7').seed).not.toBe(first.seed);
    expect(nextSitting(exercise, once, 'C2').sitting.attempt).toBe(1);
  });

  test('knows no place for a sign from elsewhere', () => {
    expect(placeOfWho('T-07')).toEqual({ number: 7 });
    expect(placeOfWho(PICTURE_NAMES[2]!)).toEqual({ picture: 2 });
    expect([placeOfWho('Somebody'), placeOfWho('T-00'), placeOfWho('')]).toEqual([null, null, null]);
  });
});

test('class codes are short, plain and read as they are typed', () => {
  let n = 0;
  const code = newClassCode(() => (n += 977) * 4099);
  expect(classCodeOf(code)).toBe(code);
  expect(code).toHaveLength(4);
  expect(classCodeOf(' b-7 ')).toBe('B7');
  expect([classCodeOf(''), classCodeOf('ü'), classCodeOf('A'.repeat(13))]).toEqual([null, null, null]);
  expect(newExerciseId(() => 5)).toBe('exercise-000005');
});
