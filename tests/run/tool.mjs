// Runs one of the project's own TypeScript programs, installing the packages first where they are missing.
import { spawnSync } from 'node:child_process';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';
import { installIfNeeded } from '../../src/serve/install.mjs';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
try {
  installIfNeeded(root);
  const tsx = ['node_modules/tsx/dist/cli.mjs', '--tsconfig', 'tests/tsconfig.json', ...process.argv.slice(2)];
  process.exitCode = spawnSync(process.execPath, tsx, { cwd: root, stdio: 'inherit' }).status ?? 1;
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
