// Work by keyboard alone: the clock, the letter keys, where the focus goes. Whole drills are in drills-keys.spec.
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './app';
import { jobTime, toTheHole } from './work';

test.use({ viewport: { width: 1280, height: 800 } });

/** Goes on with Tab until the control has the focus. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  for (let i = 0; i < 80; i++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('Tab does not come to the control');
}

test('the clock steps, runs, and stands again by keys', async ({ page }) => {
  await toTheHole(page);
  await page.keyboard.press('s');
  await page.keyboard.press('s');
  expect(await jobTime(page)).toBe(2);
  await page.keyboard.press('3');
  await expect(page.getByRole('button', { name: '20 times true speed' })).toHaveAttribute('aria-pressed', 'true');
  await expect.poll(() => jobTime(page)).toBeGreaterThan(10);
  await page.keyboard.press('p');
  const time_s = await jobTime(page);
  await page.keyboard.press('s');
  expect(await jobTime(page)).toBe(time_s + 1);
});

test('no letter is a key while a note is written, and Escape brings the focus back', async ({ page }) => {
  await toTheHole(page);
  const write = page.getByRole('button', { name: 'Write a note' });
  await tabTo(page, write);
  await page.keyboard.press('Enter');
  await tabTo(page, page.getByRole('textbox', { name: 'Note' }));
  await page.keyboard.type('take off the feed');
  await expect(page.getByRole('button', { name: 'Turn', exact: true })).toHaveAttribute('aria-pressed', 'false');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(write).toBeFocused();
});

test('every key that the help lists for the hole is on its control', async ({ page }) => {
  await toTheHole(page);
  const shown = await page
    .locator('[aria-keyshortcuts]')
    .evaluateAll((all) => all.map((one) => one.getAttribute('aria-keyshortcuts')));
  for (const key of [
    'p',
    's',
    'w',
    't',
    'f',
    'd',
    'u',
    'i',
    'j',
    'k',
    'a',
    'r',
    'x',
    'o',
    'g',
    'b',
    'q',
    'm',
    'c',
    'n',
    'l',
    'h',
  ])
    expect(shown, key).toContain(key);
});
