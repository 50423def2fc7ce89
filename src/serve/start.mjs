// `npm start`: installs what is missing, builds what is old, serves the app and says where it is.
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { lanAddresses } from './addresses.mjs';
import { APP_FILE, buildIfNeeded } from './build.mjs';
import { installIfNeeded } from './install.mjs';
import { createAppServer, listen } from './server.mjs';

const root = dirname(dirname(dirname(fileURLToPath(import.meta.url))));
const wantedPort = Number(process.env.PORT ?? 4173);

try {
  if (!Number.isInteger(wantedPort) || wantedPort < 0 || wantedPort > 65535) {
    throw new Error(`PORT must be a whole number from 0 to 65535, not "${process.env.PORT}".`);
  }
  installIfNeeded(root);
  buildIfNeeded(root);
  const server = createAppServer(join(root, 'dist'));
  const port = await listen(server, { port: wantedPort });
  const others = lanAddresses();

  console.log(`\nThe trainer is ready. On this computer, open http://localhost:${port}/ in a browser.`);
  if (others.length === 0) {
    console.log('This computer is on no network just now, so only this computer can open it.');
  } else {
    console.log('Phones and computers on the same network can open:');
    for (const address of others) console.log(`  http://${address}:${port}/`);
  }
  console.log(`The whole app as one file, to save and pass on: http://localhost:${port}/${APP_FILE}`);
  console.log('Press Ctrl+C to stop.');

  const stop = () => {
    server.close();
    server.closeAllConnections();
  };
  process.once('SIGINT', stop);
  process.once('SIGTERM', stop);
  // A stop that reaches npm alone would leave the server behind, holding its port: it goes when npm goes.
  const parent = process.ppid;
  setInterval(() => process.ppid === parent || stop(), 500).unref();
} catch (error) {
  console.error(error instanceof Error ? error.message : error);
  process.exitCode = 1;
}
