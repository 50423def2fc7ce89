// What the tests of steered runs, of turns and of runs side by side share.
import type { Page } from '@playwright/test';
import { exerciseFragment, lessonById, newExercise, playCrew, readRunFile, writeRunFile } from '../../lessons';
import { APP_FILE } from '../../src/serve/build.mjs';
import { expect, pasteRun, savedText } from './app';
import { readCautions } from './cautions';
import { atWork, button } from './work';

export const LIVE = { ...newExercise('first-rods', 'exercise-live01', 'Rods with faults'), live: true };
export const ON_DISK = new URL(`../../dist/${APP_FILE}`, import.meta.url).href;
/** The plain renderer keeps machines without graphics quick. */
export const PLAIN = '?renderer=canvas';
export const FORMS = [
  ['over http', '/'],
  ['from the one file on disk', ON_DISK],
] as const;

/** An exercise made to be steered, come by its link; then to its hole, for a class. */
export async function toTheExercise(page: Page, app = '/', theme = 'Paper'): Promise<void> {
  await page.goto(`${app}${PLAIN}#/`);
  await page.getByRole('radio', { name: theme, exact: true }).check();
  await page.getByRole('button', { name: 'Fish' }).click();
  await page.evaluate((hash) => (location.hash = hash), exerciseFragment(LIVE, 'ABCD'));
  await expect(page.getByRole('heading', { level: 1, name: 'Rods with faults' })).toBeVisible();
}

export async function toTheHole(page: Page): Promise<void> {
  await readCautions(page);
  await button(page, 'Go to the hole').click();
  await atWork(page);
}

/** Opens the steering window from the menu; the menu stays open behind it. */
export async function steer(page: Page): Promise<Page> {
  await button(page, 'Menu').click();
  const [child] = await Promise.all([page.waitForEvent('popup'), button(page, 'Steering window').click()]);
  await expect(child.getByRole('heading', { level: 1, name: 'Steering window' })).toBeVisible({ timeout: 30_000 });
  await expect(child.getByRole('main').getByText('The first window is at the hole.')).toBeVisible();
  await button(page, 'Not now').click();
  return child;
}

/** The run as the device keeps it. */
export async function keptRun(page: Page) {
  await page.evaluate(() => (location.hash = '#/runs'));
  const save = page.getByRole('button', { name: /^Save .* to a file$/ });
  const read = readRunFile((await savedText(page, () => save.click())).text);
  if (!read.ok) throw new Error(read.problem);
  return read.file;
}

export async function sitDown(page: Page, count: string, ask: string): Promise<void> {
  await page.getByRole('radio', { name: count, exact: true }).check();
  await page.getByLabel('Ask to change seats').selectOption({ label: ask });
}

export function runFile(crew: string, name: string): string {
  const lesson = lessonById('first-rods')!;
  return writeRunFile(playCrew(lesson, crew, 7), lesson, { who: 'T-01', name });
}

/** Puts a crew's run into the list of runs. */
export async function takeIn(page: Page, crew: string, name: string): Promise<void> {
  await pasteRun(page, runFile(crew, name));
  await expect(page.getByRole('heading', { level: 2, name })).toBeVisible({ timeout: 20_000 });
}

export async function toBeside(page: Page, query = PLAIN): Promise<void> {
  await page.evaluate((address) => (location.href = address), `/${query}#/beside`);
  await expect(page.getByRole('heading', { level: 1, name: 'Two runs side by side' })).toBeVisible();
}
