// The debrief in its steps: own view, timeline, ground, points, what it cost. The ground only from its own step on.
import { readRunFile } from '../../lessons';
import { answerAll, atTheHole, expect, goTo, lookBack, savedText, test } from './app';
import { faults } from './axe';

/** Kinds of ground and soil words that only the reveal may bring into the page. */
const GROUND = /topsoil|silt|fine sand|coarse sand/i;

test('before the asking is done nothing of the ground or the points is in the page', async ({ page }) => {
  await lookBack(page);
  await expect(page.getByRole('heading', { level: 2, name: 'Your own view' })).toBeVisible();
  expect(await page.locator('main').innerHTML()).not.toMatch(GROUND);
  expect(await page.locator('main').ariaSnapshot()).not.toMatch(/of 100 points/);
  for (const name of ['The whole run', 'The ground', 'Points and reasons', 'What it cost']) {
    await expect(page.getByRole('button', { name })).toBeDisabled();
  }
  await page.keyboard.press('n');
  await expect(page.getByRole('heading', { level: 2, name: 'Your own view' })).toBeVisible();
});

test('an open question keeps the next step closed and takes the focus', async ({ page }) => {
  await lookBack(page);
  await page.getByRole('button', { name: 'That is my view' }).click();
  await expect(page.locator('main').getByText('3 questions are still open.')).toBeVisible();
  await expect(page.getByRole('checkbox').first()).toBeFocused();
});

test('the timeline is read by keys and the drawing follows; nothing of the ground is in the page before its own step', async ({
  page,
}) => {
  await lookBack(page);
  await answerAll(page);
  const told = page.getByRole('region', { name: 'The hole and the pit as they stood' });
  const slider = page.getByRole('slider', { name: 'Moment in the run' });
  await expect(slider).toBeVisible();
  await expect(told).toContainText('Stem: 1 rod', { timeout: 30_000 });
  await slider.focus();
  await page.keyboard.press('End');
  await expect(told).toContainText('Stem: 3 rods', { timeout: 30_000 });
  await expect(page.getByText(/^At 43 min/)).toBeVisible();
  await expect(told).not.toContainText('Lens at the bit');
  await page.getByRole('button', { name: 'Hand lens' }).click();
  await expect(told).toContainText('Lens at the bit');
  await slider.focus();
  for (let n = 0; n < 5; n++) await page.keyboard.press('PageDown');
  await expect(told).not.toContainText('Stem: 3 rods', { timeout: 30_000 });
  expect(await page.locator('html').innerHTML()).not.toMatch(GROUND);
  expect(await page.locator('body').ariaSnapshot()).not.toMatch(GROUND);
  expect(await faults(page)).toEqual([]);
});

test('the ground comes in its own step, points with reasons after it, what it cost last', async ({ page }) => {
  await lookBack(page);
  await answerAll(page);
  await page.keyboard.press('n');
  await expect(page.getByRole('heading', { level: 2, name: 'The ground' })).toBeFocused();
  await expect(page.locator('main')).toContainText(GROUND);
  await page.getByRole('button', { name: 'Next: Points and reasons' }).click();
  await expect(page.getByText('of 100 points', { exact: false })).toBeVisible();
  await expect(page.getByRole('heading', { level: 3, name: 'The hole' })).toBeVisible();
  await expect(page.getByText('The hole was clean at each of', { exact: false })).toBeVisible();
  await page.keyboard.press('n');
  await expect(page.getByRole('heading', { level: 2, name: 'What it cost' })).toBeFocused();
  await page.keyboard.press('p');
  await expect(page.getByRole('heading', { level: 2, name: 'Points and reasons' })).toBeFocused();
});

test('answers are kept with the run and in its file', async ({ page }) => {
  await lookBack(page);
  await page.getByText('In your own words, if you like').first().click();
  await page.getByRole('textbox').first().fill('It looked clean to me.');
  await answerAll(page);
  await page.reload();
  await expect(page.getByRole('heading', { level: 2, name: 'The whole run' })).toBeVisible();
  const { text } = await savedText(page, () => page.getByRole('button', { name: 'Save the run to a file' }).click());
  const read = readRunFile(text);
  if (!read.ok) throw new Error(read.problem);
  expect(Object.values(read.file.answers ?? {})).toContain('It looked clean to me.');
  await goTo(page, 'runs');
  await expect(page.getByText('passed, 100 points')).toBeVisible();
});

test('the same ground again is the same, new ground is another', async ({ page }) => {
  await lookBack(page);
  await answerAll(page);
  await page.getByRole('button', { name: 'Again on the same ground' }).click();
  await atTheHole(page);
  await goTo(page, 'runs');
  const save = page.getByRole('button', { name: /^Save The first rods.* to a file$/ }).first();
  const same = JSON.parse((await savedText(page, () => save.click())).text) as { seed: number };
  expect(same.seed).toBe(7);

  await page.getByRole('button', { name: 'Look back on Careful run' }).click();
  await page.getByRole('button', { name: 'Again on new ground' }).click();
  await atTheHole(page);
  await goTo(page, 'runs');
  const other = JSON.parse((await savedText(page, () => save.click())).text) as { seed: number };
  expect(other.seed).not.toBe(7);
});

test('with no run there is a sentence and a way back', async ({ page }) => {
  await goTo(page, 'debrief');
  await expect(page.getByRole('heading', { level: 1, name: 'No run to look back on' })).toBeVisible();
  await page.getByRole('link', { name: 'To the start' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Jet small wells by hand' })).toBeFocused();
});
