// The briefing: rubric before the run, cautions first, the ground by number.
import { readRunFile } from '../../lessons';
import { beginRun, chooseFish, expect, goTo, savedText, test } from './app';
import { readCautions } from './cautions';

test('the rubric is shown before the run and its points sum to 100', async ({ page }) => {
  await goTo(page, 'brief/first-rods');
  const points = await page.getByRole('table').getByRole('cell').filter({ hasText: /^\d+$/ }).allTextContents();
  expect(points.length).toBeGreaterThan(5);
  expect(points.reduce((sum, text) => sum + Number(text), 0)).toBe(100);
  await expect(page.getByText('70 of 100 points pass.')).toBeVisible();
});

test('no run begins before the cautions are read', async ({ page }) => {
  await chooseFish(page);
  await goTo(page, 'brief/first-rods');
  await page.getByRole('button', { name: 'Go to the hole' }).click();
  await expect(page.getByRole('region', { name: 'Cautions' })).toBeFocused();
  await expect(page.getByRole('region', { name: 'Cautions' }).getByText('Read the cautions first')).toBeVisible();
  await expect(page).toHaveURL(/#\/brief\/first-rods$/);
});

test('a number that is no ground is refused', async ({ page }) => {
  await goTo(page, 'brief/first-rods');
  await readCautions(page);
  await page.getByRole('radio', { name: 'Ground with a number I type' }).check();
  const field = page.getByRole('textbox', { name: 'Ground number' });
  for (const wrong of ['4294967296', '-1', '1.5', 'deep']) {
    await field.fill(wrong);
    await page.getByRole('button', { name: 'Go to the hole' }).click();
    await expect(field).toBeFocused();
    await expect(page.getByText('Type a whole number from 0')).toBeVisible();
  }
});

test('the run stands on the typed ground, with the cautions in its log', async ({ page }) => {
  await beginRun(page);
  await goTo(page, 'runs');
  const { name, text } = await savedText(page, () => page.getByRole('button', { name: /^Save .* to a file$/ }).click());
  expect(name).toMatch(/^first-rods-fish-[\d-]+\.json$/);
  const read = readRunFile(text);
  if (!read.ok) throw new Error(read.problem);
  expect(read.file.seed).toBe(7);
  expect(read.file.who).toBe('fish');
  expect(read.file.log.filter(([, action]) => action === 'readCaution').length).toBe(6);
});

test('a lesson that is not here is said to be so', async ({ page }) => {
  await goTo(page, 'brief/no-such-lesson');
  await expect(page.getByRole('heading', { level: 1 })).toHaveText('This lesson is not here');
});
