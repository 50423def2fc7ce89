// The start page: who is learning, what this device remembers, the page as one file.
import { APP_FILE } from '../../src/serve/build.mjs';
import { readProgress, writeProgress } from '../../src/app/progressFile';
import { chooseFish, expect, goTo, savedText, test } from './app';
import { writeFileSync } from 'node:fs';

test('several learners share a device, each by picture or number', async ({ page }) => {
  await chooseFish(page);
  await page.getByRole('button', { name: 'Someone else' }).click();
  await page.getByText('A number instead').click();
  await page.getByRole('textbox', { name: 'Number' }).fill('7');
  await page.getByRole('button', { name: 'Take this number' }).click();
  await expect(page.getByText('T-07', { exact: true })).toBeVisible();
  await page.getByRole('button', { name: 'Someone else' }).click();
  await expect(page.getByRole('button', { name: 'T-07', exact: true })).toHaveAttribute('aria-pressed', 'true');
  await page.getByRole('button', { name: 'Fish', exact: true }).click();
  await page.reload();
  await expect(page.getByText('Fish', { exact: true })).toBeVisible();
});

test('a number that is none is refused with a sentence', async ({ page }) => {
  await goTo(page, '');
  await page.getByText('A number instead').click();
  for (const wrong of ['0', '1000', 'seven', '-1', '']) {
    await page.getByRole('textbox', { name: 'Number' }).fill(wrong);
    await page.getByRole('button', { name: 'Take this number' }).click();
    await expect(page.getByText('Type a whole number from 1 to 999.')).toBeVisible();
  }
});

test('theme, text size, movement and hand are remembered', async ({ page }) => {
  await goTo(page, '');
  await page.getByRole('radio', { name: 'Night' }).check();
  await page.getByRole('radio', { name: 'Double' }).check();
  await page.getByRole('radio', { name: 'Little' }).check();
  await page.getByRole('group', { name: 'Working hand' }).getByRole('radio', { name: 'Left' }).check();
  const root = page.locator('html');
  await page.reload();
  await expect(root).toHaveAttribute('data-theme', 'night');
  await expect(root).toHaveAttribute('data-text', 'largest');
  await expect(root).toHaveAttribute('data-motion', 'still');
  await expect(root).toHaveAttribute('data-hand', 'left');
  await expect(page.getByRole('radio', { name: 'Night' })).toBeChecked();
});

test('the page offers itself as one file', async ({ page, request }) => {
  await goTo(page, '');
  const served = await (await request.get(`/${APP_FILE}`)).text();
  const { name, text } = await savedText(page, () =>
    page.getByRole('link', { name: 'Save this page as one file' }).click(),
  );
  expect(name).toBe(APP_FILE);
  expect(text).toBe(served);
});

test('opened from disk, the page saves itself, and the copy runs', async ({ page }, info) => {
  await page.goto(new URL(`../../dist/${APP_FILE}`, import.meta.url).href);
  await page.getByRole('button', { name: 'Fish', exact: true }).click();
  const { text } = await savedText(page, () =>
    page.getByRole('button', { name: 'Save this page as one file' }).click(),
  );
  const copy = info.outputPath('copy.html');
  writeFileSync(copy, text);
  await page.goto(`file://${copy}`);
  await expect(page.getByRole('heading', { level: 1, name: 'Jet small wells by hand' })).toBeVisible();
  await expect(page.getByRole('link', { name: 'Begin', exact: true })).toBeVisible();
});

test('progress goes to a file and comes back, asked whose it is where the sign is taken', async ({ page }, info) => {
  const made_ms = 1_700_000_000_000;
  const best = { 'first-rods': { score: 88, passed: true, tries: 4 } };
  const shown = { 'first-rods': { best_frac: 0.9, last_frac: 0.5, last_ms: made_ms } };
  const file = info.outputPath('progress.json');
  writeFileSync(file, writeProgress({ id: 'fish', picture: 'fish', number: null, made_ms, best, shown }));
  const take = async (): Promise<void> => {
    const [chooser] = await Promise.all([
      page.waitForEvent('filechooser'),
      page.getByRole('button', { name: 'Add progress from a file' }).click(),
    ]);
    await chooser.setFiles(file);
  };
  // Firefox's driver tells of one chooser a page, so the files after the first are put in.
  const takeAgain = (): Promise<void> => page.locator('input[type=file]').setInputFiles(file);
  await chooseFish(page);
  await take();
  const asked = page.getByRole('group', { name: 'Fish is already here. Is this the same learner?' });
  await asked.getByRole('button', { name: 'Star' }).click();
  await expect(page.getByText('The progress of Star is added.')).toBeVisible();
  await takeAgain();
  await asked.getByRole('button', { name: 'Yes, the same' }).click();
  await expect(page.getByText('Passed with 88 points in 4 tries.')).toBeVisible();
  await expect(page.getByText('Your weakest so far: 50% of its points the last time.')).toBeVisible();
  const { name, text } = await savedText(page, () =>
    page.getByRole('button', { name: 'Save the progress of Fish to a file' }).click(),
  );
  expect(name).toBe('progress-fish.json');
  expect(readProgress(text)).toMatchObject({ ok: true, learner: { id: 'fish', best, shown } });

  writeFileSync(file, text.replace('"score":88', '"score":880'));
  await takeAgain();
  await expect(page.getByText('The file is damaged at “best.first-rods.score”. Nothing was changed.')).toBeVisible();

  await page.getByRole('button', { name: 'Delete Fish from this device' }).click();
  await page.getByRole('button', { name: 'Delete for good' }).click();
  await expect(page.getByText('Fish is deleted from this device.')).toBeVisible();
  await page.reload();
  await expect(page.getByRole('button', { name: 'Star' })).toBeVisible();
  await expect(page.getByText('Passed with 88 points in 4 tries.')).toHaveCount(0);
});
