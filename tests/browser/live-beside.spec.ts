// Two runs on the same ground, side by side.
import { expect, test } from './app';
import { PLAIN, takeIn, toBeside, toTheHole } from './liveRun';
import { button } from './work';

test.describe('two runs side by side', () => {
  test('one timeline moves both, by time and by depth; the ground only on request; points and parting', async ({
    page,
  }) => {
    test.setTimeout(120_000);
    await page.goto(`/${PLAIN}#/`);
    await takeIn(page, 'careful', 'Careful run');
    await takeIn(page, 'green', 'Green run');
    await toBeside(page);
    await page.getByLabel('First run').selectOption({ label: 'Green run (T-01, The first rods)' });
    await page.getByLabel('Second run').selectOption({ label: 'Careful run (T-01, The first rods)' });
    await button(page, 'Lay them side by side').click();
    const parted = page.getByRole('region', { name: 'Where they parted' });
    await expect(parted).toContainText('at 0 s: primed the pump');
    await expect(parted).toContainText('put powder in: polymer');
    const first = page.getByRole('region', { name: 'First run: the hole and the pit as they stood' });
    const second = page.getByRole('region', { name: 'Second run: the hole and the pit as they stood' });
    const told = (side: typeof first) => side.getByRole('listitem');
    const slider = page.getByRole('slider', { name: 'Moment' });
    await slider.fill('120');
    await expect(page.getByRole('figure').filter({ has: first })).toContainText('at 10 min');
    await expect(page.getByRole('figure').filter({ has: second })).toContainText('at 10 min');
    await page.getByRole('radio', { name: 'depth of the hole' }).check();
    await page.getByRole('slider', { name: 'Depth' }).fill('60');
    await expect(page.getByRole('figure').filter({ has: first })).toContainText('at 33 min');
    await expect(page.getByRole('figure').filter({ has: second })).toContainText('at 38 min');
    await expect(told(first).filter({ hasText: /silty sand/ })).toHaveCount(0);
    await page.getByRole('checkbox', { name: 'Show the true ground' }).check();
    await expect(
      told(first)
        .filter({ hasText: /silty sand/ })
        .first(),
    ).toBeAttached();
    await expect(
      told(second)
        .filter({ hasText: /silty sand/ })
        .first(),
    ).toBeAttached();
    const points = page.getByRole('region', { name: 'Points' }).getByRole('table');
    await expect(points.getByRole('row', { name: /^In all/ })).toContainText('100 of 100 points');
    await page.getByRole('slider', { name: 'Depth' }).focus();
    await page.keyboard.press('ArrowRight');
    await expect(page.getByRole('status').or(page.locator('output')).first()).toHaveText('3.05 m');
  });

  test('a careful crew plays on the ground of a finished run, and on no other', async ({ page }) => {
    test.setTimeout(120_000);
    await page.goto(`/${PLAIN}#/`);
    await takeIn(page, 'green', 'Green run');
    await toBeside(page);
    await expect(page.getByLabel('Second run')).toHaveValue('careful');
    await button(page, 'Lay them side by side').click();
    await expect(page.getByRole('region', { name: 'Points' }).getByRole('row', { name: /^In all/ })).toContainText(
      '100',
    );
    await page.evaluate(() => (location.hash = '#/brief/slick-fluid'));
    await toTheHole(page);
    await page.evaluate(() => (location.hash = '#/beside'));
    await page.getByLabel('First run').selectOption({ index: 0 });
    await expect(page.getByText('No other run here stands on this ground.', { exact: false })).toBeVisible();
    await expect(button(page, 'Lay them side by side')).toBeDisabled();
  });
});
