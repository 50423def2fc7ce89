// Points: sums by category, and ways that always come to a hundred in whole points.
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { LESSON_ORDER, type Exercise, type ItemId } from '../../../../lessons/index';
import {
  apportion,
  categoriesOf,
  setCategory,
  spreadEvenly,
  spreadInProportion,
  sumOf,
  usualPoints,
} from '../../../../src/classroom/editor/points';
import { fresh, full, wrongFields } from './made';

const weighed = (weights: Exercise['weights']): Exercise => ({ ...fresh(), weights });
const itemsOf = (exercise: Exercise): ItemId[] =>
  categoriesOf(exercise).flatMap(({ items }) => items.map(({ item }) => item));

test.each(LESSON_ORDER)('the categories of %s hold every item once and sum to a hundred', (lesson) => {
  const exercise = fresh(lesson);
  const categories = categoriesOf(exercise);
  expect([...itemsOf(exercise)].sort()).toEqual(Object.keys(exercise.weights).sort());
  expect(categories.reduce((sum, one) => sum + one.sum, 0)).toBeCloseTo(100, 9);
  expect(sumOf(exercise)).toBe(100);
});

test('the cost can be judged where there is a budget, and only there', () => {
  expect(itemsOf(full)).toContain('withinBudget');
  expect(itemsOf(fresh('open-well'))).not.toContain('withinBudget');
});

test('parts of a whole are whole, and their sum is', () => {
  expect(apportion([1, 1, 1], 100)).toEqual([34, 33, 33]);
  expect(apportion([2, 1], 10)).toEqual([7, 3]);
  expect(apportion([0, 0], 10)).toEqual([0, 0]);
});

test('what is missing is spread evenly, what is too much taken off', () => {
  const less = spreadEvenly(weighed({ clearedStops: 50, fairFeed: 20, jobTime: 10 }));
  expect(less.weights).toEqual({ clearedStops: 57, fairFeed: 27, jobTime: 16 });
  const more = spreadEvenly(weighed({ clearedStops: 90, fairFeed: 2, jobTime: 30 }));
  expect(more.weights).toEqual({ clearedStops: 79, fairFeed: 1, jobTime: 20 });
});

test('or in proportion', () => {
  const less = spreadInProportion(weighed({ clearedStops: 40, fairFeed: 10, jobTime: 0 }));
  expect(less.weights).toEqual({ clearedStops: 80, fairFeed: 20, jobTime: 0 });
});

test('whatever stood there before: a hundred whole points, none for what did not count, one at least for what did', () => {
  const items = Object.keys(fresh().weights) as ItemId[];
  const weight = fc.oneof(
    fc.nat(100),
    fc.double({ min: 0, max: 100, noNaN: true }),
    fc.constant(Number.NaN),
    fc.constant(0),
  );
  fc.assert(
    fc.property(fc.array(weight, { minLength: items.length, maxLength: items.length }), (points) => {
      const before = weighed(Object.fromEntries(items.map((item, i) => [item, points[i]])));
      const some = points.some((one) => one > 0);
      for (const spread of [spreadEvenly, spreadInProportion]) {
        const after = spread(before);
        expect(sumOf(after)).toBe(100);
        for (const [i, item] of items.entries()) {
          const had = Number.isFinite(points[i]) && points[i]! > 0;
          const has = after.weights[item]!;
          if (had && spread === spreadInProportion) expect(has).toBeGreaterThanOrEqual(1);
          if (had || !some) expect(Number.isInteger(has)).toBe(true);
          if (!had && some) expect(has).toEqual(points[i]);
        }
      }
    }),
    { numRuns: 300 },
  );
});

test('a category gets its sum, shared as before, and through small sums back again', () => {
  const exercise = fresh();
  const log = categoriesOf(exercise).find(({ id }) => id === 'log')!;
  const doubled = setCategory(exercise, log, log.sum * 2);
  expect(log.items.map(({ item }) => doubled.weights[item])).toEqual(log.items.map(({ weight }) => weight * 2));
  // Typing 24 goes by way of 2.
  const two = setCategory(exercise, log, 2);
  const back = setCategory(two, log, log.sum, exercise.weights);
  expect(back.weights).toEqual(exercise.weights);
  const none = setCategory(exercise, log, 0);
  expect(categoriesOf(setCategory(none, log, 9)).find(({ id }) => id === 'log')!.sum).toBe(9);
});

test('the lesson’s own points come back', () => {
  const changed = weighed({ clearedStops: 3 });
  expect(wrongFields(changed)).toEqual(['weights']);
  expect(usualPoints(changed)).toEqual(fresh());
});
