// Sound: off at first, begun by a press only, silent while the clock stands, kept on the device. The browser's own audio is watched.
import type { Page } from '@playwright/test';
import { faults } from './axe';
import { expect, test } from './app';
import { atWork, button, toTheHole } from './work';

/** Notes each audio context that the page makes, and each source that is started or stopped on it. */
async function listen(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const heard = { contexts: 0, started: 0, stopped: 0 };
    Object.assign(window, { heard });
    window.AudioContext = class extends AudioContext {
      constructor() {
        super();
        heard.contexts++;
      }
    };
    const { start, stop } = OscillatorNode.prototype;
    OscillatorNode.prototype.start = function (at) {
      heard.started++;
      start.call(this, at);
    };
    OscillatorNode.prototype.stop = function (at) {
      heard.stopped++;
      stop.call(this, at);
    };
  });
}

const heard = (page: Page): Promise<{ contexts: number; started: number; stopped: number }> =>
  page.evaluate(() => ({ ...(window as unknown as { heard: { contexts: 0; started: 0; stopped: 0 } }).heard }));

test('sound is off until it is switched on at the hole, follows the clock, and is kept', async ({ page }) => {
  await listen(page);
  await toTheHole(page);
  await page.keyboard.press('o');
  await page.keyboard.press('1');
  await page.keyboard.press('t');
  expect((await heard(page)).contexts).toBe(0);
  await page.keyboard.press('p');

  await button(page, 'Menu').click();
  const sound = page.getByRole('group', { name: 'Sound', exact: true });
  await expect(sound.getByRole('radio', { name: 'Off' })).toBeChecked();
  await expect(page.getByRole('group', { name: 'Loudness' })).toHaveCount(0);
  await sound.getByRole('radio', { name: 'On' }).check();
  await page.getByRole('radio', { name: 'Quiet' }).check();
  expect(await faults(page)).toEqual([]);
  await expect.poll(async () => (await heard(page)).contexts).toBe(1);
  expect((await heard(page)).started, 'the clock stands').toBe(0);
  await page.keyboard.press('Escape');

  await page.keyboard.press('1');
  await expect.poll(async () => (await heard(page)).started).toBeGreaterThan(0);
  await page.keyboard.press('p');
  await expect.poll(async () => (await heard(page)).stopped).toBe((await heard(page)).started);

  await page.reload();
  await atWork(page);
  expect((await heard(page)).contexts, 'nothing was pressed yet').toBe(0);
  await button(page, 'Menu').click();
  await expect(page.getByRole('radio', { name: 'Quiet' })).toBeChecked();
});
