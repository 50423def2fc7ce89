// How the screens hold up: axe in every theme with text at 7:1, nothing clipped at 320 px in long words or double text, large targets.
import { answerAll, expect, finishedRunFile, goTo, lookBack, test } from './app';
import { faults, ONE_IS_ENOUGH, THEMES } from './axe';
import { clipped } from './clipped';

const PLACES = [
  '',
  'brief/first-rods',
  'brief/open-hole',
  'runs',
  'help',
  'words',
  'about',
  'debrief',
  'nowhere',
] as const;
for (const theme of THEMES) {
  test(`axe finds nothing on any screen, theme ${theme}`, async ({ page, browserName }) => {
    test.skip(browserName !== 'chromium', ONE_IS_ENOUGH);
    test.setTimeout(180_000);
    await goTo(page, '');
    expect(await faults(page, theme), 'start, nobody chosen').toEqual([]);
    await page.getByRole('radio', { name: theme }).check();
    await page.getByRole('button', { name: 'Fish' }).click();
    for (const place of PLACES) {
      await goTo(page, place);
      expect(await faults(page, theme), place).toEqual([]);
    }
    await goTo(page, 'brief/first-rods');
    await page.getByRole('button', { name: 'Go to the hole' }).click();
    expect(await faults(page, theme), 'briefing, cautions missing').toEqual([]);
    await lookBack(page);
    expect(await faults(page, theme), 'debrief, asking').toEqual([]);
    await answerAll(page);
    expect(await faults(page, theme), 'debrief, timeline').toEqual([]);
    for (const step of ['The ground', 'Points and reasons', 'What it cost']) {
      await page.getByRole('button', { name: `Next: ${step}` }).click();
      await expect(page.getByText('Loading…')).toHaveCount(0);
      expect(await faults(page, theme), `debrief, ${step}`).toEqual([]);
    }
    await page.keyboard.press('?');
    await expect(page.getByRole('dialog')).toBeVisible();
    expect(await faults(page, theme), 'help dialog').toEqual([]);
    await page.keyboard.press('Escape');
    await goTo(page, 'runs');
    await page.getByRole('button', { name: /^Rename/ }).click();
    await page
      .getByRole('button', { name: 'Open this text' })
      .or(page.getByText('Or paste the text of a run'))
      .first()
      .click();
    expect(await faults(page, theme), 'runs, open').toEqual([]);
  });
}

for (const [what, address, largest] of [
  ['in long, accented words', '/?words=pseudo', false],
  ['at double text size', '/', true],
] as const) {
  test(`nothing is clipped at 320 px ${what}`, async ({ page }) => {
    await page.setViewportSize({ width: 320, height: 640 });
    await page.goto(address);
    await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
    if (!largest) await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^⟦.*⟧$/);
    if (largest) await page.getByRole('radio', { name: 'Double' }).check();
    for (const place of PLACES) {
      await page.evaluate((hash) => (location.hash = hash), `#/${place}`);
      await expect(page.locator('main h1')).toBeVisible();
      expect(await clipped(page), place).toEqual([]);
    }
    await page.evaluate(() => (location.hash = '#/runs'));
    await page.getByRole('main').locator('summary').click();
    await page.getByRole('main').getByRole('textbox').fill(finishedRunFile());
    await page.getByRole('main').locator('form').getByRole('button').click();
    await expect(page.getByRole('heading', { level: 2, name: 'Careful run' })).toBeVisible();
    expect(await clipped(page), 'a saved run').toEqual([]);
    await page.getByRole('listitem').getByRole('button').first().click();
    await expect(page.locator('#step-heading')).toBeVisible();
    expect(await clipped(page), 'debrief, asking').toEqual([]);
    // The first answer of each question; a fold for own words is a group too, but holds no answer.
    const asked = page.getByRole('main').locator('fieldset');
    for (const question of await asked.all()) await question.getByRole('checkbox').first().check();
    await expect(page.getByRole('checkbox', { checked: true })).toHaveCount(await asked.count());
    await page.getByRole('main').locator('form').getByRole('button').click();
    for (const step of ['points', 'ground', 'whole run']) {
      await expect(page.locator('#step-heading')).toBeFocused();
      expect(await clipped(page), `debrief, ${step}`).toEqual([]);
      await page.keyboard.press('n');
    }
  });
}

test('every button and field is at least 48 px high on a phone, but a dotted word in its line', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  for (const place of PLACES) {
    await goTo(page, place);
    const small = await page.evaluate(() =>
      [...document.querySelectorAll<HTMLElement>('button:not(.term), .button, summary, textarea, input, nav a')]
        .filter(
          (element) =>
            element.checkVisibility() &&
            !element.closest('.unseen, label') &&
            !element.matches('.unseen, [type=radio]'),
        )
        .filter((element) => element.getBoundingClientRect().height < 47.5)
        .map((element) => `${element.textContent?.trim()} ${element.getBoundingClientRect().height}`),
    );
    expect(small, place).toEqual([]);
  }
});
