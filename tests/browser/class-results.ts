// Results of a made-up class, as its learners would hand them in: of crews that play by the same acts, under signs of every sort.
import { expect, type Page } from '@playwright/test';
import {
  crewFor,
  lessonOfExercise,
  newExercise,
  packResult,
  playOn,
  resultOf,
  startRun,
  variantSeed,
  writeExercise,
  writeResult,
  type Exercise,
  type Result,
} from '../../lessons';
import { pasteExercise } from './class';

export const CODE = 'B7';
/** A short lesson: its results are played again in a moment. */
export const TASK: Exercise = newExercise('round-the-loop', 'exercise-loop1', 'The loop at the ferry');

const lesson = lessonOfExercise(TASK);
const known = new Map<string, Result>();

/** The result of a crew under a learner's number, as the device of that learner hands it in. */
export function resultFrom(crew: string, number: number, attempt = 1): Result {
  const key = `${crew} ${number} ${attempt}`;
  let result = known.get(key);
  if (!result) {
    const run = startRun(lesson, variantSeed(TASK, CODE, { number }, attempt), false);
    playOn(run, lesson, crewFor(run, lesson, crew));
    const who = `T-${String(number).padStart(2, '0')}`;
    result = resultOf(run, lesson, { who, sitting: { classCode: CODE, attempt, spent_s: 240 + number } });
    known.set(key, result);
  }
  return result;
}

export interface HandedIn {
  readonly name: string;
  readonly text: string;
}

/** What a class hands in: sound, to the letter once more, once more at a later time, altered, of another version, broken off. */
export function handedIn(): HandedIn[] {
  const careful = resultFrom('careful', 1);
  return [
    { name: 'one.json', text: writeResult(careful) },
    { name: 'two.json', text: writeResult(resultFrom('green', 2)) },
    { name: 'two again.json', text: writeResult(resultFrom('careful', 2, 2)) },
    { name: 'three.txt', text: packResult(resultFrom('green', 3)) },
    { name: 'copy.json', text: writeResult(careful) },
    { name: 'later.json', text: writeResult({ ...careful, spent_s: 999 }) },
    { name: 'altered.json', text: writeResult({ ...resultFrom('green', 3), who: 'T-04', claimed: { score: 99 } }) },
    { name: 'older.json', text: writeResult({ ...careful, who: 'fish', sim: '0.0.1' }) },
    { name: 'broken.json', text: writeResult(careful).slice(0, 200) },
  ];
}

/** Opens the board of the exercise, which is the instructor's own on this device. `at`: the address of the page. */
export async function openBoard(page: Page, at = '/'): Promise<void> {
  await page.goto(`${at}#/class`);
  await pasteExercise(page, writeExercise(TASK));
  await expect(page.getByText(`“${TASK.title}”`)).toBeVisible();
  await page.evaluate((hash) => (location.hash = hash), `#/board/${TASK.id}`);
  await expect(page.getByRole('heading', { level: 2, name: 'Take in results' })).toBeVisible();
}

/** Chooses files on the board, and waits until all are played again. */
export async function takeIn(page: Page, files: readonly HandedIn[]): Promise<void> {
  const input = page.locator('input[data-take=files]');
  await input.setInputFiles(
    files.map(({ name, text }) => ({ name, mimeType: 'text/plain', buffer: Buffer.from(text) })),
  );
  await expect(page.getByRole('status').filter({ hasText: /taken in|here already|could not be read/ })).toBeVisible();
  await playedAgain(page);
}

/** Waits until all results that the board shows are played again; `results`: how many it will show. */
export async function playedAgain(page: Page, results?: number): Promise<void> {
  // After a start anew what is kept is read first: until then there is nothing to play.
  if (results !== undefined)
    await expect(page.getByRole('region', { name: 'All that was handed in' }).getByRole('rowheader')).toHaveCount(
      results,
      { timeout: 60_000 },
    );
  await expect(page.getByRole('progressbar')).toHaveCount(0, { timeout: 60_000 });
}
