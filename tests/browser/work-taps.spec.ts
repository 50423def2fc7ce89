// The whole of the first lesson by taps alone, on a phone.
import { expect, test } from './app';
import { atWork, button, drillTheLesson, jobTime, toTheHole, type Worker } from './work';
import type { Locator, Page } from '@playwright/test';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

/** A tap of a finger. The system's Firefox makes no press of a touch on a desktop, so there it is a click. */
async function tap(target: Locator, force = false): Promise<void> {
  const touches = target.page().context().browser()?.browserType().name() === 'chromium';
  await (touches ? target.tap({ force }) : target.click({ force }));
}

function tapper(page: Page): Worker {
  return {
    page,
    async hand(group, name, times = 1) {
      const tab = page.getByRole('tab', { name: group, exact: true });
      if ((await tab.getAttribute('aria-selected')) !== 'true') await tap(tab);
      for (let i = 0; name && i < times; i++) await tap(button(page, name));
    },
    async answer(name, times = 1) {
      for (let i = 0; i < times; i++) await tap(page.getByRole('dialog').getByRole('button', { name, exact: true }));
    },
    async choose(question, name) {
      await tap(page.getByRole('group', { name: question, exact: true }).getByRole('radio', { name, exact: true }));
    },
    async wait(what) {
      await tap(page.getByRole('button', { name: /^Clock:/ }));
      await tap(button(page, what));
      await expect(button(page, 'Stop waiting')).toHaveCount(0, { timeout: 30_000 });
    },
  };
}

test('the first lesson from prime to the debrief, by taps alone', async ({ page }) => {
  test.setTimeout(180_000);
  await toTheHole(page);
  await drillTheLesson(tapper(page), 3);
  expect(await jobTime(page)).toBeGreaterThan(600);
  await tap(button(page, 'Go to the debrief'));
  await expect(page.getByRole('heading', { level: 1, name: 'Looking back' })).toBeVisible();
});

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
  const worker = tapper(page);
  await worker.hand('Pump', 'Prime');
  await worker.wait('Task done');
  await worker.hand('Pump', 'Open the throttle', 2);
  const time_s = await jobTime(page);
  expect(time_s).toBeGreaterThanOrEqual(60);
  await page.reload();
  await atWork(page);
  expect(await jobTime(page)).toBe(time_s);
  await tap(page.getByRole('tab', { name: 'Pump' }));
  await expect(page.getByRole('group', { name: 'Throttle' })).toContainText('50%');
});
