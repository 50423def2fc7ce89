// The whole of the first lesson by keyboard alone: letter keys for the hands, Tab and Enter or the arrow keys in the questions.
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './app';
import { drillTheLesson, jobTime, toTheHole, type Worker } from './work';

test.use({ viewport: { width: 1280, height: 800 } });

const KEYS: Readonly<Record<string, string>> = {
  Prime: 'o',
  'Add powder': 'm',
  'Open the throttle': 'g',
  'Stop pump': 'q',
  Turn: 't',
  'More feed': 'f',
  'Less feed': 'd',
  'Lift 0.3 m': 'i',
  'Lower 0.3 m': 'k',
  'Add rod': 'a',
  'Catch sample': 'c',
  'Name sample': 'n',
  'Log a layer': 'l',
  'Stop drilling': 'e',
};

/** Goes on with Tab until the control has the focus. */
async function tabTo(page: Page, target: Locator): Promise<void> {
  for (let i = 0; i < 80; i++) {
    if (await target.evaluate((element) => element === document.activeElement)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error('Tab does not come to the control');
}

function typist(page: Page): Worker {
  const asked = page.getByRole('dialog');
  return {
    page,
    async hand(_group, name, times = 1) {
      for (let i = 0; name && i < times; i++) await page.keyboard.press(KEYS[name]!);
    },
    async answer(name, times = 1) {
      await tabTo(page, asked.getByRole('button', { name, exact: true }));
      for (let i = 0; i < times; i++) await page.keyboard.press('Enter');
    },
    async choose(question, name) {
      const group = asked.getByRole('group', { name: question, exact: true });
      const wanted = group.getByRole('radio', { name, exact: true });
      await tabTo(page, group.getByRole('radio').first());
      await page.keyboard.press('Space');
      for (let i = 0; i < 20 && !(await wanted.isChecked()); i++) await page.keyboard.press('ArrowDown');
      await expect(wanted).toBeChecked();
    },
    async wait(what) {
      await page.keyboard.press('w');
      await tabTo(page, asked.getByRole('button', { name: what, exact: true }));
      await page.keyboard.press('Enter');
      await expect(page.getByRole('button', { name: 'Stop waiting' })).toHaveCount(0, { timeout: 30_000 });
    },
  };
}

test('the first lesson from prime to the debrief, by keyboard alone', async ({ page }) => {
  test.setTimeout(180_000);
  await toTheHole(page);
  await drillTheLesson(typist(page), 3);
  await expect(page.getByRole('button', { name: 'Go to the debrief' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: 'Looking back' })).toBeVisible();
});

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
