// The class as JSON: everything of the report, under a versioned name.
import { expect, test } from 'vitest';
import { classJson } from '../../../src/classroom/exports/classJson';
import { CLASS } from './aClass';

test('JSON brings the whole class back, with its format and version', () => {
  const { format, version, sim, exercise, results } = JSON.parse(classJson(CLASS)) as Record<string, unknown>;
  expect({ format, version, sim, exercise }).toEqual({
    format: 'hand-jetting-class',
    version: 1,
    sim: CLASS.sim,
    exercise: CLASS.exercise,
  });
  const lines = CLASS.results.map(({ taken_ms: _ms, ...line }) => ({ ...line, taken: '2026-03-03T09:30:00.000Z' }));
  expect(results).toEqual(lines);
});
