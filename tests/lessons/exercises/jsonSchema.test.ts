// The JSON Schema that others may check exercise files by is the one that the program checks by.
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { expect, test } from 'vitest';
import { newExercise } from '$lessons';
import { exerciseJson } from '../../run/exerciseJson';

const path = fileURLToPath(new URL('../../../static/exercise.schema.json', import.meta.url));

interface Form {
  readonly description: string;
  readonly required: readonly string[];
  readonly properties: Readonly<Record<string, object>>;
}

test('static/exercise.schema.json is what the schema gives (npm run schema writes it anew)', async () => {
  expect(readFileSync(path, 'utf8')).toBe(await exerciseJson(path));
});

test('it names every field, and says what it cannot say', () => {
  const { description, required, properties } = JSON.parse(readFileSync(path, 'utf8')) as Form;
  const fields = Object.keys(newExercise('first-rods', 'exercise-test', 'A test'));
  expect([...required].sort()).toEqual([...fields].sort());
  expect(Object.keys(properties)).toEqual(
    expect.arrayContaining([...fields, 'season', 'site', 'depth_m', 'budget_marks', 'bands', 'pool']),
  );
  for (const check of ['sum to 100', 'a title', 'each ground once', 'two moments of one sort'])
    expect(description).toContain(check);
});
