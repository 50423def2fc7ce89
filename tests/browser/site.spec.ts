// The plan of the site: by taps, by keys, and set out there with the gear that was chosen.
import { AxeBuilder } from '@axe-core/playwright';
import { expect, test } from './app';
import { button } from './work';
import { toTheSite } from './well';

test('a spot is looked at, compared and chosen; afterwards it can be seen but not changed', async ({ page }) => {
  await toTheSite(page);
  await expect(page.getByText('Your local code decides.')).toBeVisible();
  await expect(page.getByRole('row')).toHaveCount(5);
  // The neighbours are at three hamlets, each with a level now and one in the driest month.
  await expect(page.getByRole('listitem').filter({ hasText: 'in the driest month' })).toHaveCount(3);
  // It cannot be pressed to any effect yet; pressed all the same it says why.
  await button(page, 'Dig here').click({ force: true });
  await expect(page.getByRole('status')).toHaveText(/Tap a spot/);
  await expect(page.getByRole('dialog', { name: 'Where to dig' })).toBeVisible();
  await page.getByRole('button', { name: /^Spot C,/ }).click();
  await expect(page.getByRole('heading', { name: 'Spot C' })).toBeVisible();
  await expect(page.getByText(/^Latrine: \d+ m to the [a-z-]+, its floor/)).toBeVisible();
  await page.getByRole('button', { name: /^Spot B,/ }).click();
  await button(page, 'Dig at spot B').click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(button(page, 'Site plan')).toContainText('spot B');

  await button(page, 'Dig the pit').click();
  await page.getByRole('radio', { name: '125 mm' }).check();
  await expect(page.getByText(/It leaves 31 mm all round a 63 mm pipe/)).toBeVisible();
  await page.getByRole('radio', { name: 'middle' }).check();
  await button(page, 'Dig it').click();
  await expect(page.getByText('Digging the pit')).toBeVisible();
  await button(page, 'Site plan').click();
  await page.getByRole('button', { name: /^Spot A,/ }).click();
  await expect(page.getByText('The work has begun at spot B.')).toBeVisible();
  await expect(page.getByRole('button', { name: /^Dig at/ })).toHaveCount(0);
});

test('by keys alone, on a small phone', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await toTheSite(page);
  const spot = page.getByRole('button', { name: /^Spot D,/ });
  for (let presses = 0; presses < 12; presses++) {
    if (await spot.evaluate((node) => node === document.activeElement)) break;
    await page.keyboard.press('Tab');
  }
  await expect(spot).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(spot).toHaveAttribute('aria-pressed', 'true');
  await button(page, 'Dig at spot D').press('Enter');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await page.getByRole('tab', { name: 'Pit' }).click();
  await expect(button(page, 'Site plan')).toContainText('spot D');
});

for (const theme of ['paper', 'night', 'sun'])
  test(`no fault that a machine can find, and nothing wider than the screen: ${theme}`, async ({ page }) => {
    await page.setViewportSize({ width: 390, height: 844 });
    await toTheSite(page);
    await page.evaluate((name) => (document.documentElement.dataset['theme'] = name), theme);
    await page.getByRole('button', { name: /^Spot B,/ }).click();
    const { violations } = await new AxeBuilder({ page }).include('main').analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes.map((node) => node.html)])).toEqual([]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
  });
