// A class of sixty results taken in at once: until all are judged, how long the page is held up meanwhile, and what stays in memory.
import { exerciseFragment } from '$lessons';
import { aClass, CODE, EXERCISE, type Handed } from '../lessons/results/aClass';
import type { Bench, Row } from './bench';
import { heap_MB } from './heap';
import { openApp, traced, type AppPage } from './pageTrace';

const bench: Bench = {
  title: 'sixty results of the first rods on the class board, in Chromium',
  async run(): Promise<Row[]> {
    const handed = aClass();
    const app = await openApp(1280, 800);
    try {
      return await measured(app, handed);
    } finally {
      await app.close();
    }
  },
};
export default bench;

async function measured(app: AppPage, handed: readonly Handed[]): Promise<Row[]> {
  const { page, origin } = app;
  await page.goto(`${origin}/?renderer=canvas${exerciseFragment(EXERCISE, CODE)}`);
  await page.waitForURL(/#\/task\//);
  await page.goto(`${origin}/?renderer=canvas#/board/${EXERCISE.id}`);
  await page.locator('[data-take=files]').waitFor({ state: 'attached' });
  const files = handed.map(({ from, text }) => ({
    name: from,
    mimeType: 'application/json',
    buffer: Buffer.from(text),
  }));
  let taken_s = 0;
  let all_s = 0;
  const { longest_ms, longestRan_ms } = await traced(app, async () => {
    const start_ms = performance.now();
    const since_s = (): number => (performance.now() - start_ms) / 1000;
    await page.locator('[data-take=files]').setInputFiles(files);
    await page.getByRole('progressbar').waitFor({ timeout: 60_000 });
    taken_s = since_s();
    await page.getByRole('progressbar').waitFor({ state: 'detached', timeout: 300_000 });
    all_s = since_s();
  });
  return [
    { what: 'results handed in', value: handed.length, unit: '' },
    { what: 'first seen on the board', value: taken_s, unit: 's' },
    { what: 'all judged', value: all_s, unit: 's' },
    { what: 'longest task of the page', value: longest_ms, unit: 'ms' },
    { what: 'longest task, of the processor alone', value: longestRan_ms, unit: 'ms' },
    { what: 'memory in use by the page afterwards', value: await heap_MB(app), unit: 'MB' },
  ];
}
