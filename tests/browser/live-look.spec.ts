// How the screens of a steered run hold up: axe in every theme, nothing clipped at 320 px in long words.
import { exerciseFragment } from '../../lessons';
import { expect, test } from './app';
import { faults, ONE_IS_ENOUGH, THEMES } from './axe';
import { clipped } from './clipped';
import { LIVE, PLAIN, runFile, sitDown, steer, takeIn, toBeside, toTheExercise, toTheHole } from './liveRun';
import { atWork, button } from './work';

for (const theme of THEMES) {
  test(`axe finds nothing on the screens of a steered run, theme ${theme}`, async ({ page, browserName }) => {
    test.skip(browserName !== 'chromium', ONE_IS_ENOUGH);
    test.setTimeout(240_000);
    await toTheExercise(page, '/', theme);
    await sitDown(page, 'Four', 'Never: we change when we want');
    expect(await faults(page, theme), 'seats').toEqual([]);
    await toTheHole(page);
    expect(await faults(page, theme), 'turns').toEqual([]);
    const child = await steer(page);
    await child.getByText('The drawing is being made').waitFor({ state: 'detached' });
    expect(await faults(child, theme), 'steering window').toEqual([]);
    await button(child, 'Stop the clock and take the hands away').click();
    await expect(page.getByRole('dialog')).toBeVisible();
    expect(await faults(page, theme), 'frozen').toEqual([]);
    await button(child, 'Let them go on').click();
    await button(child, 'View for the wall').click();
    await expect(button(page, 'Back to the hands')).toBeVisible();
    expect(await faults(page, theme), 'wall').toEqual([]);
    await child.close();
    await takeIn(page, 'green', 'Green run');
    await toBeside(page);
    await button(page, 'Lay them side by side').click();
    await expect(page.getByRole('region', { name: 'Points' })).toBeVisible({ timeout: 30_000 });
    expect(await faults(page, theme), 'side by side').toEqual([]);
  });
}

test('nothing is clipped at 320 px in long, accented words', async ({ page }) => {
  test.setTimeout(120_000);
  await page.setViewportSize({ width: 320, height: 640 });
  await page.goto(`/${PLAIN}&words=pseudo#/`);
  await page.locator('main ul li button').first().click();
  await page.evaluate((hash) => (location.hash = hash), exerciseFragment(LIVE, 'ABCD'));
  await expect(page.locator('main h1')).toHaveText('Rods with faults');
  await page.locator('input[type=radio][value="4"]').check();
  expect(await clipped(page), 'seats').toEqual([]);
  const hazards = page.locator('#hazards');
  for (let i = 0; i < 12 && (await hazards.getByRole('button').count()) > 0; i++) {
    const way = hazards.getByRole('button').last();
    if (!(await way.isVisible())) break;
    await way.click();
  }
  await page.locator('#to-the-hole').click();
  await atWork(page);
  // The coach's folded line below is meant to be cut.
  expect(await clipped(page, '.above'), 'turns').toEqual([]);
  await page.locator('header .menu').click();
  const [child] = await Promise.all([
    page.waitForEvent('popup'),
    page.locator('[role=dialog] section > button[aria-describedby]').first().click(),
  ]);
  await child.setViewportSize({ width: 320, height: 640 });
  await expect(child.locator('.freeze')).toBeVisible({ timeout: 30_000 });
  expect(await clipped(child), 'steering window').toEqual([]);
  await child.locator('.freeze').click();
  await expect(page.locator('dialog[open]')).toBeVisible();
  expect(await clipped(page, 'dialog[open]'), 'frozen').toEqual([]);
  await child.locator('.freeze').click();
  await child.locator('.views button').first().click();
  await expect(page.locator('main.wall')).toBeVisible();
  expect(await clipped(page), 'wall').toEqual([]);
  await child.close();
  await page.evaluate(() => (location.hash = '#/runs'));
  await page.getByRole('main').locator('summary').click();
  await page.getByRole('main').getByRole('textbox').fill(runFile('green', 'Green run'));
  await page.getByRole('main').locator('form').getByRole('button').click();
  await expect(page.getByRole('heading', { level: 2, name: 'Green run' })).toBeVisible();
  await page.evaluate(() => (location.hash = '#/beside'));
  await page.locator('form button.main').click();
  await expect(page.locator('table')).toBeVisible({ timeout: 30_000 });
  expect(await clipped(page), 'side by side').toEqual([]);
});
