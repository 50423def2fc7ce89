// An exercise makes a lesson: unchanged it is the lesson, changed it is what the instructor asked for.
import { describe, expect, test } from 'vitest';
import {
  checkExercise,
  checkLesson,
  exerciseFragment,
  exerciseHash,
  LESSON_ORDER,
  LESSONS,
  lessonOfExercise,
  newExercise,
  playCrew,
  readExercise,
  readRunFile,
  replayFile,
  scenarioOf,
  scoreOf,
  startRun,
  writeExercise,
  writeRunFile,
  type Exercise,
} from '../../../lessons/index';

const fresh = (lesson: Exercise['lesson']): Exercise => newExercise(lesson, 'exercise-test', 'A test');

/** A lesson without what carries the exercise, as the lesson's schema knows it. */
function bare(exercise: Exercise): unknown {
  const { exercise: _own, ...lesson } = lessonOfExercise(exercise);
  return lesson;
}

const laid: Exercise = {
  ...fresh('first-rods'),
  ground: {
    by: 'layers',
    layers: [
      { kind: 'topsoil', thickness_m: 0.4 },
      { kind: 'silt', thickness_m: 1.1 },
      { kind: 'coarseSand', thickness_m: 2 },
    ],
    waterTable_m: 2,
    swing_m: 1.5,
    confinedRise_m: 0,
    perched: false,
    salt: { from_m: 8, salt_gL: 5 },
    seed: 7,
  },
};

describe('an exercise', () => {
  test.each(LESSON_ORDER)('of %s, unchanged, is that lesson but for its name', (id) => {
    const exercise = fresh(id);
    expect(checkExercise(exercise)).toEqual({ ok: true, exercise });
    const { exercise: _own, ...made } = lessonOfExercise(exercise);
    const base = LESSONS.find((one) => one.id === id)!;
    expect(made).toEqual({ ...base, id: 'exercise-test', version: 1 });
    expect(checkLesson(made).ok).toBe(true);
  });

  test('with layers laid by hand gives everybody the same ground, down to the bottom', () => {
    const lesson = lessonOfExercise(laid);
    expect(checkLesson(bare(laid)).ok).toBe(true);
    const [one, other] = [1, 2].map((seed) => scenarioOf(lesson, seed).ground);
    expect(one).toEqual(other);
    expect(one!.layers.map(({ kind, bottom_m }) => [kind, bottom_m])).toEqual([
      ['topsoil', 0.4],
      ['silt', 1.5],
      ['coarseSand', 60],
    ]);
    expect([one!.waterTable_m, one!.lowestWater_m]).toEqual([2, 3.5]);
    expect(one!.salinity.at(-1)).toEqual({ from_m: 8, salt_gL: 5 });
  });

  test('in the dry season stands where the water falls to', () => {
    const dry = scenarioOf(lessonOfExercise({ ...laid, season: 'dry' }), 1).ground;
    expect(dry.waterTable_m).toBe(3.5);
    for (const well of dry.site.wells) expect(well.level_m).toBe(well.dryLevel_m);
  });

  test('with another course of chance has the same ground and another run', () => {
    const lesson = lessonOfExercise(laid);
    expect(scenarioOf(lesson, 1, true, 5).ground).toEqual(scenarioOf(lesson, 1).ground);
    const [a, b] = [1, 2].map((seed) => playCrew(lesson, 'careful', seed));
    expect(scoreOf(a!, lesson)).toBeGreaterThan(70);
    expect(a!.log).not.toEqual(b!.log);
  });

  test('with a plan laid out by hand has that plan', () => {
    const site: Exercise['site'] = {
      spots: [{ id: 'A', east_m: 10, north_m: 10, rise_m: 0 }],
      wells: [{ hamlet: 'Old Kiln', east_m: 200, north_m: 30, depth_m: 12, level_m: 4, dryLevel_m: 6 }],
      sources: [{ source: 'latrine', east_m: 40, north_m: 10, bottom_m: 2 }],
      floodLine_m: -0.2,
      overheadLine: { from_m: 5, to_m: 50, height_m: 6 },
    };
    const { ground } = scenarioOf(lessonOfExercise({ ...laid, site }), 1);
    expect(ground.site.spots).toEqual(site.spots);
    expect(ground.contamination).toEqual(site.sources);
    expect(ground.site.overheadLine).toEqual({
      from: { east_m: 0, north_m: 5 },
      to: { east_m: 80, north_m: 50 },
      height_m: 6,
    });
  });

  test('that goes deeper moves its goals along', () => {
    const lesson = lessonOfExercise({ ...laid, depth_m: 7.4 });
    expect(lesson.end).toMatchObject({ depth_m: 7.4, rods: 5 });
    expect(lesson.opening).toMatchObject({ rodsInAll: 6 });
    expect(lesson.rubric.find(({ item }) => item === 'depthReached')!.bands).toEqual({ goal_m: 7.4, from_m: 1.5 });
    expect(lesson.rubric.find(({ item }) => item === 'sampleEachRod')!.bands['rods']).toBe(5);
    const run = playCrew(lesson, 'careful', 3);
    expect(run.state.hole.depth_m).toBeGreaterThanOrEqual(7.4);
  });

  test('with a budget judges the cost', () => {
    const weights = { ...laid.weights, jobTime: 0, withinBudget: laid.weights.jobTime! };
    const exercise = { ...laid, budget_marks: 1, weights };
    expect(checkExercise(exercise).ok).toBe(true);
    const lesson = lessonOfExercise(exercise);
    expect(lesson.rubric.at(-1)).toEqual({
      item: 'withinBudget',
      weight: laid.weights.jobTime,
      bands: { full_marks: 1, none_marks: 1.5 },
    });
    expect(lesson.rubric.some(({ item }) => item === 'jobTime')).toBe(false);
  });

  test('is told by its field where something is wrong', () => {
    const wrong = (change: object): string[] => {
      const checked = checkExercise({ ...laid, ...change });
      return checked.ok ? [] : checked.problems.map(({ field }) => field);
    };
    expect(wrong({ pass_points: 101 })).toEqual(['pass_points']);
    expect(wrong({ weights: { jobTime: 50 } })).toEqual(['weights']);
    expect(wrong({ weights: { sealMade: 100 } })).toEqual(['weights.sealMade']);
    expect(wrong({ title: 'two\nlines' })).toEqual(['title']);
    expect(wrong({ extra: 1 })).toEqual(['extra']);
    expect(wrong({ ground: { ...laid.ground, layers: [{ kind: 'gold', thickness_m: 1 }] } })).toEqual([
      'ground.layers.0.kind',
    ]);
    expect(
      wrong({ lesson: 'the-seal', weights: newExercise('the-seal', 'exercise-x123', 'x').weights, budget_marks: 5 }),
    ).toEqual(['budget_marks']);
  });

  test('goes into a file, a link and letters, and comes back the same', () => {
    for (const text of [writeExercise(laid), JSON.stringify(laid), `https://x.test/${exerciseFragment(laid, 'B7')}`]) {
      const read = readExercise(text);
      expect(read).toMatchObject({ ok: true, exercise: laid, otherVersion: false });
    }
    expect(readExercise(exerciseFragment(laid, 'B7'))).toMatchObject({ classCode: 'B7' });
    expect(writeExercise(laid)).not.toContain('coarseSand');
  });

  test('has a fingerprint of what is played, not of its words', () => {
    expect(exerciseHash({ ...laid, title: 'Other', briefing: ['Dig.'] })).toBe(exerciseHash(laid));
    expect(exerciseHash({ ...laid, pass_points: 71 })).not.toBe(exerciseHash(laid));
  });

  test('goes along in the run file, so that any device can play it again', () => {
    const lesson = lessonOfExercise(laid);
    const run = playCrew(lesson, 'careful', 3);
    const text = writeRunFile(run, lesson, { sitting: { classCode: 'B7', attempt: 2 } });
    const read = readRunFile(text);
    expect(read.ok && read.file.sitting).toEqual({ classCode: 'B7', attempt: 2 });
    expect(read.ok && replayFile(read.file).reproduced).toBe(true);
    const other = JSON.parse(text) as { exercise: Exercise };
    other.exercise = { ...other.exercise, pass_points: 500 };
    expect(readRunFile(JSON.stringify(other))).toMatchObject({
      problem: 'problem.file.badField',
      data: { field: 'exercise.pass_points' },
    });
  });

  test('starts with another crew before where its lesson does', () => {
    const exercise = fresh('the-seal');
    const run = startRun(lessonOfExercise(exercise), 3);
    expect(run.state.relief).not.toBeNull();
  });
});
