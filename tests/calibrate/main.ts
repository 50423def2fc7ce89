// `npm run calibrate`: plays every lesson, or those named, with every crew in worker threads, and writes each into lessons/CALIBRATION.md as it is done.
import { existsSync, readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { LESSONS, lessonById } from '$lessons';
import { SIM_VERSION } from '$sim';
import { runAll } from '../sweep/pool';
import { claimsOf } from './bounds';
import type { CrewRun } from './crewRuns';
import { calibrationText, type LessonReport } from './report';
import { tasksFor, type SeedTask } from './seedTask';

const args = process.argv.slice(2);
const seedsAt = args.indexOf('--seeds');
const seeds = seedsAt < 0 ? 200 : Number(args[seedsAt + 1]);
const dry = args.includes('--dry');
const named = args.filter((argument, i) => !argument.startsWith('--') && (seedsAt < 0 || i !== seedsAt + 1));
const all = LESSONS.map(({ id }) => id);
const unknown = named.filter((id) => !all.includes(id));
if (unknown.length > 0 || !Number.isInteger(seeds) || seeds < 1) {
  console.error(
    unknown.length > 0
      ? `There is no lesson called ${unknown.join(', ')}. There are: ${all.join(', ')}.`
      : '--seeds wants a whole number from 1 on.',
  );
  process.exit(2);
}

/** One run file in so many is played again. */
const AGAIN_EVERY = 20;
const madeWith = `model ${SIM_VERSION}, Node ${process.version}`;
const file = fileURLToPath(new URL('../../lessons/CALIBRATION.md', import.meta.url));
let failed = 0;
for (const lesson of named.length > 0 ? named : all) {
  const start_ms = performance.now();
  const url = new URL('./seedTask.ts', import.meta.url).href;
  const runs = (await runAll<SeedTask, CrewRun[]>(url, tasksFor([lesson], seeds, Math.min(AGAIN_EVERY, seeds)))).flat();
  const claims = claimsOf(lessonById(lesson)!, runs);
  const report: LessonReport = { lesson, seeds, madeWith, runs, claims };
  if (!dry) writeFileSync(file, calibrationText(existsSync(file) ? readFileSync(file, 'utf8') : '', [report], all));
  failed += claims.filter(({ holds }) => !holds).length;
  console.log(`\n${lesson}: ${seeds} seeds in ${((performance.now() - start_ms) / 1000).toFixed(0)} s`);
  for (const { text, holds } of claims) console.log(`  ${holds ? 'holds' : 'FAILS'}: ${text}`);
}
console.log(`${failed} claims fail`);
process.exitCode = failed === 0 ? 0 : 1;
