// A class from the exercise to the certificate, all of it from the one file opened from disk with the network cut.
import type { BrowserContext, Page } from '@playwright/test';
import { writeFileSync } from 'node:fs';
import { lessonOfExercise, readExercise, readResult, variantSeed, type Exercise } from '../../lessons';
import { APP_FILE } from '../../src/serve/build.mjs';
import { answerAll, expect, savedText, test } from './app';
import { readCautions } from './cautions';
import { takeIn } from './class-results';
import { openPart } from './exercise';
import { handLog } from './player/handLog';
import { playLog } from './player/play';
import { tapper } from './player/tapper';
import { atWork, button } from './work';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

const ON_DISK = new URL(`../../dist/${APP_FILE}`, import.meta.url).href;
/** The plain renderer keeps machines without graphics quick. */
const plain = (address: string, hash: string): string => `${address}?renderer=canvas${hash}`;

const heading = (page: Page, name: string) => page.getByRole('heading', { level: 1, name, exact: true });

interface Prepared {
  readonly exercise: Exercise;
  readonly classCode: string;
  /** The trainer with the exercise in it, as an address. */
  readonly trainer: string;
}

/** The instructor makes an exercise of the shortest lesson and saves the trainer with it. */
async function prepare(page: Page, outputPath: (name: string) => string): Promise<Prepared> {
  await page.goto(plain(ON_DISK, '#/class'));
  await page.getByLabel('Which lesson it starts from').selectOption('round-the-loop');
  await button(page, 'Make it').click();
  await openPart(page, 'Words');
  await page.getByRole('textbox', { name: 'Title' }).fill('The loop at the ferry');
  await expect(heading(page, 'The loop at the ferry')).toBeVisible();
  await page.getByRole('link', { name: 'Give it out' }).click();
  await button(page, 'Make one').click();
  const code = page.getByRole('textbox', { name: 'Class code' });
  await expect(code).toHaveValue(/^[A-Z0-9]{4}$/);
  const classCode = await code.inputValue();
  const file = await savedText(page, () => button(page, 'Save the file').click());
  const read = readExercise(file.text);
  if (!read.ok) throw new Error(read.problem);
  const saved = await savedText(page, () => button(page, 'Save the trainer with it').click());
  const path = outputPath('trainer.html');
  writeFileSync(path, saved.text);
  return { exercise: read.exercise, classCode, trainer: `file://${path}` };
}

/** A learner opens that file, plays the exercise with care by taps, and hands in the result. */
async function learn(page: Page, { exercise, classCode, trainer }: Prepared, number: number): Promise<string> {
  await page.goto(plain(trainer, ''));
  await expect(heading(page, exercise.title)).toBeVisible();
  await page.getByText('A number instead').click();
  await page.getByRole('textbox', { name: 'Number' }).fill(String(number));
  await button(page, 'Take this number').click();
  await expect(page.getByRole('textbox', { name: 'Class code' })).toHaveValue(classCode);
  await expect(page.getByText('This is attempt 1.')).toBeVisible();
  await readCautions(page);
  await button(page, 'Go to the hole').click();
  await atWork(page);
  const log = handLog(lessonOfExercise(exercise), variantSeed(exercise, classCode, { number }, 1));
  expect(log.passed, 'the log that is played passes').toBe(true);
  await playLog(tapper(page), log);
  await button(page, 'Go to the debrief').click();
  await answerAll(page);
  const { text } = await savedText(page, () => button(page, 'Save the result as a file').click());
  const read = readResult(text);
  if (!read.ok) throw new Error(read.problem);
  expect(read.result).toMatchObject({ classCode, attempt: 1, finished: true, hash: log.hash, ticks: log.ticks });
  expect(read.result.claimed.score).toBe(log.score);
  return text;
}

/** The instructor takes the result in, sees it reproduced, and prints the certificate. */
async function certify(page: Page, { exercise }: Prepared, text: string, prints: boolean): Promise<void> {
  await page.evaluate((id) => (location.hash = `#/board/${id}`), exercise.id);
  await takeIn(page, [{ name: 'five.json', text }]);
  const listed = page
    .getByRole('region', { name: 'All that was handed in' })
    .getByRole('row')
    .filter({ hasText: 'T-05' });
  await expect(listed).toContainText('reproduced');
  await expect(listed).not.toContainText('not');
  await page.evaluate(() => {
    const seen = window as Window & { printed?: number };
    seen.print = () => (seen.printed = (seen.printed ?? 0) + 1);
  });
  await page.getByRole('link', { name: 'Certificates and other papers' }).click();
  await page.getByRole('radio', { name: /^Certificates of practice/ }).check();
  const certificate = page.getByText('T-05 practised “The loop at the ferry” in a simulator of jetting wells by hand.');
  await expect(certificate).toBeVisible();
  await button(page, 'Print').click();
  expect(await page.evaluate(() => (window as Window & { printed?: number }).printed)).toBe(1);
  // The system's Firefox takes no order to show a page as if printed.
  if (!prints) return;
  await page.emulateMedia({ media: 'print' });
  await expect(certificate).toBeVisible();
  await expect(page.getByRole('radio', { name: /^Certificates of practice/ })).toBeHidden();
  // One learner, one page.
  expect((await page.pdf({ format: 'A4' })).toString('latin1').match(/\/Type\s*\/Page\b/g)).toHaveLength(1);
}

test('a class from the exercise to the certificate, from disk, with the network cut', async ({
  browser,
  browserName,
}, info) => {
  test.setTimeout(240_000);
  const open = async (): Promise<BrowserContext> => {
    const context = await browser.newContext({ viewport: { width: 390, height: 844 }, hasTouch: true });
    await context.setOffline(true);
    return context;
  };
  const [instructor, learner] = [await open(), await open()];
  const desk = await instructor.newPage();
  const prepared = await prepare(desk, (name) => info.outputPath(name));
  const text = await learn(await learner.newPage(), prepared, 5);
  await learner.close();
  await certify(desk, prepared, text, browserName === 'chromium');
  await instructor.close();
});
