// Browser tests: Chromium and Firefox as the system has them, on the built app, served by the project's own server.
import { defineConfig } from '@playwright/test';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { CHROMIUM_ARGS, findBrowser } from '../run/browsers.mjs';

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

// Chosen once and handed on to the worker processes, so that two runs side by side do not share a server; below the
// ports that a system gives to the other end of a connection.
process.env.TEST_PORT ??= String(20_000 + (process.pid % 12_000));
// Each worker process reads these settings anew, so each has a folder of its own.
process.env.TEST_DOWNLOADS = join(tmpdir(), `saved-by-the-page-${process.pid}`);
/** What `npm test` leaves to Chromium: nothing in it hangs on the engine. `npm run test:browser` runs it in Firefox too. */
const CHROMIUM_IS_ENOUGH = [
  'board',
  'briefing',
  'class-board-look',
  'class-papers',
  'crew',
  'debrief',
  'debrief-well',
  'drills-taps',
  'exercise-editor',
  'exercise-look',
  'lens',
  'live-beside',
  'live-look',
  'live-turns',
  'practice',
  'site',
  'work-keys',
  'work-look',
].map((name) => `**/${name}.spec.ts`);
const small = process.env.TEST_SIZE === 'small';

const origin = `http://127.0.0.1:${process.env.TEST_PORT}`;

export default defineConfig({
  testDir: '.',
  testMatch: '*.spec.ts',
  outputDir: at('../../test-results'),
  tsconfig: at('../tsconfig.json'),
  fullyParallel: true,
  workers: 2,
  retries: 0,
  timeout: 60_000,
  expect: { timeout: 10_000 },
  forbidOnly: Boolean(process.env.CI),
  reporter: process.env.PLAYWRIGHT_JSON_OUTPUT_FILE ? [['list'], ['json']] : [['list']],
  use: { baseURL: origin, locale: 'en-GB', timezoneId: 'UTC', screenshot: 'only-on-failure' },
  projects: [
    {
      name: 'chromium',
      use: {
        browserName: 'chromium',
        launchOptions: { executablePath: findBrowser('chromium') ?? undefined, args: CHROMIUM_ARGS },
      },
    },
    {
      name: 'firefox',
      testIgnore: small ? CHROMIUM_IS_ENOUGH : [],
      use: {
        // The system's own Firefox is driven through the channel of that name; without it a patched one is wanted.
        browserName: 'firefox',
        channel: 'moz-firefox',
        launchOptions: {
          executablePath: findBrowser('firefox') ?? undefined,
          downloadsPath: process.env.TEST_DOWNLOADS,
        },
      },
    },
  ],
  webServer: {
    command: `node ${JSON.stringify(at('../run/serve.mjs'))}`,
    url: `${origin}/`,
    timeout: 120_000,
    stdout: 'pipe',
  },
});
