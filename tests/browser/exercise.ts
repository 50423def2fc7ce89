// What the tests of the editor share: an exercise on an empty device, the way to its editor, what the device keeps of it.
import { expect, type Page } from '@playwright/test';
import { newExercise, type Exercise } from '../../lessons';
import { ownExercise } from './class';

/** As it comes from the instructor's page: the lesson itself. */
export const MADE: Exercise = newExercise('first-rods', 'exercise-made', 'Three rods');

export async function openEditor(page: Page, exercise: Exercise = MADE, words = 'plain'): Promise<void> {
  await ownExercise(page, exercise);
  await page.goto(`/?words=${words}#/edit/${exercise.id}`);
  await expect(page.locator('#part-words')).toBeVisible();
}

/** Opens one of the eight parts, by its name. */
export async function openPart(page: Page, name: string): Promise<void> {
  const fold = page.getByRole('region', { name, exact: true }).getByRole('button').first();
  await fold.click();
  await expect(fold).toHaveAttribute('aria-expanded', 'true');
}

export const sumOf = (page: Page, part: string) => page.getByRole('region', { name: part, exact: true });

/** The record of the exercise as the device has it. */
export async function keptOf(page: Page, id: string): Promise<{ exercise: Exercise; draft?: Exercise }> {
  return page.evaluate(async (key) => {
    const database = await new Promise<IDBDatabase>((resolve, reject) => {
      const opening = indexedDB.open('hand-jetting-trainer');
      opening.onsuccess = () => resolve(opening.result);
      opening.onerror = () => reject(opening.error as Error);
    });
    const record = await new Promise<never>((resolve, reject) => {
      const reading = database.transaction('exercises').objectStore('exercises').get(key);
      reading.onsuccess = () => resolve(reading.result as never);
      reading.onerror = () => reject(reading.error as Error);
    });
    database.close();
    return record;
  }, id);
}
