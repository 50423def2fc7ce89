// Which drill teaches what, and what a learner is sent to next.

import { expect, test } from 'vitest';
import {
  CONTENTS,
  DRILL_IDS,
  DRILL_OF,
  isWordKey,
  ITEM_IDS,
  LEARNT_frac,
  LESSON_ORDER,
  lessonById,
  LESSONS,
  nextLesson,
  PRACTICE_IDS,
  PRACTICES,
  shownIn,
  type DrillId,
} from '$lessons';

test('the contents list the lessons that are there, in their order, with the titles that they have', () => {
  expect(LESSONS.map(({ id }) => id)).toEqual([...LESSON_ORDER]);
  expect(PRACTICES.map(({ id }) => id)).toEqual([...PRACTICE_IDS]);
  for (const id of CONTENTS.drills) expect(DRILL_IDS).toContain(id);
  for (const id of LESSON_ORDER) {
    const camel = id.replace(/-(\w)/g, (_, letter: string) => letter.toUpperCase());
    expect(lessonById(id)!.title).toBe(`${camel}.title`);
    expect(isWordKey(`${camel}.learnt`)).toBe(true);
  }
});

test('each item belongs to one drill, and each drill that is here judges something of its own subject', () => {
  expect(Object.keys(DRILL_OF).sort()).toEqual([...ITEM_IDS].sort());
  for (const id of CONTENTS.drills) {
    const own = lessonById(id)!.rubric.filter(({ item }) => DRILL_OF[item] === id);
    expect([id, own.length > 0]).toEqual([id, true]);
  }
});

test("a run shows each subject by the share of that subject's points", () => {
  const shown = shownIn([
    { id: 'clearedStops', points: 14, max: 14 },
    { id: 'notBuried', points: 0, max: 6 },
    { id: 'fluidReady', points: 3, max: 12 },
  ]);
  expect(shown).toEqual({ 'first-rods': 0.7, 'slick-fluid': 0.25 });
});

const ORDER = DRILL_IDS;
const last = (shares: Partial<Record<DrillId, number>>): Partial<Record<DrillId, { last_frac: number }>> =>
  Object.fromEntries(Object.entries(shares).map(([drill, last_frac]) => [drill, { last_frac }]));

test('who has shown nothing begins at the beginning', () => {
  expect(nextLesson({}, [], ORDER)).toEqual({ lesson: 'round-the-loop', why: 'order' });
});

test('the weakest subject comes before the next in order', () => {
  const shown = last({ 'first-rods': 0.6, 'slick-fluid': 0.2, 'the-seal': 0.9 });
  expect(nextLesson(shown, ['round-the-loop'], ORDER)).toEqual({
    lesson: 'slick-fluid',
    why: 'weakest',
    last_frac: 0.2,
  });
});

test('of two as weak the earlier drill comes first', () => {
  expect(nextLesson(last({ 'the-seal': 0.3, 'full-pit': 0.3 }), [], ORDER).lesson).toBe('full-pit');
});

test('what was shown well enough is left; the first lesson not passed comes next, and at the end the last again', () => {
  const shown = last({ 'round-the-loop': LEARNT_frac, 'first-rods': 1 });
  expect(nextLesson(shown, ['round-the-loop', 'first-rods'], ORDER)).toEqual({ lesson: 'slick-fluid', why: 'order' });
  expect(nextLesson(shown, ORDER, ORDER)).toEqual({ lesson: 'clear-water', why: 'again' });
});

test('a weak subject whose drill is not here is passed over', () => {
  expect(nextLesson(last({ 'the-seal': 0 }), [], ['first-rods', 'open-well']).lesson).toBe('first-rods');
});
