// `npm test`: installs what is missing, then runs every check in order and ends on one line of counts.
import { spawnSync } from 'node:child_process';
import { mkdirSync, rmSync } from 'node:fs';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { installIfNeeded } from '../../src/serve/install.mjs';
import { ensureBrowsers } from './browsers.mjs';
import { browserCounts, unitCounts } from './counts.mjs';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const reports = join(root, '.cache');
const unitReport = join(reports, 'unit.json');
const browserReport = join(reports, 'browser.json');

/** @type {{name: string, args: string[], after?: string, counts?: () => import('./counts.mjs').Counts}[]} */
const steps = [
  { name: 'format', args: ['node_modules/prettier/bin/prettier.cjs', '--check', '--log-level', 'warn', '.'] },
  { name: 'lint', args: ['node_modules/eslint/bin/eslint.js', '.', '--max-warnings', '0'] },
  { name: 'types', args: ['tests/run/types.mjs'] },
  {
    name: 'unit tests',
    args: [
      'node_modules/vitest/vitest.mjs',
      'run',
      '--reporter=default',
      '--reporter=json',
      `--outputFile.json=${unitReport}`,
    ],
    counts: () => unitCounts(unitReport),
  },
  { name: 'build', args: ['src/serve/build.mjs'] },
  {
    name: 'browser tests',
    after: 'build',
    args: ['node_modules/@playwright/test/cli.js', 'test', '-c', 'tests/browser'],
    counts: () => browserCounts(browserReport),
  },
];

// Colours are for a terminal: in a kept log they are noise.
const plain = process.stdout.isTTY ? {} : { NO_COLOR: '1', FORCE_COLOR: undefined };

const total = { passed: 0, failed: 0, skipped: 0 };
/** @type {string[]} */
const lines = [];

try {
  installIfNeeded(root);
  ensureBrowsers();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
}
rmSync(reports, { recursive: true, force: true });
mkdirSync(reports, { recursive: true });

/** @type {Set<string>} */
const failedSteps = new Set();
for (const step of steps) {
  console.log(`\n== ${step.name}`);
  if (step.after && failedSteps.has(step.after)) {
    lines.push(`FAILED ${step.name}: not run, for the ${step.after} failed`);
    total.failed += 1;
    continue;
  }
  const start_ms = performance.now();
  const run = spawnSync(process.execPath, step.args, {
    cwd: root,
    stdio: ['ignore', 'inherit', 'inherit'],
    env: { ...process.env, ...plain, PLAYWRIGHT_JSON_OUTPUT_FILE: browserReport, TEST_SIZE: 'small' },
  });
  const ok = run.status === 0;
  const time_s = ((performance.now() - start_ms) / 1000).toFixed(1);
  const counts = step.counts?.() ?? { passed: 0, failed: 0, skipped: 0 };
  // A step that fails without a failed test (a style slip, a type error, a crash) still counts as one failure.
  if (!ok && counts.failed === 0) counts.failed = 1;
  if (!ok) failedSteps.add(step.name);
  total.passed += counts.passed;
  total.failed += counts.failed;
  total.skipped += counts.skipped;
  const detail = step.counts ? ` (${counts.passed} passed, ${counts.failed} failed)` : '';
  lines.push(`${ok ? 'ok    ' : 'FAILED'} ${step.name}, ${time_s} s${detail}`);
}

console.log(`\n${lines.join('\n')}\n`);
const skipped = total.skipped > 0 ? `, ${total.skipped} skipped` : '';
console.log(`${total.passed} passed, ${total.failed} failed${skipped}`);
process.exitCode = total.failed === 0 ? 0 : 1;
