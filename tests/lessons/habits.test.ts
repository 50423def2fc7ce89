// Leaving out only a habit of safety or of the log never raises a score: the same acts without reading cautions, naming, catching, noting or keeping the record.

import { expect, test } from 'vitest';
import { act, createRun, step, type ActionName, type Run } from '$sim';
import { grade, lessonById, playCrew, scenarioOf } from '$lessons';

const lesson = lessonById('first-rods')!;
const HABITS: readonly (readonly ActionName[])[] = [
  ['readCaution'],
  ['nameSample'],
  ['catchSample', 'nameSample'],
  ['feelFluid'],
  ['readCaution', 'nameSample'],
];

/** The same acts at the same seconds, those of the habit left out. */
function without(run: Run, habit: readonly ActionName[]): Run {
  const again = createRun(scenarioOf(lesson, run.scenario.seed));
  for (const [tick, action, payload] of run.log) {
    if (habit.includes(action)) continue;
    while (again.state.tick < tick) step(again);
    act(again, action, payload);
  }
  while (again.state.tick < run.state.tick) step(again);
  return again;
}

test.each([
  ['careful', 4],
  ['other', 6],
  ['steady', 5],
  ['green', 7],
])(
  '%s on seed %i scores no more without a habit',
  (crew, seed) => {
    const run = playCrew(lesson, crew, seed);
    const { score } = grade(run, lesson);
    for (const habit of HABITS) {
      if (!run.log.some(([, action]) => habit.includes(action))) continue;
      const left = grade(without(run, habit), lesson);
      expect([habit, left.score <= score + 1e-9, left.score, score]).toEqual([habit, true, left.score, score]);
    }
  },
  120_000,
);

test('without a habit left out the run comes out the same; without its cautions careful has less', () => {
  const run = playCrew(lesson, 'careful', 4);
  const { score } = grade(run, lesson);
  expect(grade(without(run, []), lesson).score).toBe(score);
  expect(grade(without(run, ['readCaution']), lesson).score).toBeLessThan(score);
}, 60_000);
