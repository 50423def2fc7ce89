// A lesson from the briefing to the debrief, worked by the hands from a log; at its end the run is that of the log, to the last bit.
import { expect, type Page } from '@playwright/test';
import { lessonById, readRunFile, type LessonId } from '../../../lessons';
import { answerAll, savedText } from '../app';
import { button, toTheHole } from '../work';
import { handLog, type HandAct, type HandLog } from './handLog';
import type { Hands } from './hands';
import { playLog } from './play';

const logs = new Map<string, HandLog>();

function logOf(id: LessonId, ground: number): HandLog {
  const key = `${id} ${ground}`;
  const log = logs.get(key) ?? handLog(lessonById(id)!, ground);
  logs.set(key, log);
  expect(log.passed, 'the log that is played passes').toBe(true);
  return log;
}

/** The crew to which the rest was left goes on to the end. */
async function untilOver(page: Page, left: boolean): Promise<void> {
  if (left) await button(page, 'Go to the end').click();
  await expect(page.getByRole('heading', { name: 'The work here is done.' })).toBeVisible({ timeout: 120_000 });
}

/** Reads the points of the debrief and the hash of the saved run. */
async function lookBack(page: Page, { score, hash, ticks }: HandLog): Promise<void> {
  await expect(page.getByRole('heading', { level: 1, name: 'Looking back' })).toBeVisible();
  await answerAll(page);
  const saving = page.getByRole('button', { name: 'Save the run to a file' });
  const read = readRunFile((await savedText(page, () => saving.click())).text);
  if (!read.ok) throw new Error(read.problem);
  const { file } = read;
  expect({ score: file.claimed.score, ticks: file.ticks, hash: file.hash }).toEqual({ score, ticks, hash });
  await page.getByRole('button', { name: 'Next: The ground' }).click();
  await page.getByRole('button', { name: 'Next: Points and reasons' }).click();
  await expect(page.getByText(/ of 100 points$/)).toHaveText(`${Math.round(score * 10) / 10} of 100 points`);
  await expect(page.getByText(/^Passed\./)).toBeVisible();
}

export async function workLesson(
  hands: Hands,
  id: LessonId,
  ground: number,
  seen?: (act: HandAct) => Promise<void>,
): Promise<void> {
  const { page } = hands;
  const log = logOf(id, ground);
  await toTheHole(page, { lesson: id, ground });
  await playLog(hands, log, seen);
  await untilOver(page, log.acts.at(-1)!.action === 'leaveToCrew');
  await hands.press(button(page, 'Go to the debrief'));
  await lookBack(page, log);
}
