// Sound: off at first, begun by a press only, silent while the clock stands, kept on the device. The browser's own audio is watched.
import type { Page } from '@playwright/test';
import { faults } from './axe';
import { expect, test } from './app';
import { createRun, sensesOf, step, type Senses } from '$sim';
import { LESSONS, scenarioOf } from '$lessons';
import { SENSE_IDS } from '../../src/senses/readings';
import { voicesOf, type Voice } from '../../src/sound/voices';
import { bundleForPage } from './bundle';
import type * as SoundPage from './soundPage';
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

const still = ((): Senses => {
  const run = createRun(scenarioOf(LESSONS[0]!, 1));
  step(run);
  return sensesOf(run);
})();
const bit = (sound: Senses['stem']['sound']): Voice[] =>
  voicesOf({ ...still, stem: { ...still.stem, turning: true, sound } }, SENSE_IDS);

test('as it is played: nothing is cut off, stones and sand are heard alike, clay hardly', async ({ page }) => {
  await page.addScriptTag({ content: await bundleForPage('tests/browser/soundPage.ts', 'sounds') });
  const measured = (voices: readonly Voice[]): Promise<SoundPage.Measured> =>
    page.evaluate((given) => (window as unknown as { sounds: typeof SoundPage }).sounds.measure(given), voices);
  const loudest = voicesOf(
    {
      ...still,
      pump: { ...still.pump, sound: 'gulping', throttle_frac: 1, hose: 'sprays' },
      stem: { ...still.stem, turning: true, torque: 'stalled', sound: 'knock' },
      returns: { ...still.returns, running: true, share_frac: 1, murk_frac: 0 },
    },
    SENSE_IDS,
  );
  expect(loudest).toHaveLength(6);
  const { peak } = await measured(loudest);
  expect(peak).toBeGreaterThan(0.2);
  expect(peak).toBeLessThan(0.9);
  const knock = (await measured(bit('knock'))).level;
  for (const sound of ['hiss', 'grind'] as const) {
    const { level } = await measured(bit(sound));
    expect(level / knock, sound).toBeGreaterThan(0.5);
    expect(level / knock, sound).toBeLessThan(2);
  }
  for (const sound of ['sticky', 'quiet'] as const)
    expect((await measured(bit(sound))).level / knock, sound).toBeLessThan(0.4);
});
