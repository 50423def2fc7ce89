// A whole well by taps alone, on a phone, from choosing the site to the hand-over; and what is seen on the way.
import { expect, type Page } from '@playwright/test';
import type { ActionName } from '../../sim';
import { test } from './app';
import { workLesson } from './player/lesson';
import { tapper } from './player/tapper';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

const senses = (page: Page) => page.getByRole('region', { name: 'What the crew can tell' });
const openTab = (page: Page, name: string) =>
  expect(page.getByRole('tab', { name, exact: true })).toHaveAttribute('aria-selected', 'true');

test('a whole well by taps alone', async ({ page, browserName }) => {
  test.skip(browserName !== 'chromium', 'one browser is enough for the longest way');
  test.setTimeout(600_000);
  const seen = new Set<string>();
  const looks: Partial<Record<ActionName, () => Promise<void>>> = {
    // What there is to do next stands first, and its tab comes to the front with the work.
    stopDrilling: async () => {
      await expect(page.getByRole('tab').first()).toHaveText('Well');
      await openTab(page, 'Well');
    },
    runCasing: () => expect(senses(page)).toContainText('4 of 4 pieces'),
    pourPack: () => openTab(page, 'Fill'),
    develop: () => openTab(page, 'Water'),
    yieldTest: () => expect(senses(page)).toContainText(/\d\.\d\d m/),
    handOver: () => expect(page.getByRole('heading', { name: 'The work here is done.' })).toBeVisible(),
  };
  await workLesson(tapper(page), 'open-well', 2, async ({ action }) => {
    if (seen.has(action)) return;
    seen.add(action);
    await looks[action]?.();
  });
});
