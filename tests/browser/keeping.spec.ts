// What the device keeps: a reload goes on where it was; without storage the app says so and files still work.
import { atTheHole, beginRun, chooseFish, expect, goTo, savedText, test } from './app';
import type { Page } from '@playwright/test';
import { readCautions } from './cautions';

/** Primes the pump and waits until it is done, at the pace of the clock's fastest. */
async function prime(page: Page): Promise<void> {
  await page.keyboard.press('o');
  await page.keyboard.press('4');
  await expect(page.getByRole('main').getByText('The pump holds water.').first()).toBeAttached({ timeout: 30_000 });
  await page.keyboard.press('p');
}

async function savedLog(page: Page): Promise<{ log: [number, string, unknown][]; ticks: number; hash: string }> {
  await goTo(page, 'runs');
  const { text } = await savedText(page, () =>
    page
      .getByRole('button', { name: /^Save .* to a file$/ })
      .first()
      .click(),
  );
  return JSON.parse(text) as { log: [number, string, unknown][]; ticks: number; hash: string };
}

test('a reload goes on where it was, to the same state', async ({ page }) => {
  await beginRun(page);
  await prime(page);
  const before = await savedLog(page);
  expect(before.ticks).toBeGreaterThan(30);
  expect(before.log.some(([, action]) => action === 'prime')).toBe(true);
  await page.reload();
  await goTo(page, 'work');
  await atTheHole(page);
  expect(await savedLog(page)).toEqual(before);
  await goTo(page, '');
  await expect(page.getByRole('heading', { name: 'Go on where you were' })).toBeVisible();
  await page.getByRole('button', { name: 'Go on' }).click();
  await atTheHole(page);
});

test('a reload at the hole comes back to the hole', async ({ page }) => {
  await beginRun(page);
  await page.reload();
  await atTheHole(page);
});

const BROKEN = {
  missing: () => Object.defineProperty(window, 'indexedDB', { value: undefined }),
  blocked: () =>
    Object.defineProperty(window, 'indexedDB', {
      value: {
        open() {
          throw new DOMException('no', 'SecurityError');
        },
      },
    }),
  full: () => {
    IDBObjectStore.prototype.put = () => {
      throw new DOMException('no room', 'QuotaExceededError');
    };
  },
};
const WARNINGS = {
  missing: 'This browser keeps nothing.',
  blocked: 'This browser does not let the page keep runs.',
  full: 'This device is full.',
};

for (const kind of ['missing', 'blocked', 'full'] as const) {
  test(`with storage ${kind} the app warns, plays on, and saves to a file`, async ({ page }) => {
    await page.addInitScript(BROKEN[kind]);
    await chooseFish(page);
    await expect(page.getByRole('alert').filter({ hasText: WARNINGS[kind] })).toBeVisible();
    await goTo(page, 'brief/first-rods');
    await readCautions(page);
    await page.getByRole('button', { name: 'Go to the hole' }).click();
    await atTheHole(page);
    await expect(page.getByRole('alert').filter({ hasText: WARNINGS[kind] })).toBeVisible();
    const kept = await savedLog(page);
    expect(kept.log.length).toBe(6);
    await page.getByRole('button', { name: /^Go on with/ }).click();
    await atTheHole(page);
  });
}
