// Runs the browser tests; what follows on the command line goes to Playwright: a part of a file name, --project ...
import { spawnSync } from 'node:child_process';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { ensureBrowsers } from './browsers.mjs';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
try {
  ensureBrowsers();
  const playwright = ['node_modules/@playwright/test/cli.js', 'test', '-c', 'tests/browser', ...process.argv.slice(2)];
  process.exitCode = spawnSync(process.execPath, playwright, { cwd: root, stdio: 'inherit' }).status ?? 1;
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
