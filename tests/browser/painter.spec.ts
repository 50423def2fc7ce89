// A worker draws the hole; where there is none, or where it fails, the page draws the same picture.
import type { Page } from '@playwright/test';
import { lessonById, writeRunFile } from '../../lessons';
import { halfWayRun } from '../halfWay';
import { expect, pasteRun, test } from './app';
import { atWork, button, jobTime } from './work';

type Watched = { workers: Worker[] };

const halfWay = (): string => writeRunFile(halfWayRun(), lessonById('first-rods')!, { who: 'T-01', name: 'Half way' });

/** Keeps the page's workers at hand, or leaves the page without one that can draw. */
const prepare = (page: Page, workersDraw: boolean): Promise<unknown> =>
  page.addInitScript((draw) => {
    if (!draw) delete (HTMLCanvasElement.prototype as Partial<HTMLCanvasElement>).transferControlToOffscreen;
    const made: Worker[] = [];
    Object.assign(window, { workers: made });
    window.Worker = class extends Worker {
      constructor(...given: ConstructorParameters<typeof Worker>) {
        super(...given);
        made.push(this);
      }
    };
  }, workersDraw);

const workers = (page: Page): Promise<number> => page.evaluate(() => (window as unknown as Watched).workers.length);

async function takeUp(page: Page, text: string): Promise<void> {
  await pasteRun(page, text);
  await page.getByRole('button', { name: 'Go on with Half way' }).click();
  await atWork(page);
}

const look = async (page: Page): Promise<string> =>
  (await page.locator('.host').screenshot({ animations: 'disabled' })).toString('base64');

/** Looks until nothing has changed for two seconds: the clock stands, so the last order is drawn then. */
async function drawing(page: Page): Promise<string> {
  let last = await look(page);
  for (let alike = 0; alike < 4;) {
    await page.waitForTimeout(500);
    const now = await look(page);
    alike = now === last ? alike + 1 : 0;
    last = now;
  }
  return last;
}

/** A difference in brightness of a pixel's colours that counts: less comes of how edges were smoothed. */
const SEEN = 16;

/** Pixels that are seen to differ between two pictures of one size. */
const unlike = (page: Page, one: string, other: string): Promise<number> =>
  page.evaluate(
    async ([pictures, seen]) => {
      const [a, b] = await Promise.all(
        pictures.map(async (text) => {
          const bytes = Uint8Array.from(atob(text), (letter) => letter.charCodeAt(0));
          const image = await createImageBitmap(new Blob([bytes], { type: 'image/png' }));
          const context = new OffscreenCanvas(image.width, image.height).getContext('2d')!;
          context.drawImage(image, 0, 0);
          return context.getImageData(0, 0, image.width, image.height).data;
        }),
      );
      const pixels = new Set<number>();
      a.forEach((value, i) => Math.abs(value - b[i]) >= seen && pixels.add(i >> 2));
      return pixels.size;
    },
    [[one, other], SEEN] as const,
  );

test('the picture of a worker is the picture of the page', async ({ page, context }) => {
  const text = halfWay();
  await prepare(page, true);
  await takeUp(page, text);
  expect(await workers(page)).toBe(1);
  const drawn = await drawing(page);
  await page.close();
  const plain = await context.newPage();
  await prepare(plain, false);
  await takeUp(plain, text);
  expect(await workers(plain)).toBe(0);
  await expect.poll(async () => unlike(plain, await look(plain), drawn), { timeout: 20_000 }).toBe(0);
});

test('when the worker fails the page draws on, and the run is untouched', async ({ page }) => {
  await prepare(page, true);
  await takeUp(page, halfWay());
  const before = await drawing(page);
  const time_s = await jobTime(page);
  await page.evaluate(() => {
    const [worker] = (window as unknown as Watched).workers;
    worker.dispatchEvent(new ErrorEvent('error', { message: 'out of memory', cancelable: true }));
  });
  await atWork(page);
  expect(await page.locator('.host canvas').count()).toBe(1);
  await expect.poll(async () => unlike(page, await look(page), before), { timeout: 20_000 }).toBe(0);
  expect(await jobTime(page)).toBe(time_s);
  // It is alive: the clock goes on and the picture with it.
  await button(page, 'True speed').click();
  await expect.poll(async () => unlike(page, await look(page), before)).toBeGreaterThan(20);
});
