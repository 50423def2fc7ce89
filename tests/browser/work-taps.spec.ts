// Work by taps on a phone: what a hand says that cannot be used, and what a reload keeps. Whole drills are in drills-taps.spec.
import { expect, test } from './app';
import { tapper } from './player/tapper';
import { atWork, button, jobTime, toTheHole } from './work';
import type { Locator, Page } from '@playwright/test';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

/** A tap of a finger. The system's Firefox makes no press of a touch on a desktop, so there it is a click. */
async function tap(target: Locator, force = false): Promise<void> {
  const touches = target.page().context().browser()?.browserType().name() === 'chromium';
  await (touches ? target.tap({ force }) : target.click({ force }));
}

async function hand(page: Page, group: string, name: string, times = 1): Promise<void> {
  const tab = page.getByRole('tab', { name: group, exact: true });
  if ((await tab.getAttribute('aria-selected')) !== 'true') await tap(tab);
  for (let i = 0; i < times; i++) await tap(button(page, name));
}

async function untilDone(page: Page): Promise<void> {
  await tap(page.getByRole('button', { name: /^Clock:/ }));
  await tap(button(page, 'Task done'));
  await expect(button(page, 'Stop waiting')).toHaveCount(0, { timeout: 30_000 });
}

test('a hand that cannot be used says why, where it is and aloud', async ({ page }) => {
  await toTheHole(page);
  await tap(page.getByRole('tab', { name: 'Stem', exact: true }));
  await expect(button(page, 'Add rod')).toHaveAttribute('aria-disabled', 'true');
  await tap(button(page, 'Add rod'), true);
  await expect(page.getByRole('status')).toHaveText(/This rod is not down yet\./);
  await expect(page.getByText('This rod is not down yet.').last()).toBeVisible();
});

test('a reload goes on where the work was', async ({ page }) => {
  await toTheHole(page);
  await hand(page, 'Pump', 'Prime');
  await untilDone(page);
  await hand(page, 'Pump', 'Open the throttle', 2);
  const time_s = await jobTime(page);
  expect(time_s).toBeGreaterThanOrEqual(60);
  await page.reload();
  await atWork(page);
  expect(await jobTime(page)).toBe(time_s);
  await tap(page.getByRole('tab', { name: 'Pump' }));
  await expect(page.getByRole('group', { name: 'Throttle' })).toContainText('50%');
});

const tab = (page: Page, name: string): Locator => page.getByRole('tab', { name, exact: true });
const front = (page: Page, name: string): Promise<void> =>
  expect(tab(page, name)).toHaveAttribute('aria-selected', 'true', { timeout: 2000 });

/** To the pump primed, with the throttle next and the stem after it; then the page's clock stands, and goes on by order. */
async function primed(page: Page): Promise<void> {
  await page.clock.install();
  await toTheHole(page, { lesson: 'round-the-loop' });
  await tap(button(page, 'Prime'));
  await tapper(page).seconds(150);
  await page.clock.pauseAt(await page.evaluate(() => Date.now() + 1000));
}

test("the coach's tab is marked, comes when the fingers rest, and leaves a chosen tab alone", async ({ page }) => {
  await primed(page);
  await tap(button(page, 'Open the throttle'));
  await expect(tab(page, 'Stem')).toHaveClass(/pointed/);
  await page.clock.runFor(1400);
  await tap(button(page, 'Open the throttle'));
  await page.clock.runFor(1400);
  // Any press counts, not of the throttle alone.
  await tap(page.getByRole('complementary', { name: 'Coaching' }).locator('.line'));
  await page.clock.runFor(1400);
  await front(page, 'Pump');
  await page.clock.runFor(200);
  await front(page, 'Stem');
  await expect(tab(page, 'Stem')).not.toHaveClass(/pointed/);
  // Chosen by hand it stays.
  await tap(tab(page, 'Pump'));
  await page.clock.runFor(5000);
  await front(page, 'Pump');
});

test("the coach's tab comes at once under an open panel, where no press can miss", async ({ page }) => {
  await primed(page);
  await tap(button(page, 'Open the throttle'));
  await front(page, 'Pump');
  await tap(page.getByRole('button', { name: /^Clock:/ }));
  await tap(button(page, 'Not now'));
  await front(page, 'Stem');
});

test('a tab chosen while the coach would bring another one stays in front', async ({ page }) => {
  await primed(page);
  await tap(button(page, 'Open the throttle'));
  await tap(tab(page, 'Book'));
  await page.clock.runFor(5000);
  await front(page, 'Book');
  await expect(tab(page, 'Stem')).toHaveClass(/pointed/);
});
