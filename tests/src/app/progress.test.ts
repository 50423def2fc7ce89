// What a learner's record says after runs, and after a file: the best is kept, the last is noted, known ground is known.
import { expect, test } from 'vitest';
import {
  begunBy,
  hasSeen,
  merged,
  passedBy,
  unseenSeed,
  withBegun,
  withRun,
  withSeen,
} from '../../../src/app/progress';
import type { Learner } from '../../../src/app/records';

const FISH: Learner = { id: 'fish', picture: 'fish', number: null, made_ms: 100, best: {} };
const run = (score: number, passed: boolean, frac: number, finished_ms: number) => ({
  lesson: 'first-rods',
  score,
  passed,
  shown: { 'first-rods': frac, 'slick-fluid': frac / 2 } as const,
  finished_ms,
});

test('best and passed stay, last follows', () => {
  const after = withRun(withRun(FISH, run(80, true, 0.8, 1)), run(40, false, 0.4, 2));
  expect(after.best['first-rods']).toEqual({ score: 80, passed: true, tries: 2 });
  expect(after.shown).toEqual({
    'first-rods': { best_frac: 0.8, last_frac: 0.4, last_ms: 2 },
    'slick-fluid': { best_frac: 0.4, last_frac: 0.2, last_ms: 2 },
  });
  expect(passedBy(after)).toEqual(['first-rods']);
});

test('a subject that a run did not judge stays as it was', () => {
  const before = withRun(FISH, run(80, true, 0.8, 1));
  const after = withRun(before, { ...run(10, false, 0, 2), shown: { 'the-seal': 0.1 } });
  expect(after.shown?.['first-rods']).toEqual(before.shown?.['first-rods']);
});

test('ground is known to who stood on it, in that lesson', () => {
  const after = withSeen(FISH, 'first-rods', 7);
  expect(hasSeen(after, 'first-rods', 7)).toBe(true);
  expect(hasSeen(after, 'open-well', 7)).toBe(false);
  expect(hasSeen(FISH, 'first-rods', 7)).toBe(false);
  expect(hasSeen(null, 'first-rods', 7)).toBe(false);
  expect(withSeen(after, 'first-rods', 7)).toBe(after);
});

test('a new ground is drawn until it is one the learner has not seen', () => {
  const draws = [7, 7, 8, 9];
  const seen = withSeen(withSeen(FISH, 'first-rods', 7), 'first-rods', 8);
  expect(unseenSeed(seen, 'first-rods', () => draws.shift()!)).toBe(9);
});

test('two records become one in which nothing is worse and nothing is lost', () => {
  const here = withSeen(withRun(FISH, run(80, true, 0.8, 5)), 'first-rods', 1);
  const there = withSeen(
    withRun(withRun({ ...FISH, made_ms: 50 }, run(90, false, 0.3, 9)), {
      ...run(20, false, 0.2, 10),
      lesson: 'open-well',
    }),
    'first-rods',
    2,
  );
  for (const both of [merged(here, there), merged(there, here)]) {
    expect(both.made_ms).toBe(50);
    expect(both.best['first-rods']).toEqual({ score: 90, passed: true, tries: 1 });
    expect(both.best['open-well']).toEqual({ score: 20, passed: false, tries: 1 });
    expect(both.shown?.['first-rods']).toEqual({ best_frac: 0.8, last_frac: 0.2, last_ms: 10 });
    expect([...both.seen!['first-rods']!].sort()).toEqual([1, 2]);
  }
  expect(merged(here, here)).toEqual({ ...here, begun: {} });
});

test('attempts begun are counted by exercise and class, and two records take the higher count', () => {
  const once = withBegun(FISH, 'exercise-abcd', 'B7', 1);
  expect([
    begunBy(once, 'exercise-abcd', 'B7'),
    begunBy(once, 'exercise-abcd', 'C2'),
    begunBy(null, 'x', 'B7'),
  ]).toEqual([1, 0, 0]);
  const twice = withBegun(once, 'exercise-abcd', 'B7', 2);
  expect(begunBy(merged(once, twice), 'exercise-abcd', 'B7')).toBe(2);
  expect(begunBy(merged(twice, once), 'exercise-abcd', 'B7')).toBe(2);
});
