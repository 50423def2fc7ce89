// The class as it is written out and shown: what follows from the board for each line, for the wall, for the choice of a class.
import { describe, expect, test } from 'vitest';
import {
  boardOf,
  crewFor,
  judging,
  lessonOfExercise,
  newExercise,
  resultOf,
  startRun,
  playOn,
  variantSeed,
  type Exercise,
  type JudgedResult,
  type Result,
} from '$lessons';
import { reportOf, type Handed } from '../../../src/classroom/exports/reportOf';
import { classesOf, shownClass } from '../../../src/screens/results/board/classes';
import { categoryHeads, categoryShares, notesOf, sumsOf } from '../../../src/screens/results/board/facts';
import { signWords } from '../../../src/screens/results/board/sign';
import { signs } from '../../../src/screens/results/papers/keyWords';
import '../../../src/classroom/words';

const exercise: Exercise = newExercise('round-the-loop', 'exercise-test', 'A test');
const lesson = lessonOfExercise(exercise);

function handIn(crew: string, number: number): Result {
  const run = startRun(lesson, variantSeed(exercise, 'B7', { number }, 1), false);
  playOn(run, lesson, crewFor(run, lesson, crew));
  return resultOf(run, lesson, { who: `T-0${number}`, sitting: { classCode: 'B7', attempt: 1, spent_s: 100 } });
}

const [careful, green] = [handIn('careful', 1), handIn('green', 2)];
const HANDED: readonly Handed[] = [
  careful,
  green,
  { ...careful, spent_s: 200 },
  { ...green, who: 'moon' },
  { ...green, who: 'T-04', claimed: { score: 99 } },
].map((result, i) => ({ id: `r${i}`, result, taken_ms: 1000 * i, from: `${i}.json` }));

function judged({ id, result }: Handed): JudgedResult {
  const task = judging(
    result,
    exercise,
    result.who === 'moon' ? { picture: 5 } : { number: Number(result.who.slice(2)) },
  );
  for (;;) {
    const { done, value } = task.next();
    if (done) return { id, result, judgement: value };
  }
}

const board = boardOf(HANDED.map(judged));
const rowOf = (id: string) => board.rows.find((row) => row.id === id)!;

describe('the report of a board', () => {
  const report = reportOf(exercise, board, HANDED, (key) => `said ${key}`);
  const line = (from: string) => report.results.find((one) => one.from === from)!;

  test('has a line for each result, with what was found of it', () => {
    expect(report.results.length).toBe(HANDED.length);
    expect(line('0.json')).toMatchObject({
      who: 'T-01',
      classCode: 'B7',
      attempt: 1,
      counts: true,
      repeats: false,
      verdict: 'reproduced',
      why: '',
      ownGround: true,
      finished: true,
      score: careful.claimed.score,
      passed: true,
      spent_s: 100,
    });
    expect(line('0.json').items.length).toBe(lesson.rubric.length);
    expect(line('2.json')).toMatchObject({ repeats: true, counts: false });
    expect(line('3.json')).toMatchObject({ sameRun: true, ownGround: false });
  });

  test('knows nothing of a result that is not reproduced, but why', () => {
    expect(line('4.json')).toMatchObject({
      verdict: 'notReproduced',
      why: expect.stringMatching(/^said problem\./),
      finished: null,
      score: null,
      passed: null,
      outcome: null,
      job_s: null,
      categories: [],
      items: [],
    });
  });

  test('names what the exercise judges, with points that sum to 100', () => {
    expect(report.exercise.judged.reduce((sum, { max }) => sum + max, 0)).toBe(100);
  });
});

describe('the class in figures', () => {
  test('counts each learner once', () => {
    expect(sumsOf(board).map(({ is }) => is)).toEqual([
      '3',
      '1',
      expect.any(String),
      expect.any(String),
      '1 min 40 s',
      '5',
    ]);
  });

  test('gives the share of each category that the class earned', () => {
    expect(categoryHeads(board).reduce((sum, { max }) => sum + max, 0)).toBe(100);
    const points = board.counted.reduce((sum, { judgement }) => sum + judgement.grade!.score, 0);
    const earned = categoryShares(board).reduce(
      (sum, { id, share }) => sum + share * 3 * categoryHeads(board).find((head) => head.id === id)!.max,
      0,
    );
    expect(earned).toBeCloseTo(points, 0);
  });

  test('says beside a result what is to be known of it', () => {
    expect(notesOf(rowOf('r0'), board, false)).toEqual(['counts']);
    expect(notesOf(rowOf('r2'), board, false)).toEqual(['the same result once more']);
    expect(notesOf(rowOf('r3'), board, true)).toEqual([
      'counts',
      'the same run was handed in by T-02',
      'not the ground of this learner and attempt',
      'played as practice: going back was allowed',
    ]);
  });
});

describe('which class is shown', () => {
  const classes = classesOf(['B7', 'ZZ9', 'B7', null]);

  test('the largest comes first', () => {
    expect(classes[0]).toEqual({ code: 'B7', count: 2 });
    expect(classes.length).toBe(3);
  });

  test.each([
    ['as chosen', 'ZZ9', 'B7', 'ZZ9'],
    ['without a code, where that was chosen', null, 'B7', null],
    ['the one that is taught now', undefined, 'ZZ9', 'ZZ9'],
    ['the largest, where nothing came of that one', undefined, 'Q1', 'B7'],
    ['the largest, where the chosen one is gone', 'GONE', 'Q1', 'B7'],
  ] as const)('%s', (_what, chosen, taught, shown) => expect(shownClass(classes, chosen, taught)).toBe(shown));
});

test('the wall shows signs, and of what is none only that it is another', () => {
  expect(['T-07', 'fish', 'Amina'].map(signWords)).toEqual(['T-07', 'Fish', 'another sign']);
});

test('signs that follow one another stand as a stretch', () => {
  expect(signs(['T-01', 'T-02', 'T-03', 'fish'])).toBe('T-01 to T-03, Fish');
  expect(signs(['T-01', 'T-02', 'T-05'])).toBe('T-01, T-02, T-05');
});
