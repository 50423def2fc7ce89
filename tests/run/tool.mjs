// Runs one of the project's own TypeScript programs: `tool.mjs TSCONFIG PROGRAM ARGUMENTS...`. Installs the packages
// first where they are missing, and writes nothing of its own to standard output.
import { dirname, join, resolve } from 'node:path';
import { fileURLToPath, pathToFileURL } from 'node:url';
import { installIfNeeded } from '../../src/serve/install.mjs';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const [node, , tsconfig, program, ...rest] = process.argv;
try {
  installIfNeeded(root);
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exit(1);
}
const { register } = await import('tsx/esm/api');
register({ tsconfig: join(root, tsconfig) });
const path = resolve(root, program);
process.argv = [node, path, ...rest];
await import(pathToFileURL(path).href);
