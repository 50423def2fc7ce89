// What the tests of the work screen share: the way to the hole with the plain renderer, and a crew member who works it,
// by taps or by keys, through the same words that a person reads.
import { expect, type Locator, type Page } from '@playwright/test';
import { readCautions } from './cautions';

/** From an empty device to the hole, on a ground by number. The plain renderer keeps machines without graphics quick. */
export async function toTheHole(
  page: Page,
  options: { lesson?: string; ground?: number; setting?: string } = {},
): Promise<void> {
  await page.goto('/?renderer=canvas#/');
  if (options.setting) await page.getByRole('radio', { name: options.setting, exact: true }).check();
  await page.getByRole('button', { name: 'Fish' }).click();
  await page.evaluate((id) => (location.hash = `#/brief/${id}`), options.lesson ?? 'first-rods');
  await readCautions(page);
  await page.getByRole('radio', { name: 'Ground with a number I type' }).check();
  await page.getByRole('textbox', { name: 'Ground number' }).fill(String(options.ground ?? 7));
  await page.getByRole('button', { name: 'Go to the hole' }).click();
  await atWork(page);
}

export async function atWork(page: Page): Promise<void> {
  await expect(page.getByRole('timer')).toBeVisible({ timeout: 20_000 });
  await expect(page.getByText('The drawing is being made')).toHaveCount(0, { timeout: 20_000 });
}

/** Job seconds on the clock. */
export async function jobTime(page: Page): Promise<number> {
  const [h = 0, min = 0, s = 0] = (await page.getByRole('timer').innerText()).split(':').map(Number);
  return h * 3600 + min * 60 + s;
}

export const button = (page: Page, name: string): Locator => page.getByRole('button', { name, exact: true });

/** Metres of the rod still to drill, as the hand for the next rod says it. */
export async function leftToDrill_m(page: Page): Promise<number> {
  const text = await button(page, 'Add rod').innerText();
  return Number(/([\d.]+) m to drill/.exec(text)?.[1] ?? 0);
}

/** Someone at the hole. How a hand is found and pressed is the difference between taps and keys. */
export interface Worker {
  readonly page: Page;
  /** Presses a hand of a group, as many times as said. */
  hand(group: string, name: string, times?: number): Promise<void>;
  /** Presses a button of an open question. */
  answer(name: string, times?: number): Promise<void>;
  /** Chooses one of a few in an open question. */
  choose(question: string, name: string): Promise<void>;
  /** Waits for something, and returns when the wait is over. */
  wait(what: string): Promise<void>;
}

/** Rod by rod: sample, clear, stop, next rod. Returns when the work is over. */
export async function drillTheLesson(worker: Worker, rods: number): Promise<void> {
  const { page } = worker;
  await worker.hand('Pump', 'Prime');
  await worker.hand('Fluid', 'Add powder');
  await worker.answer('500 g');
  await worker.answer('50 g more', 4);
  await worker.answer('Put it in');
  await worker.wait('Task done');
  for (let rod = 1; rod <= rods; rod++) {
    await startFlow(worker);
    if (rod > 1) {
      await worker.hand('Stem', 'Lower 0.3 m');
      await worker.wait('Task done');
    }
    await worker.hand('Stem', 'Turn');
    await drillTo(worker, 0.5);
    await takeSample(worker, rod);
    await drillTo(worker, 0.03);
    await clearAndStop(worker);
    if (rod < rods) {
      await worker.hand('Stem', 'Add rod');
      await worker.wait('Task done');
    }
  }
  await worker.hand('Book', 'Log a layer');
  await worker.choose('What it is', 'fine sand');
  await worker.answer('Log it');
  await worker.hand('Stem', 'Stop drilling');
  await worker.answer('Stop drilling');
  await expect(page.getByRole('heading', { name: 'The work here is done.' })).toBeVisible();
}

async function startFlow(worker: Worker): Promise<void> {
  await worker.hand('Pump', 'Open the throttle', 4);
  await worker.wait('1 minute');
}

const FEED_STEPS = 7;

/** Feeds until no more than so much of the rod is left. */
async function drillTo(worker: Worker, left_m: number): Promise<void> {
  await worker.hand('Stem', 'More feed', FEED_STEPS);
  let tries = 0;
  while ((await left(worker)) > left_m) {
    expect(tries++, 'waits for one rod').toBeLessThan(60);
    await worker.wait(left_m > 0.1 ? '1 minute' : '5 minutes');
  }
  await worker.hand('Stem', 'Less feed', FEED_STEPS);
}

async function left(worker: Worker): Promise<number> {
  await worker.hand('Stem', '');
  return leftToDrill_m(worker.page);
}

async function takeSample(worker: Worker, rod: number): Promise<void> {
  await worker.hand('Tray', 'Catch sample');
  await worker.answer('0.10 m less');
  await worker.answer('Catch it');
  await worker.wait('Task done');
  await worker.hand('Tray', 'Name sample');
  await worker.choose('Mostly', rod === 1 ? 'fine sand' : 'coarse sand');
  await worker.answer('Write it down');
}

async function clearAndStop(worker: Worker): Promise<void> {
  await worker.hand('Stem', 'Lift 0.3 m');
  await worker.wait('5 minutes');
  await worker.wait('1 minute');
  await worker.hand('Stem', 'Turn');
  await worker.hand('Pump', 'Stop pump');
  // The flow needs a moment to die down; the wait ends with it.
  await worker.wait('1 minute');
}
