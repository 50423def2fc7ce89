// Every folder of sources says in at most 30 lines what lives there; it speaks for the folders inside it too.
import { existsSync, readFileSync } from 'node:fs';
import { dirname, join, relative, sep } from 'node:path';
import { expect, it } from 'vitest';
import { ROOT, sourcesBelow } from './program';

const MOST_LINES = 30;
const folders = ['sim', 'lessons', 'src', 'tests'].flatMap((top) => {
  const files = sourcesBelow(join(ROOT, top), /\.(ts|mjs|svelte)$/);
  const names = files.map((file) => relative(ROOT, dirname(file)).split(sep).slice(0, 2).join('/'));
  return [...new Set(names)];
});

it.each(folders)('%s has a README of at most 30 lines', (folder) => {
  const readme = join(ROOT, folder, 'README.md');
  expect(existsSync(readme), `${folder} has no README.md`).toBe(true);
  expect(readFileSync(readme, 'utf8').trimEnd().split('\n').length).toBeLessThanOrEqual(MOST_LINES);
});
