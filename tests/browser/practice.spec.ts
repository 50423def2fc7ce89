// A practice: made to order in the briefing, kept without points, looked back on without points.
import type { Page } from '@playwright/test';
import { lessonOf, playCrew, practiceFor, readRunFile, replayFile, writeRunFile } from '../../lessons';
import { chooseFish, expect, goTo, pasteRun, savedText, test } from './app';

let finished: string | null = null;

/** The text of a run file: a steady crew's whole hole of 6 m in an old channel. */
function practiceFile(): string {
  const practice = practiceFor('open-hole', { depth_m: 6, setting: 'old-channel' })!;
  finished ??= writeRunFile(playCrew(practice, 'steady', 3), practice, { who: 'fish', name: 'Steady hole' });
  return finished;
}

async function answerAll(page: Page): Promise<void> {
  await page.getByRole('checkbox').first().check();
  await page.getByRole('button', { name: 'That is my view' }).click();
}

test('the start page offers the practice, which has no rubric, and keeps what was asked of it', async ({ page }) => {
  await chooseFish(page);
  await page.getByRole('link', { name: 'A whole hole' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'A whole hole' })).toBeVisible();
  await expect(page.getByRole('heading', { name: 'How points are given' })).toHaveCount(0);
  await page.getByRole('textbox', { name: 'How deep, in metres' }).fill('9');
  await page.getByRole('radio', { name: /^Delta/ }).check();
  await expect(page.getByText('Drill a hole 9 m deep.')).toBeVisible();
  await page.reload();
  await expect(page.getByRole('textbox', { name: 'How deep, in metres' })).toHaveValue('9');
  await expect(page.getByRole('radio', { name: /^Delta/ })).toBeChecked();
});

test('a depth that cannot be asked takes the focus and begins no run', async ({ page }) => {
  await goTo(page, 'brief/open-hole');
  await page.getByRole('button', { name: 'I have read these cautions' }).click();
  const field = page.getByRole('textbox', { name: 'How deep, in metres' });
  for (const wrong of ['', '2', '41', 'deep']) {
    await field.fill(wrong);
    await page.getByRole('button', { name: 'Go to the hole' }).click();
    await expect(field).toBeFocused();
    await expect(page.getByText('Type a depth from 3 to 40 m')).toBeVisible();
  }
  await expect(page).toHaveURL(/#\/brief\/open-hole$/);
});

test('the run stands on what was asked, also after a reload, and its file says so', async ({ page }) => {
  await chooseFish(page);
  await goTo(page, 'brief/open-hole');
  await page.getByRole('textbox', { name: 'How deep, in metres' }).fill('7,5');
  await page.getByRole('radio', { name: /^Coast/ }).check();
  await page.getByRole('button', { name: 'I have read these cautions' }).click();
  await page.getByRole('radio', { name: 'Ground with a number I type' }).check();
  await page.getByRole('textbox', { name: 'Ground number' }).fill('5');
  await page.getByRole('button', { name: 'Go to the hole' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'A whole hole' })).toBeVisible({ timeout: 20_000 });
  await page.reload();
  await expect(page.getByRole('heading', { level: 1, name: 'A whole hole' })).toBeVisible({ timeout: 20_000 });
  await goTo(page, 'runs');
  const { text } = await savedText(page, () => page.getByRole('button', { name: /^Save .* to a file$/ }).click());
  const read = readRunFile(text);
  if (!read.ok) throw new Error(read.problem);
  expect(read.file.asked).toEqual({ depth_m: 7.5, setting: 'coastal' });
  expect(read.file.claimed.score).toBeNull();
  expect(lessonOf(read.file)!.end.depth_m).toBe(7.5);
  expect(replayFile(read.file).reproduced).toBe(true);
});

test('a finished practice is looked back on without points and leaves no standing', async ({ page }) => {
  await chooseFish(page);
  await pasteRun(page, practiceFile());
  await page.getByRole('button', { name: 'Look back on Steady hole' }).click();
  await answerAll(page);
  await expect(page.getByRole('heading', { level: 2, name: 'How it ended' })).toBeVisible();
  await expect(page.getByText('of 6 m asked')).toBeVisible();
  expect(await page.locator('main').ariaSnapshot()).not.toMatch(/points/i);
  await page.keyboard.press('n');
  await expect(page.getByRole('heading', { level: 2, name: 'The ground' })).toBeVisible();
  await goTo(page, 'runs');
  await expect(page.getByText('practice, without points')).toBeVisible();
  await goTo(page, '');
  await expect(page.getByText('not tried yet')).toBeVisible();
});
