// How the screens of the class hold up: axe in every theme, nothing clipped at 320 px in long words or double text, large targets.
import { LAID, ownExercise } from './class';
import { clipped } from './clipped';
import { expect, test } from './app';
import { faults, ONE_IS_ENOUGH, THEMES } from './axe';

const OWN = LAID.id;
const PLACES = ['class', 'guide', `share/${OWN}`, `task/${OWN}`, 'task/exercise-none', 'exercise/B7/damaged'] as const;

for (const theme of THEMES) {
  test(`axe finds nothing on any screen of the class, theme ${theme}`, async ({ page, browserName }) => {
    test.skip(browserName !== 'chromium', ONE_IS_ENOUGH);
    test.setTimeout(120_000);
    await ownExercise(page, LAID);
    await page.goto('/#/');
    await page.getByRole('radio', { name: theme }).check();
    for (const place of PLACES) {
      await page.evaluate((hash) => (location.hash = hash), `#/${place}`);
      await expect(page.locator('main h1')).toBeVisible();
      await expect(page.getByText('Loading…')).toHaveCount(0);
      expect(await faults(page, theme), place).toEqual([]);
    }
  });
}

for (const [what, words, largest] of [
  ['in long, accented words', 'pseudo', false],
  ['at double text size', 'plain', true],
] as const) {
  test(`nothing of the class is clipped at 320 px ${what}`, async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 640 });
    await ownExercise(page, LAID);
    await page.goto('/#/');
    if (largest) await page.getByRole('radio', { name: 'Double' }).check();
    await page.goto(`/?words=${words}#/class`);
    for (const place of PLACES) {
      await page.evaluate((hash) => (location.hash = hash), `#/${place}`);
      await expect(page.locator('main h1')).toBeVisible();
      expect(await clipped(page), place).toEqual([]);
    }
  });
}

test('every button and field of the class is at least 48 px high on a phone', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await ownExercise(page, LAID);
  for (const place of PLACES) {
    await page.evaluate((hash) => (location.hash = hash), `#/${place}`);
    await expect(page.locator('main h1')).toBeVisible();
    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('button:not(.term), .button, summary, textarea, input, select')]
        .filter(
          (one) => one.checkVisibility() && !one.closest('.unseen, label') && !one.matches('.unseen, [type=radio]'),
        )
        .filter((one) => one.getBoundingClientRect().height < 47.5)
        .map((one) => `${one.textContent?.trim()} ${one.getBoundingClientRect().height}`),
    );
    expect(small, place).toEqual([]);
  }
});
