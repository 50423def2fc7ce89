// A learner's progress as a file: the way out and back, and every damage named.
import { expect, test } from 'vitest';
import {
  PROGRESS_LIMIT,
  readProgress,
  readProgressFile,
  underSign,
  writeProgress,
} from '../../../src/app/progressFile';
import type { Learner } from '../../../src/app/records';
import { hasMessage } from '../../../src/words';

const LEARNER: Learner = {
  id: 'T-07',
  picture: null,
  number: 7,
  made_ms: 1700000000000,
  best: { 'first-rods': { score: 81.5, passed: true, tries: 3 } },
  shown: { 'first-rods': { best_frac: 0.9, last_frac: 0.7, last_ms: 1700000001000 } },
  seen: { 'first-rods': [7, 4294967295] },
};

/** The learner's file with the value at the path replaced. */
function damaged(path: string, value: unknown): string {
  const file = JSON.parse(writeProgress(LEARNER)) as Record<string, unknown>;
  const parts = path.split('.');
  const last = parts.pop()!;
  let at = file;
  for (const part of parts) at = at[part] as Record<string, unknown>;
  if (value === undefined) delete at[last];
  else at[last] = value;
  return JSON.stringify(file);
}

test('what is written is read again unchanged', () => {
  expect(readProgress(writeProgress(LEARNER))).toEqual({ ok: true, learner: LEARNER });
  const fish: Learner = { ...LEARNER, id: 'fish', picture: 'fish', number: null, best: {}, shown: {}, seen: {} };
  expect(readProgress(writeProgress(fish))).toEqual({ ok: true, learner: fish });
});

test('a learner kept before subjects and grounds were noted can be written and read', () => {
  const { shown: _shown, seen: _seen, ...old } = LEARNER;
  expect(readProgress(writeProgress(old))).toEqual({ ok: true, learner: { ...old, shown: {}, seen: {} } });
});

test.each([
  ['who', 'Somebody', 'who'],
  ['who', 'T-0', 'who'],
  ['who', 'T-00', 'who'],
  ['who', 'T-007', 'who'],
  ['made_ms', -1, 'made_ms'],
  ['made_ms', undefined, 'made_ms'],
  ['best', 'none', 'best'],
  ['best.first-rods.score', 101, 'best.first-rods.score'],
  ['best.first-rods.passed', 'yes', 'best.first-rods.passed'],
  ['best.first-rods.tries', 0, 'best.first-rods.tries'],
  ['best.first-rods.bonus', 1, 'best.first-rods.bonus'],
  ['shown.first-rods.last_frac', 1.5, 'shown.first-rods.last_frac'],
  ['seen.first-rods', [-1], 'seen.first-rods.0'],
  ['seen.first-rods', [1.5], 'seen.first-rods.0'],
  ['seen.first-rods', [4294967296], 'seen.first-rods.0'],
  ['more', 1, 'more'],
])('%s as %j is turned away, and the field is named', (path, value, field) => {
  const read = readProgress(damaged(path, value));
  expect(read).toEqual({ ok: false, problem: { key: 'progress.badField', data: { field } } });
});

test.each([
  ['', 'progress.notJson'],
  ['{"format":', 'progress.notJson'],
  ['[]', 'progress.wrongFormat'],
  ['null', 'progress.wrongFormat'],
  ['{"format":"something-else"}', 'progress.wrongFormat'],
  [damaged('version', 2), 'progress.newer'],
  [' '.repeat(PROGRESS_LIMIT + 1), 'progress.tooLarge'],
])('%.40j is no progress', (text, key) => {
  const read = readProgress(text);
  expect(read.ok ? null : read.problem.key).toBe(key);
  expect(hasMessage(key)).toBe(true);
});

test('a file that is too large is refused before it is read', async () => {
  const huge = { size: PROGRESS_LIMIT + 1, text: () => Promise.reject(new Error('was read')) } as unknown as Blob;
  expect(await readProgressFile(huge)).toMatchObject({ ok: false, problem: { key: 'progress.tooLarge' } });
});

test('the same progress can stand under another sign', () => {
  expect(underSign(LEARNER, 'fish')).toEqual({ ...LEARNER, id: 'fish', picture: 'fish', number: null });
  expect(underSign(underSign(LEARNER, 'fish'), 'T-07')).toEqual(LEARNER);
});
