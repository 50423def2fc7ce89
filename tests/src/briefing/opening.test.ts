// The briefing's drawing: it shows the opening state as far as the view level lets one see it.
import { expect, test } from 'vitest';
import { LESSONS, scenarioOf } from '$lessons';
import { createRun } from '$sim';
import { cutawayView } from '../../../src/cutaway/view';
import { FIELD, filled_frac, openingScale, openingWords, ringParts } from '../../../src/screens/briefing/opening';
import { HAZARD_DRAWINGS } from '../../../src/screens/briefing/hazardDrawings';
import { laterMessages } from '../../../src/words/later';
import { addMessages } from '../../../src/words/messages';
import { hasMessage } from '../../../src/words';
import { HAZARD_IDS } from '$lessons';

addMessages(laterMessages);

test.each(LESSONS.map((lesson) => [lesson.id, lesson] as const))('%s is drawn inside its field', (_id, lesson) => {
  const view = cutawayView(createRun(scenarioOf(lesson, 7)), lesson.view);
  const goal_m = lesson.well ? null : lesson.end.depth_m;
  const scale = openingScale(view, goal_m);
  for (const depth_m of [0, view.stem.bottom_m, goal_m ?? 0, view.well?.casing?.shoe_m ?? 0]) {
    expect(scale.y(depth_m)).toBeGreaterThanOrEqual(FIELD.ground);
    expect(scale.y(depth_m)).toBeLessThanOrEqual(FIELD.bottom);
  }
  expect(view.layers === null).toBe(lesson.view !== 'open');
  for (const { key } of openingWords(view)) expect([key, hasMessage(key)]).toEqual([key, true]);
});

test('a chamber is full at its rim and empty at its floor', () => {
  expect(filled_frac({ level_m: 0, depth_m: 0.8 })).toBe(1);
  expect(filled_frac({ level_m: 0.8, depth_m: 0.8 })).toBe(0);
  expect(filled_frac({ level_m: 0.2, depth_m: 0.8 })).toBeCloseTo(0.75, 12);
});

test('the ring shows what fills it by kind, in stretches that do not overlap, and nothing where little fell', () => {
  const lesson = LESSONS.find(({ id }) => id === 'open-well')!;
  const view = cutawayView(createRun(scenarioOf(lesson, 3)), 'open');
  const annulus = {
    dz_m: 0.5,
    cells: 5,
    depth_m: 2.4,
    fills: ['coarse', 'cement'],
    stride: 6,
    // Pack in the two lowest cells, cement in the two above, little in the uppermost.
    rest_frac: Float64Array.from([0.2, 0, 0, 1, 0.9, 0, 0, 0.7, 1, 0, 0, 0]),
    falling_frac: new Float64Array(12),
    bridged: new Float64Array(5),
    clogged_frac: new Float64Array(5),
    grain_m: [0.001, 0],
  };
  const parts = ringParts({ ...view, well: { ...view.well!, annulus } });
  expect(parts).toEqual([
    { from_m: 0.5, to_m: 1.5, fill: 'cement' },
    { from_m: 1.5, to_m: 2.4, fill: 'coarse' },
  ]);
  expect(ringParts(view)).toEqual([]);
});

test('every danger has its drawing', () => {
  expect(Object.keys(HAZARD_DRAWINGS).sort()).toEqual([...HAZARD_IDS].sort());
});
