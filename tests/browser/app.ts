// What the browser tests share: a page that may ask no other origin and may not break, and what people do in the app.
import { expect, test as base, type Page } from '@playwright/test';
import { lessonById, playCrew, writeRunFile } from '../../lessons';
import { readCautions } from './cautions';

export { expect };

export const test = base.extend<{ guarded: void }>({
  guarded: [
    async ({ page, baseURL }, use) => {
      const elsewhere: string[] = [];
      const broken: string[] = [];
      page.on('request', (request) => {
        const url = request.url();
        if (!url.startsWith(`${baseURL}/`) && !/^(data|blob|file):/.test(url)) elsewhere.push(url);
      });
      page.on('pageerror', (error) => broken.push(error.message));
      await use();
      expect(elsewhere, 'requests to another origin').toEqual([]);
      expect(broken, 'errors in the page').toEqual([]);
    },
    { auto: true },
  ],
});

let finished: string | null = null;

/** The text of a run file: a careful crew's whole run of the first lesson. */
export function finishedRunFile(): string {
  const lesson = lessonById('first-rods')!;
  finished ??= writeRunFile(playCrew(lesson, 'careful', 7), lesson, { who: 'T-01', name: 'Careful run' });
  return finished;
}

export async function goTo(page: Page, place: string): Promise<void> {
  await page.goto(`/#/${place}`);
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
}

export async function chooseFish(page: Page): Promise<void> {
  await goTo(page, '');
  await page.getByRole('button', { name: 'Fish' }).click();
  await expect(page.getByRole('link', { name: 'Begin' })).toBeFocused();
}

/** From the start page to the hole, on ground number 7. */
export async function beginRun(page: Page): Promise<void> {
  await chooseFish(page);
  await page.evaluate(() => (location.hash = '#/brief/first-rods'));
  await readCautions(page);
  await page.getByRole('radio', { name: 'Ground with a number I type' }).check();
  await page.getByRole('textbox', { name: 'Ground number' }).fill('7');
  await page.getByRole('button', { name: 'Go to the hole' }).click();
  await atTheHole(page);
}

export async function atTheHole(page: Page): Promise<void> {
  await expect(page).toHaveURL(/#\/work$/);
  await expect(page.getByRole('heading', { level: 1, name: /The first rods/ })).toBeVisible({ timeout: 20_000 });
}

/** Puts the text of a run file into the list by pasting it. */
export async function pasteRun(page: Page, text: string): Promise<void> {
  await goTo(page, 'runs');
  const field = page.getByRole('textbox', { name: 'Text of a run file' });
  if (!(await field.isVisible())) await page.getByText('Or paste the text of a run').click();
  await field.fill(text);
  await page.getByRole('button', { name: 'Open this text' }).click();
}

/** Opens a finished run and goes to its debrief. */
export async function lookBack(page: Page): Promise<void> {
  await pasteRun(page, finishedRunFile());
  await page.getByRole('button', { name: 'Look back on Careful run' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Looking back' })).toBeVisible();
}

/** Answers each question with its first answer. */
export async function answerAll(page: Page): Promise<void> {
  // The questions come after the run has been taken up again.
  await expect(page.getByRole('checkbox').first()).toBeVisible();
  for (const question of await page.locator('main fieldset').all())
    await question.getByRole('checkbox').first().check();
  await page.getByRole('button', { name: 'That is my view' }).click();
  await expect(page.getByRole('heading', { level: 2, name: 'The whole run' })).toBeVisible();
}

export { savedBy as savedText } from './saved';
