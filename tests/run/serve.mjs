// Serves the built app to the browser tests, on the port in TEST_PORT, building it first where a source is newer.
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { buildIfNeeded } from '../../src/serve/build.mjs';
import { createAppServer, listen } from '../../src/serve/server.mjs';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
buildIfNeeded(root);
await listen(createAppServer(join(root, 'dist')), {
  host: '127.0.0.1',
  port: Number(process.env.TEST_PORT),
  tries: 0,
});
