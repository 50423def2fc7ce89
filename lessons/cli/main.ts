// Ties the headless command to Node: arguments, files, streams, exit code.

import { readFileSync, statSync, writeFileSync } from 'node:fs';
import { headless } from './headless';

process.exitCode = headless(process.argv.slice(2), {
  out: (text) => process.stdout.write(text + '\n'),
  err: (text) => process.stderr.write(text + '\n'),
  now_ms: () => performance.now(),
  sizeOf: (path) => {
    const found = statSync(path, { throwIfNoEntry: false });
    return found?.isFile() ? found.size : null;
  },
  read: (path) => readFileSync(path, 'utf8'),
  write: (path, text) => writeFileSync(path, text),
});
