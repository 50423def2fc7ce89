// What the tests of the work screen share: the way to the hole with the plain renderer, the clock, a button by its words.
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
