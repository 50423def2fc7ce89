// `npm run sweep`: runs every sweep here, or those named, in worker threads, and writes what they found.
import { existsSync, readFileSync, readdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { SIM_VERSION } from '$sim';
import { runAll } from './pool';
import { reportWith, type Section } from './report';
import type { Sweep } from './sweep';

const here = fileURLToPath(new URL('.', import.meta.url));
const wanted = process.argv.slice(2).filter((argument) => !argument.startsWith('--'));
const dry = process.argv.includes('--dry');
const present = readdirSync(here)
  .filter((file) => file.endsWith('.sweep.ts'))
  .map((file) => file.replace('.sweep.ts', ''))
  .sort();
const unknown = wanted.filter((name) => !present.includes(name));
if (unknown.length > 0) {
  console.error(`There is no sweep called ${unknown.join(', ')}. There are: ${present.join(', ')}.`);
  process.exit(2);
}

const sections: Section[] = [];
for (const name of wanted.length > 0 ? wanted : present) {
  const url = pathToFileURL(join(here, `${name}.sweep.ts`)).href;
  const { default: sweep } = (await import(url)) as { default: Sweep<unknown, unknown> };
  const tasks = sweep.tasks();
  console.log(`\n${name}: ${sweep.title}, ${tasks.length} tasks`);
  const start_ms = performance.now();
  const results = await runAll<unknown, unknown>(url, tasks);
  const time_s = (performance.now() - start_ms) / 1000;
  const done = tasks.map((task, index) => ({ task, result: results[index] }));
  const claims = sweep.judge(done);
  const notes = sweep.notes?.(done) ?? [];
  for (const { text, holds } of claims) console.log(`  ${holds ? 'holds' : 'FAILS'}: ${text}`);
  for (const note of notes) console.log(`  ${note}`);
  const madeWith = `model ${SIM_VERSION}, Node ${process.version}`;
  sections.push({ name, title: sweep.title, taskCount: tasks.length, time_s, madeWith, claims, notes });
}

const claims = sections.flatMap((section) => section.claims);
const failed = claims.filter((claim) => !claim.holds).length;
const report = join(here, 'REPORT.md');
if (!dry) {
  writeFileSync(report, reportWith(existsSync(report) ? readFileSync(report, 'utf8') : '', sections));
  console.log(`\nWritten to ${report}`);
}
console.log(`${claims.length - failed} passed, ${failed} failed`);
process.exitCode = failed === 0 ? 0 : 1;
