// The start page: who is learning, what this device remembers, the page as one file.
import { APP_FILE } from '../../src/serve/build.mjs';
import { chooseFish, expect, goTo, savedText, test } from './app';
import { writeFileSync } from 'node:fs';

test('several learners share a device, each by picture or number', async ({ page }) => {
  await chooseFish(page);
  await page.getByRole('button', { name: 'Someone else' }).click();
  await page.getByRole('textbox', { name: 'Number' }).fill('7');
  await page.getByRole('button', { name: 'Take this number' }).click();
  await expect(page.getByText('T-07', { exact: true })).toBeVisible();
  await page.getByRole('button', { name: 'Someone else' }).click();
  await expect(page.getByRole('button', { name: 'T-07' })).toHaveAttribute('aria-pressed', 'true');
  await page.getByRole('button', { name: 'Fish' }).click();
  await page.reload();
  await expect(page.getByText('Fish', { exact: true })).toBeVisible();
});

test('a number that is none is refused with a sentence', async ({ page }) => {
  await goTo(page, '');
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
  await page.getByRole('button', { name: 'Fish' }).click();
  const { text } = await savedText(page, () =>
    page.getByRole('button', { name: 'Save this page as one file' }).click(),
  );
  const copy = info.outputPath('copy.html');
  writeFileSync(copy, text);
  await page.goto(`file://${copy}`);
  await expect(page.getByRole('heading', { level: 1, name: 'Jet small wells by hand' })).toBeVisible();
  await expect(page.getByRole('link', { name: 'Read the briefing' })).toBeVisible();
});
