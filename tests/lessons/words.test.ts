// The messages of the lessons: every one is used or named by a lesson, slots are filled, sentences are short.

import { readdirSync, readFileSync, statSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { CATEGORY_IDS, fillSlots, format, HAZARD_IDS, hazardWords, isWordKey, ITEM_IDS, lessonWords } from '$lessons';

function textsUnder(folder: string): string {
  return readdirSync(folder)
    .map((name) => join(folder, name))
    .map((path) =>
      statSync(path).isDirectory()
        ? path.endsWith('words')
          ? ''
          : textsUnder(path)
        : path.endsWith('.ts')
          ? readFileSync(path, 'utf8')
          : '',
    )
    .join('\n');
}

test('a slot is filled with its data; one without data stays to be seen', () => {
  expect(fillSlots('{a} and {b}', { a: 1 })).toBe('1 and {b}');
  expect(fillSlots('{toString}', {})).toBe('{toString}');
  expect(format('reason.depthReached.lost', { depth_m: 3.1, goal_m: 4.4 })).toBe('The hole reached 3.1 m of 4.4 m.');
});

test('only keys of the files are keys', () => {
  expect(isWordKey('item.fairFeed')).toBe(true);
  expect(isWordKey('toString')).toBe(false);
  expect(isWordKey(3)).toBe(false);
});

test('every category, item and hazard has its words', () => {
  for (const id of CATEGORY_IDS) expect(isWordKey(`category.${id}`)).toBe(true);
  for (const id of ITEM_IDS) expect(isWordKey(`item.${id}`)).toBe(true);
  for (const id of HAZARD_IDS) {
    const { title, text } = hazardWords(id);
    expect(isWordKey(title) && isWordKey(text)).toBe(true);
  }
});

test('every key is spoken of outside the message files, so none is left over', () => {
  const code = textsUnder('lessons') + textsUnder('src');
  const built = /^(category|item|hazard)\.|\.(title|learnt)$/;
  const left = Object.keys(lessonWords).filter((key) => !built.test(key) && !code.includes(`'${key}'`));
  expect(left).toEqual([]);
});

test('every key that the code speaks of is there', () => {
  const named = textsUnder('lessons').matchAll(
    /'((?:reason|outcome|problem|cli|item|firstRods|openHole)\.[A-Za-z0-9.]+)'/g,
  );
  const missing = [...named].map(([, key]) => key!).filter((key) => !isWordKey(key));
  expect(missing).toEqual([]);
});

test('sentences are short: at most fourteen words, and no name of a person or place', () => {
  for (const [key, text] of Object.entries(lessonWords)) {
    if (key.startsWith('cli.') || key.startsWith('problem.')) continue;
    for (const sentence of text.split(/(?<=[.?!:;])\s+/)) {
      expect([key, sentence.split(/\s+/).length <= 14]).toEqual([key, true]);
    }
  }
});
