// A practice: made to order in the briefing, kept without points, looked back on without points.
import type { Page } from '@playwright/test';
import { LESSONS, lessonOf, playCrew, practiceFor, readRunFile, replayFile, writeRunFile } from '../../lessons';
import { chooseFish, expect, goTo, pasteRun, savedText, test } from './app';
import { faults } from './axe';
import { atWork, button } from './work';
import { readCautions } from './cautions';

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
  await readCautions(page);
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
  await readCautions(page);
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
  for (const name of ['The whole run', 'The ground', 'How it ended']) {
    await expect(page.getByRole('heading', { level: 2, name })).toBeVisible();
    await page.keyboard.press('n');
  }
  await expect(page.getByText('of 6 m asked')).toBeVisible();
  expect(await page.locator('main').ariaSnapshot()).not.toMatch(/points|What it cost/i);
  await goTo(page, 'runs');
  await expect(page.getByText('practice, without points')).toBeVisible();
  await goTo(page, '');
  await expect(page.getByText('not tried yet')).toHaveCount(LESSONS.length);
});

test('axe finds nothing in the debrief of a practice, and nothing is wider than a small phone', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await chooseFish(page);
  await pasteRun(page, practiceFile());
  await page.getByRole('button', { name: 'Look back on Steady hole' }).click();
  await answerAll(page);
  for (const step of ['The whole run', 'The ground', 'How it ended']) {
    await expect(page.getByRole('heading', { level: 2, name: step })).toBeVisible();
    await expect(page.getByText('Loading…')).toHaveCount(0);
    expect(await faults(page), step).toEqual([]);
    const tooWide_px = await page.evaluate(() => {
      const { scrollWidth, clientWidth } = document.documentElement;
      return scrollWidth - clientWidth;
    });
    expect(tooWide_px, step).toBe(0);
    await page.keyboard.press('n');
  }
});

test('on a bare site the pit is dug and filled by taps, bentonite put in, and a hole given up for another', async ({
  page,
}) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await page.goto('/?renderer=canvas#/brief/open-hole');
  await page.getByRole('radio', { name: /^Bare/ }).check();
  await readCautions(page);
  await page.getByRole('button', { name: 'Go to the hole' }).click();
  await atWork(page);
  const told = page.getByRole('region', { name: 'The ground, the hole and the pit' });
  await expect(told).not.toContainText('Settling chamber');
  const wait = async (): Promise<void> => {
    await page.getByRole('button', { name: /^Clock/ }).click();
    await button(page, 'Task done').click();
    await expect(page.getByText('2 hands free')).toBeVisible({ timeout: 30_000 });
  };
  await page.getByRole('tab', { name: 'Pit' }).click();
  await page.getByRole('button', { name: 'Dig the pit' }).click();
  await button(page, '300 L').first().click();
  await button(page, 'Dig it').click();
  await wait();
  await expect(page.getByRole('button', { name: 'Dig the pit' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Fill the pit' }).click();
  await button(page, 'Fill it').click();
  await wait();
  await expect(told).toContainText('Settling chamber');
  await page.getByRole('tab', { name: 'Fluid' }).click();
  await page.getByRole('button', { name: 'Add powder' }).click();
  await page.getByRole('radio', { name: 'bentonite' }).check();
  await expect(page.getByText('100 kg on hand')).toBeVisible();
  await button(page, '25 kg').click();
  await button(page, 'Put it in').click();
  await wait();
  await page.getByRole('button', { name: 'Menu' }).click();
  await button(page, 'Give up this hole').click();
  await page.getByRole('radio', { name: 'fill it in, begin another' }).check();
  await button(page, 'Give up').click();
  await wait();
  await expect(page.getByText('Hole 2', { exact: true })).toBeVisible();
});
