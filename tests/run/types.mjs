// Checks the types of every part with its own settings: the model may not see the page, nor the page Node.
import { spawn } from 'node:child_process';
import { dirname } from 'node:path';
import { fileURLToPath } from 'node:url';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const tsc = ['node_modules/typescript/bin/tsc', '-p'];
const checks = [
  [...tsc, 'sim'],
  [...tsc, 'lessons'],
  [...tsc, 'lessons/cli'],
  [...tsc, 'tests'],
  [
    'node_modules/svelte-check/bin/svelte-check',
    '--workspace',
    'src',
    '--tsconfig',
    'tsconfig.json',
    '--fail-on-warnings',
    '--output',
    'human',
  ],
];

/**
 * @param {string[]} args
 * @returns {Promise<boolean>}
 */
function check(args) {
  return new Promise((resolve) => {
    const child = spawn(process.execPath, args, { cwd: root, stdio: 'inherit' });
    child.on('close', (code) => resolve(code === 0));
  });
}

// Two at a time: one for each core of the smallest computer the tests are meant for.
/** @type {boolean[]} */
const results = [];
const waiting = checks.map((args) => () => check(args));
await Promise.all(
  [0, 1].map(async () => {
    for (let next = waiting.shift(); next; next = waiting.shift()) results.push(await next());
  }),
);
process.exitCode = results.every(Boolean) ? 0 : 1;
