// The lesson is fair: the careful crew does well on nearly every ground, the steady crew in between, the green crew clearly worse. Ten seeds here, fifty in the sweep.

import { expect, test } from 'vitest';
import { calibrate } from './calibrate';

test('ten seeds: careful has 80 points in at least nine, green a median at least 25 lower, steady one between, all end by their own act', () => {
  const result = calibrate(1, 10);
  expect(result.unfinished).toEqual([]);
  expect(result.careful.filter((score) => score >= 80).length).toBeGreaterThanOrEqual(9);
  expect(result.carefulMedian - result.greenMedian).toBeGreaterThanOrEqual(25);
  expect(result.short).toEqual([]);
  expect(result.steadyMedian).toBeGreaterThanOrEqual(60);
  expect(result.steadyMedian).toBeLessThanOrEqual(85);
  expect(result.steadyMedian).toBeGreaterThan(result.greenMedian);
  expect(result.steadyMedian).toBeLessThan(result.carefulMedian);
  expect(result.worstLedger).toBeLessThanOrEqual(1e-9);
}, 120000);
