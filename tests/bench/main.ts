// `npm run bench`: runs every bench here, or those named, and prints what they measured.
import { readdirSync } from 'node:fs';
import { cpus } from 'node:os';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { join } from 'node:path';
import type { Bench, Row } from './bench';

const here = fileURLToPath(new URL('.', import.meta.url));
const asJson = process.argv.includes('--json');
const wanted = process.argv.slice(2).filter((argument) => !argument.startsWith('--'));
const present = readdirSync(here)
  .filter((file) => file.endsWith('.bench.ts'))
  .map((file) => file.replace('.bench.ts', ''))
  .sort();
const unknown = wanted.filter((name) => !present.includes(name));
if (unknown.length > 0) {
  console.error(`There is no bench called ${unknown.join(', ')}. There are: ${present.join(', ')}.`);
  process.exit(2);
}

const results: Record<string, Row[]> = {};
for (const name of wanted.length > 0 ? wanted : present) {
  const url = pathToFileURL(join(here, `${name}.bench.ts`)).href;
  const { default: bench } = (await import(url)) as { default: Bench };
  if (!asJson) console.log(`\n${name}: ${bench.title}`);
  results[name] = await bench.run();
  if (!asJson) for (const row of results[name]) console.log(line(row));
}
const machine = { node: process.version, processor: cpus()[0]?.model ?? 'unknown', cores: cpus().length };
console.log(asJson ? JSON.stringify({ machine, results }) : `\nOn ${machine.cores} cores, Node ${machine.node}.`);

function line({ what, value, unit }: Row): string {
  const digits = Math.abs(value) >= 100 || Number.isInteger(value) ? 0 : Math.abs(value) >= 1 ? 2 : 4;
  return `  ${what.padEnd(44)} ${value.toFixed(digits).padStart(12)} ${unit}`;
}
