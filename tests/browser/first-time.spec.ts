// Someone new, from the empty device to the first turning bit, by taps on a phone: how many taps, how many words, how long.
// The pace is ASSUMED: 1.5 s to find and tap a thing, 250 words a minute for what must be read on the way. No clock is
// waited for but the device's own, which is measured apart.
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './app';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

const TAP_s = 1.5;
const WORDS_PER_s = 250 / 60;
const LIMIT_s = 60;

/** Counts what a newcomer does. */
class Newcomer {
  taps = 0;
  words = 0;
  longest = 0;

  async read(what: Locator): Promise<void> {
    const text = await what.innerText();
    const words = text.split(/\s+/).filter((word) => /\w/.test(word)).length;
    this.words += words;
    this.longest = Math.max(this.longest, words);
  }

  async tap(what: Locator): Promise<void> {
    await this.read(what);
    await this.press(what);
  }

  /** A tap on a button that was read before. */
  async press(what: Locator): Promise<void> {
    const touches = what.page().context().browser()?.browserType().name() === 'chromium';
    await (touches ? what.tap() : what.click());
    this.taps++;
  }

  get time_s(): number {
    return this.taps * TAP_s + this.words / WORDS_PER_s;
  }
}

/** The hand with the coach's mark; it must be in sight, so that nobody has to look for it. */
async function marked(page: Page): Promise<Locator> {
  const hand = page.locator('.cell.pointed');
  await expect(hand).toHaveCount(1);
  await expect(hand).toBeInViewport({ ratio: 0.9 });
  return hand;
}

test('someone new turns the first bit within a minute, and reads no paragraph', async ({ page }) => {
  const person = new Newcomer();
  await page.goto('/?renderer=canvas#/');
  await person.read(page.getByRole('heading', { level: 1 }));
  await person.read(page.getByRole('heading', { name: 'Who is learning?' }));
  await person.tap(page.getByRole('button', { name: 'Boat' }));
  await person.read(page.locator('#next-heading'));
  await person.tap(page.getByRole('link', { name: 'Begin', exact: true }));

  await expect(page).toHaveURL(/#\/brief\/round-the-loop$/);
  await person.read(page.getByRole('heading', { level: 1 }));
  await person.read(page.locator('p.job'));
  const caution = page.getByRole('region', { name: /^Cautions/ });
  const next = caution.getByRole('button', { name: 'Next caution' });
  const read = caution.getByRole('button', { name: 'I have read these cautions' });
  await expect(next).toBeVisible();
  await person.read(next);
  while (await next.isVisible()) {
    await person.read(caution.locator('dl'));
    await person.press(next);
  }
  await person.read(caution.locator('dl'));
  await person.tap(read);
  await person.tap(page.getByRole('button', { name: 'Go to the hole' }));

  const coach = page.getByRole('complementary', { name: 'Coaching' }).locator('.line');
  await expect(coach).toHaveText('The pump is dry. Prime it.', { timeout: 20_000 });
  await person.read(coach);
  await person.tap((await marked(page)).getByRole('button', { name: 'Prime' }));
  // A wait ends early where something happens that a crew would turn round for.
  const wait = page.getByRole('button', { name: 'Wait until done' });
  for (await expect(wait).toBeVisible(); await wait.isVisible(); await page.waitForTimeout(1500))
    await person.tap(wait);
  await expect(coach).toHaveText('The pump holds water. Open the throttle.');
  await person.read(coach);
  await person.tap((await marked(page)).getByRole('button', { name: 'Open the throttle' }));
  await expect(coach).toHaveText('Now turn the stem.');
  await person.read(coach);
  await person.tap((await marked(page)).getByRole('button', { name: 'Turn' }));
  await expect(page.getByText('Turning', { exact: true }).first()).toBeVisible();
  await person.tap(page.getByRole('button', { name: 'Go', exact: true }));

  console.log(`first turning bit: ${person.taps} taps, ${person.words} words, ${person.time_s.toFixed(1)} s`);
  expect(person.time_s).toBeLessThanOrEqual(LIMIT_s);
  expect(person.longest, 'words in one go').toBeLessThanOrEqual(25);
});
