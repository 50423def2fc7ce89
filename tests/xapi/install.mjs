// Installs the two checkers here, in a folder of their own, where they are not yet as the lock file asks for.
import { dirname } from 'node:path';
import { env } from 'node:process';
import { fileURLToPath } from 'node:url';
import { installIfNeeded } from '../../src/serve/install.mjs';

// Under `npm test` the settings of the whole project come along and would win over those of this folder.
for (const name of ['npm_config_engine_strict', 'npm_config_local_prefix']) delete env[name];
try {
  installIfNeeded(dirname(fileURLToPath(import.meta.url)));
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
