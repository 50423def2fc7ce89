// What the tests of the class share: exercises, and how they come onto a device by hand.
import { expect, type Page } from '@playwright/test';
import { newExercise, writeExercise, type Exercise } from '../../lessons';

/** An exercise on ground laid by hand, with words of its own. */
export const LAID: Exercise = {
  ...newExercise('first-rods', 'exercise-laid', 'Three rods by the ferry'),
  briefing: ['Drill three rods beside the landing.', 'The ferryman says: sand all the way.'],
  ground: {
    by: 'layers',
    layers: [
      { kind: 'topsoil', thickness_m: 0.4 },
      { kind: 'silt', thickness_m: 1.1 },
      { kind: 'coarseSand', thickness_m: 6 },
    ],
    waterTable_m: 2,
    swing_m: 1,
    confinedRise_m: 0,
    perched: false,
    salt: null,
    seed: 7,
  },
  budget_marks: 250,
};

/** Pastes a text where the page takes exercises, and opens it. */
export async function pasteExercise(page: Page, text: string): Promise<void> {
  const field = page.getByRole('textbox', { name: 'Link or letters of an exercise' });
  const fold = page.getByText('Or paste a link or letters');
  await expect(fold).toBeVisible();
  if (!(await field.isVisible())) await fold.click();
  await field.fill(text);
  await page.getByRole('button', { name: 'Open it', exact: true }).click();
}

/** Puts an exercise on this device as one of the instructor's own. */
export async function ownExercise(page: Page, exercise: Exercise): Promise<void> {
  await page.goto('/#/class');
  await pasteExercise(page, writeExercise(exercise));
  await expect(page.getByText(`“${exercise.title}” is now on this device.`)).toBeVisible();
}

/** Opens a text on the start page, as a learner does. */
export async function openOnStart(page: Page, text: string): Promise<void> {
  await page.goto('/#/');
  await page.getByRole('button', { name: 'Open an exercise', exact: true }).click();
  await pasteExercise(page, text);
}
