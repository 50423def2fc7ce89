// The same run has the same hash in Node, Chromium and Firefox: files made in Node are replayed in the page.
import { expect, test } from '@playwright/test';
import { lessonById, playCrew, runFileOf, type RunFile } from '../../lessons';
import { bundleForPage } from './bundle';

/** Seeds here; the sweep takes 50. */
const SEEDS = Number(process.env.ENGINE_SEEDS ?? 20);

test(`${SEEDS} runs have the same hash as in Node`, async ({ page }) => {
  test.setTimeout(60_000 + SEEDS * 5_000);
  const lesson = lessonById('first-rods')!;
  const files: RunFile[] = [];
  for (let seed = 1; seed <= SEEDS; seed++)
    files.push(runFileOf(playCrew(lesson, seed % 2 === 0 ? 'careful' : 'green', seed), lesson));
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
  expect(new Set(hashes).size).toBe(SEEDS);
});
