// The form of a lesson file: the lessons of the catalogue fit, and each wrong field is named.

import { expect, test } from 'vitest';
import { CATEGORY_OF, checkLesson, LESSONS, lessonById, scenarioOf } from '$lessons';

type Loose = Record<string, unknown>;

/** A copy of first-rods with the value at the path replaced. */
function bad(path: string, value: unknown): Loose {
  const copy = structuredClone(lessonById('first-rods')) as unknown as Loose;
  const parts = path.split('.');
  const last = parts.pop()!;
  let at: Loose = copy;
  for (const part of parts) at = at[part] as Loose;
  if (value === undefined) delete at[last];
  else at[last] = value;
  return copy;
}

function fieldsOf(value: unknown): string[] {
  const result = checkLesson(value);
  return result.ok ? [] : result.problems.map(({ field }) => field);
}

test.each(LESSONS.map((lesson) => [lesson.id, lesson] as const))(
  '%s fits the form and survives JSON',
  (_id, lesson) => {
    expect(checkLesson(lesson)).toEqual({ ok: true, lesson });
    expect(checkLesson(JSON.parse(JSON.stringify(lesson)))).toEqual({ ok: true, lesson });
  },
);

test("ids are the lesson's own", () => {
  expect(new Set(LESSONS.map(({ id }) => id)).size).toBe(LESSONS.length);
  expect(lessonById('no-such-lesson')).toBeNull();
});

test.each([
  ['id', 'First Rods'],
  ['version', 0],
  ['version', undefined],
  ['title', 'no.such.words'],
  ['outcomes', []],
  ['outcomes', Array(6).fill('firstRods.title')],
  ['outcomes.1', 'no.such.words'],
  ['ground.by', 'map'],
  ['ground.recipes', []],
  ['ground.recipes.0.layers.1.kind', 'butter'],
  ['ground.recipes.0.layers.1.thickness_m', [2, 1]],
  ['ground.recipes.0.layers.1.thickness_m', [Number.NaN, 1]],
  ['ground.recipes.0.waterTable_m', [1]],
  ['kit', { bit_m: '100 mm' }],
  ['view', 'half'],
  ['senses.0', 'sixth'],
  ['gauges', Array(8).fill('flow')],
  ['hands', []],
  ['opening.rods', 0],
  ['opening.starter_m', 9],
  ['opening.pit_L', -1],
  ['opening.pit_L', Number.POSITIVE_INFINITY],
  ['opening.primed', 'no'],
  ['end.cap_s', 1e9],
  ['faults', [{}]],
  ['pass_points', 101],
  ['rubric.3.item', 'luck'],
  ['rubric.3.weight', 0],
  ['rubric.3.bands', { from_m: 'deep' }],
  ['hints.0.levels', ['firstRods.hint.start.1', 'firstRods.hint.start.2']],
  ['cards.1.cue', { on: 'event', event: 'layerChanged' }],
  ['cards.1.cue', { on: 'moon' }],
  ['hazards', []],
  ['hazards.0', 'dragons'],
  ['questions', []],
])('a lesson with a wrong %s (%j) is turned away and the field is named', (path, value) => {
  const fields = fieldsOf(bad(path, value));
  expect(fields.length).toBeGreaterThan(0);
  expect(fields.some((field) => field === path || field.startsWith(`${path}.`) || path.startsWith(`${field}.`))).toBe(
    true,
  );
});

test('weights that do not sum to 100, and an item twice, are named', () => {
  expect(fieldsOf(bad('rubric.0.weight', 15))).toEqual(['rubric']);
  expect(fieldsOf(bad('rubric.1.item', 'clearedStops'))).toEqual(['rubric']);
});

test('a field that the form does not know is turned away', () => {
  expect(fieldsOf({ ...lessonById('first-rods'), bonus: 1 })).toEqual(['bonus']);
});

test.each([[null], [undefined], [0], ['text'], [[]], [{}]])('%j is no lesson and throws nothing', (value) => {
  expect(checkLesson(value).ok).toBe(false);
});

test('the rubric of first-rods has at least eight items over hole, log, additives, economy and safety', () => {
  const { rubric } = lessonById('first-rods')!;
  expect(rubric.length).toBeGreaterThanOrEqual(8);
  expect(new Set(rubric.map(({ item }) => CATEGORY_OF[item]))).toEqual(
    new Set(['hole', 'log', 'additives', 'economy', 'safety']),
  );
});

test('a kit may differ from the demo kit only in numbers that it has', () => {
  const lesson = lessonById('first-rods')!;
  expect(scenarioOf({ ...lesson, kit: { bit_m: 0.125 } }, 1).kit.bit_m).toBe(0.125);
  expect(() => scenarioOf({ ...lesson, kit: { wings: 3 } }, 1)).toThrow(RangeError);
});

test('over 200 seeds first-rods meets coarse sand between 2.1 and 3.6 m, and below it nothing else down to 6 m', () => {
  const lesson = lessonById('first-rods')!;
  for (let seed = 0; seed < 200; seed++) {
    const { ground, opening } = scenarioOf(lesson, seed);
    const coarse = ground.layers.find(({ kind }) => kind === 'coarseSand')!;
    expect(coarse.top_m).toBeGreaterThanOrEqual(2.1 - 1e-9);
    expect(coarse.top_m).toBeLessThanOrEqual(3.6 + 1e-9);
    expect(coarse.bottom_m).toBeGreaterThanOrEqual(6);
    expect(ground.depth_m).toBeGreaterThanOrEqual(6);
    expect(ground.waterTable_m).toBeGreaterThanOrEqual(1);
    expect(ground.waterTable_m).toBeLessThanOrEqual(2.5);
    expect(opening.rodsInAll).toBeGreaterThan(lesson.end.rods - 1);
  }
});

test('the same seed gives the same scenario, another seed another ground', () => {
  const lesson = lessonById('first-rods')!;
  expect(scenarioOf(lesson, 7)).toEqual(scenarioOf(lesson, 7));
  expect(scenarioOf(lesson, 7).ground).not.toEqual(scenarioOf(lesson, 10).ground);
  expect(() => scenarioOf(lesson, 4294967295)).not.toThrow();
});
