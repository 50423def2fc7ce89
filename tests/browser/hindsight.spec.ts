// Looking back: what each stretch cost, in workers or without them, kept with the run, and tried again as a run beside the first.
import type { Page } from '@playwright/test';
import { fileURLToPath } from 'node:url';
import { lessonById, playCrew, readRunFile, replayFile, writeRunFile } from '../../lessons';
import { answerAll, expect, goTo, pasteRun, savedText, test } from './app';
import { APP_FILE } from '../../src/serve/build.mjs';
import { faults } from './axe';

let green: string | null = null;

function greenFile(): string {
  const lesson = lessonById('first-rods')!;
  green ??= writeRunFile(playCrew(lesson, 'green', 7), lesson, { who: 'T-01', name: 'Green run' });
  return green;
}

async function toCosts(page: Page): Promise<void> {
  await pasteRun(page, greenFile());
  await fromList(page);
}

async function fromList(page: Page): Promise<void> {
  await page.getByRole('button', { name: 'Look back on Green run' }).click();
  await answerAll(page);
  await page.getByRole('button', { name: /^\d What it cost$/ }).click();
  await expect(page.getByRole('heading', { level: 2, name: 'What it cost' })).toBeVisible();
}

const allKnown = (page: Page) => expect(page.getByText(/^It is all worked out/)).toBeVisible({ timeout: 150_000 });

test('the dearest stretches come with acts, items and luck; every stretch is listed', async ({ page }) => {
  test.setTimeout(300_000);
  await toCosts(page);
  await allKnown(page);
  await expect(page.getByText(/From the beginning a careful crew reaches [\d.]+ points here/)).toBeVisible();
  await expect(page.getByRole('heading', { level: 4 })).toHaveCount(3);
  await expect(page.getByText(/lost\. /).first()).toBeVisible();
  await expect(page.getByText(/On \d of \d grounds that look the same so far/).first()).toBeVisible({
    timeout: 150_000,
  });
  await page.getByText('Every stretch of the run').click();
  expect(await faults(page)).toEqual([]);
  for (const [width, height] of [
    [390, 844],
    [320, 640],
  ]) {
    await page.setViewportSize({ width: width!, height: height! });
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth))
      .toBe(0);
  }
});

test('what is known is kept with the run', async ({ page }) => {
  test.setTimeout(300_000);
  await toCosts(page);
  await allKnown(page);
  await goTo(page, 'runs');
  await page.getByRole('button', { name: 'Look back on Green run' }).click();
  await page.getByRole('button', { name: /^\d What it cost$/ }).click();
  await expect(page.getByText(/^It is all worked out/)).toBeVisible({ timeout: 5000 });
});

test('without workers the page does it in slices, and can be stopped', async ({ page }) => {
  test.setTimeout(300_000);
  await page.addInitScript(() => Reflect.deleteProperty(window, 'Worker'));
  await toCosts(page);
  await page.getByRole('button', { name: 'Stop working it out' }).click();
  await expect(page.getByText(/^Stopped\./)).toBeVisible();
  await page.getByRole('button', { name: 'Go on working it out' }).click();
  await allKnown(page);
});

test('the one file opened from a folder looks back in workers too', async ({ page }) => {
  test.setTimeout(300_000);
  await page.goto(`file://${fileURLToPath(new URL(`../../dist/${APP_FILE}`, import.meta.url))}#/runs`);
  await page.getByText('Or paste the text of a run').click();
  await page.getByRole('textbox', { name: 'Text of a run file' }).fill(greenFile());
  await page.getByRole('button', { name: 'Open this text' }).click();
  await fromList(page);
  expect(page.workers().length).toBeGreaterThan(0);
  await allKnown(page);
});

test('a new try begins where the stretch does, beside the first run, and says so', async ({ page }) => {
  test.setTimeout(300_000);
  await toCosts(page);
  await allKnown(page);
  await page
    .getByRole('button', { name: /^Try again from/ })
    .first()
    .click();
  await expect(page.getByRole('heading', { level: 1, name: 'The first rods' })).toBeVisible({ timeout: 30_000 });
  await goTo(page, 'runs');
  await expect(page.getByText(/^a new try of Green run, from/)).toBeVisible();
  await expect(page.getByRole('button', { name: 'Look back on Green run' })).toBeVisible();
  const save = page.getByRole('button', { name: /^Save From .*Green run to a file$/ });
  const read = readRunFile((await savedText(page, () => save.click())).text);
  if (!read.ok) throw new Error(read.problem);
  expect(read.file.practice).toBe(true);
  expect(read.file.log.at(-1)![1]).toBe('goBack');
  expect(replayFile(read.file).reproduced).toBe(true);
});
