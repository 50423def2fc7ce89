// The lessons, taken as exercises as they are, can be given out. One ground each; more of them are played in the sweep.
import { expect, test } from 'vitest';
import { LESSON_ORDER, linting, newExercise, type LintReport } from '$lessons';

test.each(LESSON_ORDER)('%s', { timeout: 120_000 }, (id) => {
  const task = linting(newExercise(id, 'exercise-shipped', 'As it is'), { grounds: 1 });
  let report: LintReport | null = null;
  for (let share_frac = 0; report === null;) {
    const { done, value } = task.next();
    if (done) report = value;
    else {
      // It never goes back, and never claims to be done before it is.
      expect(value.share_frac).toBeGreaterThanOrEqual(share_frac);
      expect(value.share_frac).toBeLessThanOrEqual(1);
      ({ share_frac } = value);
    }
  }
  expect(report.findings.filter(({ level }) => level !== 'good')).toEqual([]);
  expect(report.fit).toBe(true);
  expect(report.seeds).toEqual([1]);
  expect(report.careful_points[0]).toBeGreaterThanOrEqual(70);
});
