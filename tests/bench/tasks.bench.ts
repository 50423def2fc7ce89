// How long the page is held up at a time, from a saved run to what it cost: the longest task of its main thread on each screen.
import { lessonById, playCrew, writeRunFile } from '$lessons';
import type { Page } from 'playwright-core';
import type { Bench, Row } from './bench';
import { openApp, traced, type AppPage } from './pageTrace';

const RUNS = [
  ['first-rods', 'green', 7],
  ['open-well', 'steady', 3],
] as const;
/** Steps of the debrief between the whole run, which comes by itself, and what it cost. */
const STEPS = ['The ground', 'How it ended', 'Points and reasons'];

const bench: Bench = {
  title: 'longest task of the main thread in Chromium, from a saved run to what it cost',
  async run(): Promise<Row[]> {
    const rows: Row[] = [];
    for (const [id, crew, seed] of RUNS) {
      const lesson = lessonById(id)!;
      const app = await openApp(1280, 800);
      try {
        rows.push(
          ...(await along(app, writeRunFile(playCrew(lesson, crew, seed), lesson, { who: 'T-01', name: id }), id)),
        );
      } finally {
        await app.close();
      }
    }
    return rows;
  },
};
export default bench;

async function along(app: AppPage, file: string, name: string): Promise<Row[]> {
  const { page, origin } = app;
  const rows: Row[] = [];
  const watch = async (what: string, goesOn: () => Promise<void>): Promise<void> => {
    const { longest_ms, longestRan_ms } = await traced(app, goesOn);
    rows.push({ what: `${name}, ${what}`, value: longest_ms, unit: 'ms' });
    rows.push({ what: `${name}, ${what}: of the processor alone`, value: longestRan_ms, unit: 'ms' });
  };
  await page.goto(`${origin}/?renderer=canvas#/runs`);
  await page.getByText('Or paste the text of a run').click();
  await page.getByRole('textbox', { name: 'Text of a run file' }).fill(file);
  const look = page.getByRole('button', { name: `Look back on ${name}` });
  await watch('file opened', async () => {
    await page.getByRole('button', { name: 'Open this text' }).click();
    await look.waitFor({ timeout: 120_000 });
  });
  await watch('run taken up', async () => {
    await look.click();
    await page.getByRole('checkbox').first().waitFor({ timeout: 120_000 });
    await page.waitForTimeout(2000);
  });
  await watch('own view', () => answered(page));
  for (const step of STEPS) {
    const button = page.getByRole('button', { name: new RegExp(`^\\d ${step}$`) });
    if ((await button.count()) === 0) continue;
    await watch(step, async () => {
      await button.click();
      await page.waitForTimeout(3000);
    });
  }
  await watch('what it cost', async () => {
    await page.getByRole('button', { name: /^\d What it cost$/ }).click();
    await page.getByText(/^It is all worked out/).waitFor({ timeout: 300_000 });
  });
  return rows;
}

/** The first step asks; the others open once it is answered. */
async function answered(page: Page): Promise<void> {
  for (const question of await page.locator('main fieldset').all())
    await question.getByRole('checkbox').first().check();
  await page.getByRole('button', { name: 'That is my view' }).click();
  await page.waitForTimeout(3000);
}
