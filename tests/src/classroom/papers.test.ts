// What the papers of a class say: who stands on which ground, the answer key of one, the course of a lesson, what is to be noted.
import { describe, expect, test } from 'vitest';
import { lessonOfExercise, newExercise, scenarioOf, variantSeed, type Exercise, type LessonId } from '$lessons';
import { answering, type Answer } from '../../../src/classroom/papers/answer';
import { courseOf, LENGTHS_min, workOf_min } from '../../../src/classroom/papers/course';
import { groundsOf, sameForAll } from '../../../src/classroom/papers/grounds';
import { notesFor } from '../../../src/classroom/papers/notes';

const fresh = (lesson: LessonId): Exercise => newExercise(lesson, 'exercise-test', 'A test');
const laid: Exercise = {
  ...fresh('first-rods'),
  ground: {
    by: 'layers',
    layers: [
      { kind: 'silt', thickness_m: 1.5 },
      { kind: 'coarseSand', thickness_m: 2 },
    ],
    waterTable_m: 2,
    swing_m: 1.5,
    confinedRise_m: 0,
    perched: false,
    salt: { from_m: 3, salt_gL: 5 },
    seed: 7,
  },
};

describe('the grounds of a class', () => {
  const asked = { code: 'B7', numbers: 3, pictures: false, attempt: 2 };

  test('are those that the learners get', () => {
    const exercise = fresh('first-rods');
    expect(groundsOf(exercise, asked)).toEqual(
      [1, 2, 3].map((number) => ({
        seed: variantSeed(exercise, 'B7', { number }, 2),
        who: [`T-0${number}`],
      })),
    );
  });

  test('stand once where several learners share one', () => {
    const { sim } = fresh('first-rods');
    const exercise = { ...fresh('first-rods'), pool: { sim, seeds: [4, 9], spread_points: 1 } };
    const grounds = groundsOf(exercise, { ...asked, numbers: 5 });
    expect(grounds.map(({ seed }) => seed).sort()).toEqual([4, 9]);
    expect(grounds.flatMap(({ who }) => who).sort()).toEqual(['T-01', 'T-02', 'T-03', 'T-04', 'T-05']);
  });

  test('hold the pictures too where they are asked for', () => {
    const who = groundsOf(fresh('first-rods'), { ...asked, numbers: 0, pictures: true }).flatMap((one) => one.who);
    expect(who).toContain('fish');
    expect(who.length).toBe(12);
  });

  test('are one where the layers are laid by hand and nothing is drawn', () => {
    expect(sameForAll(laid)).toBe(true);
    expect(groundsOf(laid, asked)).toMatchObject([{ who: ['T-01', 'T-02', 'T-03'] }]);
    const fault = { id: 'pumpStops', from: { time_s: 60 }, to: { time_s: 600 } } as const;
    expect(sameForAll({ ...laid, faults: [fault] })).toBe(false);
    expect(sameForAll(fresh('first-rods'))).toBe(false);
  });
});

/** Played to its end, with how often it stopped for the page. */
function worked(exercise: Exercise, seed: number): { answer: Answer; stops: number } {
  const task = answering(lessonOfExercise(exercise), seed);
  for (let stops = 0; ; stops++) {
    const { done, value } = task.next();
    if (done) return { answer: value as Answer, stops };
  }
}

describe('an answer key', () => {
  test('tells the true layers and waters, down to a little under the hole', () => {
    const { answer } = worked(laid, 5);
    const { ground } = scenarioOf(lessonOfExercise(laid), 5);
    expect(answer.layers.map(({ kind, top_m }) => [kind, top_m])).toEqual([
      ['silt', 0],
      ['coarseSand', 1.5],
    ]);
    expect(answer.shown_m).toBeGreaterThan(answer.careful!.record.hole!.depth_m);
    expect(answer.shown_m).toBeLessThan(ground.depth_m);
    expect(answer.layers.at(-1)!.bottom_m).toBe(answer.shown_m);
    expect(answer.water).toMatchObject({ waterTable_m: 2, lowestWater_m: 3.5, salinity: [{ from_m: 3, salt_gL: 5 }] });
  });

  test('tells what a careful crew did and earned, and leaves the page room to breathe', () => {
    const { answer, stops } = worked(fresh('first-rods'), 7);
    expect(answer.careful!.grade.score).toBeGreaterThan(85);
    expect(answer.careful!.added.length).toBeGreaterThan(0);
    expect(answer.careful!.built).toBeNull();
    expect(stops).toBeGreaterThan(answer.careful!.job_s / 30);
  });

  test('tells what goes wrong, and when', () => {
    const faults: Exercise['faults'] = [
      { id: 'pumpStops', from: { time_s: 900 }, to: { time_s: 1500 } },
      { id: 'hoseBursts', from: { depth_m: 1 }, to: { depth_m: 2 } },
    ];
    const exercise = { ...fresh('first-rods'), faults };
    const { answer } = worked(exercise, 3);
    const scheduled = scenarioOf(lessonOfExercise(exercise), 3).faults!;
    expect(answer.faults).toEqual(scheduled.map(({ fault, at }) => ({ fault, at })));
    expect(answer.faults.length).toBe(2);
  });

  test('tells where cobbles and salt lie', () => {
    const from = { depth_m: 1 };
    const to = { depth_m: 2 };
    const faults: Exercise['faults'] = [
      { id: 'cobbles', from, to, thickness_m: [0.2, 0.4] },
      { id: 'saltyLayer', from, to, thickness_m: [1, 1], salt_gL: [9, 9] },
    ];
    const { answer } = worked({ ...fresh('reading-the-tray'), faults }, 3);
    const cobbles = answer.layers.find(({ kind }) => kind === 'cobbles')!;
    expect(answer.faults.map(({ fault }) => fault)).toEqual(['cobbles', 'saltyLayer']);
    expect(answer.faults[0]!.at).toEqual({ depth_m: cobbles.top_m });
  });

  test('begins where the learner takes over', () => {
    const { answer } = worked(fresh('the-seal'), 3);
    expect(answer.careful!.job_s).toBeLessThan(answer.careful!.record.time_s);
    expect(answer.careful!.built?.screen).toBeTruthy();
  });
});

test.each(LENGTHS_min)('the course of %i minutes is without a gap', (length) => {
  const course = courseOf(length);
  expect(course[0]!.from_min).toBe(0);
  expect(course.at(-1)!.to_min).toBe(length);
  course.slice(1).forEach(({ from_min }, i) => expect(from_min).toBe(course[i]!.to_min));
  expect(workOf_min(length)).toBeGreaterThan(length / 5);
});

test('a learner notes what the lesson lets see and do', () => {
  expect(notesFor(lessonOfExercise(fresh('first-rods')))).toEqual([
    'rods',
    'returns',
    'sample',
    'pit',
    'fluid',
    'trouble',
  ]);
  expect(notesFor(lessonOfExercise(fresh('the-seal')))).toEqual(['plan', 'test', 'trouble']);
  expect(notesFor(lessonOfExercise(fresh('open-well')))).toContain('plan');
  expect(notesFor(lessonOfExercise(fresh('deep-enough')))).toContain('rods');
});
