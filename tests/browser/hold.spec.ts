// Hands that are held: by mouse, finger and key, kept by the lock, let go by all that must let go.
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './app';
import { faults } from './axe';
import { button, toTheHole } from './work';

const depth_m = async (page: Page): Promise<number> =>
  Number(/([\d.]+) m/.exec(await page.getByRole('group', { name: 'Lift', exact: true }).innerText())![1]);

const open_percent = async (page: Page): Promise<number> =>
  Number(/(\d+)\s?%/.exec(await page.getByRole('group', { name: 'Throttle', exact: true }).innerText())![1]);

/** The pump primed, the clock standing; the bit hangs in the started hole, so there is something to lift. */
async function ready(page: Page): Promise<void> {
  await toTheHole(page);
  await page.keyboard.press('o');
  await page.keyboard.press('4');
  await expect(page.getByRole('button', { name: /^Pump/ })).toContainText('holds water');
  await page.keyboard.press('p');
}

async function holdDown(page: Page, target: Locator): Promise<void> {
  const box = (await target.boundingBox())!;
  await page.mouse.move(box.x + box.width / 2, box.y + box.height / 2);
  await page.mouse.down();
}

test('a held throttle opens all the way; let go it stays', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await ready(page);
  const more = button(page, 'Open the throttle');
  await more.click();
  expect(await open_percent(page), 'a tap is one step').toBe(25);
  await holdDown(page, more);
  await expect.poll(() => open_percent(page)).toBe(100);
  await expect(page.getByText('Open the throttle: held.', { exact: true })).toHaveCount(0);
  await page.mouse.up();
  expect(await open_percent(page), 'the end of a hold is no tap').toBe(100);
  await expect(page.getByText('This is the most.')).toHaveCount(0);

  await button(page, 'Close the throttle a little').focus();
  await page.keyboard.down('Space');
  await expect.poll(() => open_percent(page)).toBeLessThanOrEqual(50);
  await page.keyboard.up('Space');
  await expect(page.getByText(/^Close the throttle.*held/)).toHaveCount(0);
  const at = await open_percent(page);
  await page.keyboard.press('s');
  expect(await open_percent(page)).toBe(at);
});

test('a lift goes on while its key is down, and by the lock without it', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await ready(page);
  const from_m = await depth_m(page);
  await page.keyboard.press('2');
  await page.keyboard.down('u');
  await expect(page.getByText('Lift: held.', { exact: true }).first()).toBeVisible();
  await expect.poll(() => depth_m(page)).toBeLessThanOrEqual(from_m - 0.2);

  await page.keyboard.up('u');
  await expect(page.getByText('Lift: held.', { exact: true })).toHaveCount(0);
  await page.keyboard.press('p');

  const lock = button(page, 'Lower: keep it held');
  await lock.click();
  await expect(lock).toHaveAttribute('aria-pressed', 'true');
  await button(page, 'Lower 0.1 m').click();
  await expect(page.getByRole('status')).toHaveText(/Lower: locked\. A second press or Escape lets go\./);
  expect(await faults(page), 'held and locked').toEqual([]);
  await page.keyboard.press('Escape');
  await expect(lock).toHaveAttribute('aria-pressed', 'false');

  // The step is not over while the clock stands; the lock closes all the same.
  await lock.click();
  await button(page, 'Lower 0.1 m').click({ force: true });
  await expect(lock).toHaveAttribute('aria-pressed', 'true');
  await page.keyboard.press('3');
  // The bottom is the end of the way: it lets go by itself and says why.
  await expect(lock).toHaveAttribute('aria-pressed', 'false');
  await expect(page.getByText('The bit stands on the bottom.').first()).toBeVisible();
});

test.describe('on a phone', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

  test('a finger holds, the lock keeps, a question lets go', async ({ page, browserName }) => {
    await ready(page);
    await page.getByRole('tab', { name: 'Stem', exact: true }).click();
    const worked = button(page, 'Work stem');
    const lock = button(page, 'Work stem: keep it held');
    await lock.click();
    await worked.click();
    await expect(lock).toHaveAttribute('aria-pressed', 'true');
    await expect(page.getByText('Work stem: held.', { exact: true }).first()).toBeVisible();
    await page.getByRole('tab', { name: 'Pump', exact: true }).click();
    await button(page, 'Let go').click();
    await expect(page.getByText('Work stem: held.', { exact: true })).toHaveCount(0);

    if (browserName === 'chromium') {
      // A real touch: down, held, up.
      const box = (await button(page, 'Open the throttle').boundingBox())!;
      const touch = await page.context().newCDPSession(page);
      const point = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
      await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: [point] });
      await expect.poll(() => open_percent(page)).toBeGreaterThanOrEqual(50);
      await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
      await expect(page.getByText('Open the throttle: held.', { exact: true })).toHaveCount(0);
    }

    await page.getByRole('tab', { name: 'Stem', exact: true }).click();
    await lock.click();
    await expect(lock).toHaveAttribute('aria-pressed', 'true');
    await button(page, 'Menu').click();
    await page.keyboard.press('Escape');
    await expect(lock).toHaveAttribute('aria-pressed', 'false');
  });
});
