// The whole of the first lesson by taps alone, on a phone.
import { expect, test } from './app';
import { atWork, button, drillTheLesson, jobTime, toTheHole, type Worker } from './work';
import type { Page } from '@playwright/test';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

function tapper(page: Page): Worker {
  return {
    page,
    async hand(group, name, times = 1) {
      const tab = page.getByRole('tab', { name: group, exact: true });
      if ((await tab.getAttribute('aria-selected')) !== 'true') await tab.tap();
      for (let i = 0; name && i < times; i++) await button(page, name).tap();
    },
    async answer(name, times = 1) {
      for (let i = 0; i < times; i++) await page.getByRole('dialog').getByRole('button', { name, exact: true }).tap();
    },
    async choose(question, name) {
      await page.getByRole('group', { name: question, exact: true }).getByRole('radio', { name, exact: true }).tap();
    },
    async wait(what) {
      await page.getByRole('button', { name: /^Clock:/ }).tap();
      await button(page, what).tap();
      await expect(button(page, 'Stop waiting')).toHaveCount(0, { timeout: 30_000 });
    },
  };
}

test('the first lesson from prime to the debrief, by taps alone', async ({ page }) => {
  test.setTimeout(180_000);
  await toTheHole(page);
  await drillTheLesson(tapper(page), 3);
  expect(await jobTime(page)).toBeGreaterThan(600);
  await button(page, 'Go to the debrief').tap();
  await expect(page.getByRole('heading', { level: 1, name: 'Looking back' })).toBeVisible();
});

test('a hand that cannot be used says why, where it is and aloud', async ({ page }) => {
  await toTheHole(page);
  await expect(button(page, 'Add rod')).toHaveAttribute('aria-disabled', 'true');
  await button(page, 'Add rod').tap({ force: true });
  await expect(page.getByRole('status')).toHaveText(/This rod is not down yet\./);
  await expect(page.getByText('This rod is not down yet.').last()).toBeVisible();
});

test('a reload goes on where the work was', async ({ page }) => {
  await toTheHole(page);
  const worker = tapper(page);
  await worker.hand('Pump', 'Prime');
  await worker.wait('Task done');
  await worker.hand('Pump', 'Open the throttle', 2);
  const time_s = await jobTime(page);
  expect(time_s).toBeGreaterThanOrEqual(60);
  await page.reload();
  await atWork(page);
  expect(await jobTime(page)).toBe(time_s);
  await page.getByRole('tab', { name: 'Pump' }).tap();
  await expect(page.getByRole('group', { name: 'Throttle' })).toContainText('50%');
});
