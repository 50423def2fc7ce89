// What the built app weighs: the script of the first screen, each later chunk, and the one self-contained file.
import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { APP_FILE, buildIfNeeded } from '../../src/serve/build.mjs';
import type { Bench, Row } from './bench';

const root = fileURLToPath(new URL('../..', import.meta.url));
const dist = join(root, 'dist');
const inKilobytes = (path: string): number => gzipSync(readFileSync(path)).length / 1000;

/** Scripts that the page loads before anything is touched: those it names, and what those import at once. */
function firstScripts(): Set<string> {
  const page = readFileSync(join(dist, 'index.html'), 'utf8');
  const waiting = [...page.matchAll(/(?:src|href)="\.\/(assets\/[^"]+\.js)"/g)].map((match) => match[1]);
  const found = new Set<string>();
  for (let path = waiting.pop(); path; path = waiting.pop()) {
    if (found.has(path)) continue;
    found.add(path);
    const script = readFileSync(join(dist, path), 'utf8');
    for (const match of script.matchAll(/(?:\bfrom|\bimport)\s*["']\.\/([^"']+\.js)["']/g)) {
      waiting.push(`assets/${match[1]}`);
    }
  }
  return found;
}

const bench: Bench = {
  title: 'the built app, compressed as a server sends it',
  run(): Row[] {
    buildIfNeeded(root);
    const first = firstScripts();
    const sum = [...first].reduce((total, path) => total + inKilobytes(join(dist, path)), 0);
    const later = readdirSync(join(dist, 'assets'))
      .map((file) => `assets/${file}`)
      .filter((path) => !first.has(path))
      .map((path) => ({ what: path.replace('assets/', 'later: '), value: inKilobytes(join(dist, path)), unit: 'kB' }))
      .sort((a, b) => b.value - a.value);
    return [
      { what: 'first screen, script', value: sum, unit: 'kB' },
      ...later,
      { what: 'the one file', value: inKilobytes(join(dist, APP_FILE)), unit: 'kB' },
      { what: 'the one file, not compressed', value: readFileSync(join(dist, APP_FILE)).length / 1000, unit: 'kB' },
    ];
  },
};
export default bench;
