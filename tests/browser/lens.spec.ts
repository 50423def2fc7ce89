// Looking closer on the work screen: the hand lens and the width of the hole, by tap on the smallest phone and by keys.
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './app';
import { button, toTheHole } from './work';

const status = (page: Page): Locator => page.getByRole('status').first();

test('by taps at 320 px: the lens comes and goes, the hole is drawn wider, the hands stay in reach', async ({
  page,
}) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await toTheHole(page);
  await button(page, 'Zoom, lens and follow').click();
  await button(page, 'Hand lens').click();
  await expect(button(page, 'Hand lens')).toHaveAttribute('aria-pressed', 'true');
  const told = page
    .getByRole('listitem')
    .filter({ hasText: /^Lens at the bit: true shape, \d+ times the depth scale/ });
  await expect(told).toHaveCount(1);
  await expect(status(page)).toContainText('Lens at the bit');
  await button(page, 'Hand lens at the wall').click();
  await expect(button(page, 'Hand lens at the wall')).toHaveAttribute('aria-pressed', 'true');
  await button(page, 'Draw the hole wider').click();
  await expect(status(page)).toContainText(/The hole is drawn \d+ times wider than true\./);
  // Everything of the drawing's own tools fits, and the hands are still there to press.
  for (const name of ['Closer', 'Farther', 'Draw the hole narrower', 'Hand lens']) {
    const box = (await button(page, name).boundingBox())!;
    expect(box.x, name).toBeGreaterThanOrEqual(0);
    expect(box.x + box.width, name).toBeLessThanOrEqual(320);
  }
  await button(page, 'Hand lens').click();
  await expect(told).toHaveCount(0);
  await expect(button(page, 'Hand lens at the wall')).toHaveCount(0);
  await button(page, 'Zoom, lens and follow').click();
  await page.getByRole('tab', { name: 'Stem' }).click();
  await button(page, 'Turn').click();
});

test('by keys: the lens, the wall, the width; the device keeps the width', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await toTheHole(page);
  await page.keyboard.press('*');
  await expect(button(page, 'Hand lens')).toHaveAttribute('aria-pressed', 'true');
  await page.keyboard.press('!');
  await expect(button(page, 'Hand lens at the wall')).toHaveAttribute('aria-pressed', 'true');
  await page.keyboard.press('*');
  await expect(button(page, 'Hand lens')).toHaveAttribute('aria-pressed', 'false');
  const width = async (key: '<' | '>'): Promise<number> => {
    await expect(status(page)).not.toContainText('drawn');
    await page.keyboard.press(key);
    await expect(status(page)).toContainText('drawn');
    return Number(/drawn (\d+) times/.exec(await status(page).innerText())![1]);
  };
  // How wide it can be is known with the first picture.
  const narrower = button(page, 'Draw the hole narrower');
  await expect(narrower).toBeEnabled();
  const wider = await width('>');
  await page.reload();
  await expect(page.getByRole('timer')).toBeVisible({ timeout: 20_000 });
  await expect(narrower).toBeEnabled({ timeout: 20_000 });
  expect(await width('<')).toBeLessThan(wider);
  expect(await page.evaluate(() => document.querySelectorAll('canvas').length)).toBe(1);
});
