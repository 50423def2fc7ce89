// Prints how many reference rows there are by mark: V read, V2 read at second hand, M from memory, D derived, R recomputed.
// Run: node tests/reference/counts.mjs. Every row is run; a failing one makes the exit code 1.
import { spawnSync } from 'node:child_process';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('../..', import.meta.url));
const vitest = fileURLToPath(new URL('../../node_modules/vitest/vitest.mjs', import.meta.url));
const ran = spawnSync(process.execPath, [vitest, 'run', 'tests/reference', '--reporter=json'], {
  cwd: root,
  encoding: 'utf8',
  maxBuffer: 64 * 1024 * 1024,
});
const report = JSON.parse(ran.stdout.slice(ran.stdout.indexOf('{')));

const counts = new Map(['V', 'V2', 'M', 'D', 'R'].map((mark) => [mark, { passed: 0, failed: 0 }]));
for (const file of report.testResults) {
  for (const { title, status } of file.assertionResults) {
    const mark = /^\[(\w+)\] /.exec(title)?.[1];
    const count = mark === undefined ? undefined : counts.get(mark);
    if (count) count[status === 'passed' ? 'passed' : 'failed']++;
  }
}
const all = [...counts.values()].reduce((sum, { passed, failed }) => sum + passed + failed, 0);
const byMark = [...counts].map(
  ([mark, { passed, failed }]) => `${mark} ${passed}${failed ? ` (${failed} failed)` : ''}`,
);
console.log(`Reference rows: ${all}. By mark: ${byMark.join(', ')}.`);
process.exitCode = ran.status ?? 1;
