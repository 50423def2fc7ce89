// What npm start and npm test decide on a tree: whether to install, whether to build, where the browsers are.
import { chmodSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import { afterEach, beforeEach, describe, expect, it } from 'vitest';
import { isBuilt, sourceHash } from '../../src/serve/build.mjs';
import { licenceNotice } from '../../src/serve/licences.mjs';
import { isInstalled } from '../../src/serve/install.mjs';
import { findBrowser } from '../run/browsers.mjs';
import { browserCounts, unitCounts } from '../run/counts.mjs';

let root: string;
beforeEach(() => {
  root = mkdtempSync(join(tmpdir(), 'fresh-'));
});
afterEach(() => rmSync(root, { recursive: true }));

function write(path: string, content: unknown): string {
  const full = join(root, path);
  mkdirSync(dirname(full), { recursive: true });
  writeFileSync(full, typeof content === 'string' ? content : JSON.stringify(content));
  return full;
}

describe('installing', () => {
  const lock = {
    packages: {
      '': { name: 'app' },
      'node_modules/a': { version: '1.0.0', integrity: 'x' },
      'node_modules/only-elsewhere': { version: '1.0.0', integrity: 'z', optional: true },
    },
  };
  const installed = { packages: { 'node_modules/a': { version: '1.0.0', integrity: 'x' } } };

  it('is due on a fresh clone, and after an install that was cut short', () => {
    write('package-lock.json', lock);
    expect(isInstalled(root)).toBe(false);
    write('node_modules/.package-lock.json', '{"packages": {');
    expect(isInstalled(root)).toBe(false);
  });

  it('is not due where all is there but what is for other kinds of computer', () => {
    write('package-lock.json', lock);
    write('node_modules/.package-lock.json', installed);
    expect(isInstalled(root)).toBe(true);
  });

  it.each([
    { 'node_modules/a': { version: '1.0.1', integrity: 'x' } },
    { 'node_modules/a': { version: '1.0.0', integrity: 'y' } },
    { ...installed.packages, 'node_modules/left-over': { version: '1.0.0' } },
    {},
  ])('is due where what is there is not what the lock file asks for: %j', (packages) => {
    write('package-lock.json', lock);
    write('node_modules/.package-lock.json', { packages });
    expect(isInstalled(root)).toBe(false);
  });
});

describe('building', () => {
  beforeEach(() => {
    write('src/main.ts', 'a');
    write('sim/numeric/root.ts', 'b');
    write('dist/.built-from', sourceHash(root));
  });

  it('is not due where no source has changed', () => {
    write('README.md', 'words');
    expect(isBuilt(root)).toBe(true);
  });

  it('is due where a source is new, changed or gone', () => {
    write('src/app/new.ts', '');
    expect(isBuilt(root)).toBe(false);
    rmSync(join(root, 'src/app/new.ts'));
    expect(isBuilt(root)).toBe(true);
    write('sim/numeric/root.ts', 'c');
    expect(isBuilt(root)).toBe(false);
    rmSync(join(root, 'sim/numeric/root.ts'));
    expect(isBuilt(root)).toBe(false);
  });
});

it('names every package in the notice, and gives a text that several share only once', () => {
  const notice = licenceNotice([
    { name: 'a', version: '1.0.0', identifier: 'MIT', text: 'Do as you like.\n' },
    { name: 'b', version: '2.0.0', identifier: 'MIT', text: 'Do as you like.' },
    { name: 'c', version: '3.0.0', identifier: 'Apache-2.0' },
  ]);
  expect(notice).toContain('a 1.0.0\nb 2.0.0\n\nDo as you like.');
  expect(notice.split('Do as you like.').length).toBe(2);
  expect(notice).toContain('c 3.0.0\n\nApache-2.0');
});

describe('finding a browser', () => {
  function program(path: string): string {
    const full = write(path, '#!/bin/sh\n');
    chmodSync(full, 0o755);
    return full;
  }

  it('takes the one that the environment names, and objects where it is not there', () => {
    const own = program('own/browser');
    expect(findBrowser('firefox', { FIREFOX_PATH: own, PATH: '' })).toBe(own);
    expect(() => findBrowser('firefox', { FIREFOX_PATH: join(root, 'none'), PATH: '' })).toThrow('FIREFOX_PATH');
  });

  it('looks along PATH, and is not misled by a folder of that name', () => {
    mkdirSync(join(root, 'one', 'chromium'), { recursive: true });
    const found = program('two/chromium');
    expect(findBrowser('chromium', { PATH: `${join(root, 'one')}:${join(root, 'two')}` })).toBe(found);
  });
});

describe('counting', () => {
  it('counts a file that could not be loaded, and a runner that died, as failures', () => {
    const file = (status: string, assertionResults: unknown[]) => ({ status, assertionResults });
    const report = write('unit.json', {
      numPassedTests: 5,
      numFailedTests: 1,
      numPendingTests: 2,
      numTodoTests: 0,
      testResults: [file('failed', []), file('failed', [1]), file('passed', [1])],
    });
    expect(unitCounts(report)).toEqual({ passed: 5, failed: 2, skipped: 2 });
    expect(unitCounts(join(root, 'none.json'))).toEqual({ passed: 0, failed: 1, skipped: 0 });
    expect(browserCounts(join(root, 'none.json'))).toEqual({ passed: 0, failed: 1, skipped: 0 });
  });

  it('takes a browser test that passed only at the second try as failed', () => {
    const report = write('browser.json', { stats: { expected: 4, unexpected: 1, flaky: 1, skipped: 0 }, errors: [] });
    expect(browserCounts(report)).toEqual({ passed: 4, failed: 2, skipped: 0 });
  });
});
