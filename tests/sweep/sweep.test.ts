// The sweep's own runner: tasks go to threads, results come back in order, the report keeps what was not run again.
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, expect, it } from 'vitest';
import { runAll } from './pool';
import { reportWith } from './report';

const folder = mkdtempSync(join(tmpdir(), 'sweep-'));
afterAll(() => rmSync(folder, { recursive: true }));

const planted = join(folder, 'planted.mts');
writeFileSync(
  planted,
  `import { threadId } from 'node:worker_threads';
   interface Task { value: number }
   export default {
     async run(task: Task) {
       if (task.value < 0) throw new Error('below zero');
       await new Promise((resolve) => setTimeout(resolve, task.value === 0 ? 200 : 5));
       return { double: task.value * 2, threadId };
     },
   };`,
);
const url = pathToFileURL(planted).href;

it('runs tasks side by side and gives the results in the order of the tasks', async () => {
  const tasks = [0, 1, 2, 3, 4, 5].map((value) => ({ value }));
  const results = await runAll<{ value: number }, { double: number; threadId: number }>(url, tasks, 2);
  expect(results.map(({ double }) => double)).toEqual([0, 2, 4, 6, 8, 10]);
  expect(new Set(results.map(({ threadId }) => threadId)).size).toBe(2);
});

it('ends with the task named where one throws', async () => {
  await expect(runAll(url, [{ value: 1 }, { value: -1 }], 1)).rejects.toThrow(/\{"value":-1\} failed[\s\S]*below zero/);
});

it('writes a section for each sweep, in order of name, and replaces only those run again', () => {
  const section = (name: string, text: string, holds: boolean) =>
    ({ name, title: 'a title', taskCount: 2, time_s: 3, madeWith: 'model 1', claims: [{ text, holds }] }) as const;
  const first = reportWith('', [section('b', 'old b', true), section('a', 'old a', true)]);
  expect(first.indexOf('## a:')).toBeGreaterThan(0);
  expect(first.indexOf('## b:')).toBeGreaterThan(first.indexOf('## a:'));
  const second = reportWith(first, [section('b', 'new b', false)]);
  expect(second).toContain('- holds: old a');
  expect(second).toContain('- **fails**: new b');
  expect(second).not.toContain('old b');
  expect(reportWith(second, [])).toBe(second);
  const counted = reportWith(second, [{ ...section('b', 'new b', true), notes: ['Events: clear 3.'] }]);
  expect(counted).toContain('- holds: new b\n\nEvents: clear 3.\n');
});
