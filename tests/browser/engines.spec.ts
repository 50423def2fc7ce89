// The same run has the same hash in Node, Chromium and Firefox: files made in Node are replayed in the page.
import { expect, test, type Page } from '@playwright/test';
import { lessonById, playCrew, runFileOf, type RunFile } from '../../lessons';
import { holeFile, holes } from '../lessons/openHole';
import { bundleForPage } from './bundle';

/** Counts here; the sweep takes more. */
const LESSONS = Number(process.env.ENGINE_LESSONS ?? 6);
const HOLES = Number(process.env.ENGINE_HOLES ?? 24);

async function expectTheSame(page: Page, files: readonly RunFile[]): Promise<void> {
  await page.goto('about:blank');
  await page.addScriptTag({ content: await bundleForPage('lessons/index.ts', 'jetting') });
  const hashes = await page.evaluate(
    (given) => {
      const { replayFile } = (window as unknown as { jetting: { replayFile(file: unknown): { hash: string } } })
        .jetting;
      return given.map((file) => replayFile(file).hash);
    },
    JSON.parse(JSON.stringify(files)) as unknown[],
  );
  expect(hashes).toEqual(files.map((file) => file.hash));
  expect(new Set(hashes).size).toBe(files.length);
}

test(`${LESSONS} runs of the first lesson have the same hash as in Node`, async ({ page }) => {
  test.setTimeout(60_000 + LESSONS * 5_000);
  const lesson = lessonById('first-rods')!;
  const files = Array.from({ length: LESSONS }, (_, i) =>
    runFileOf(playCrew(lesson, i % 2 === 0 ? 'careful' : 'green', i + 1), lesson),
  );
  await expectTheSame(page, files);
});

test(`${HOLES} whole holes have the same hash as in Node`, async ({ page }) => {
  test.setTimeout(60_000 + HOLES * 15_000);
  await expectTheSame(page, holes(HOLES).map(holeFile));
});
