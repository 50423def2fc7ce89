// The screens of the class, on the way through the app: an instructor's exercise from its making to the papers, with results of three crews.
import {
  crewFor,
  lessonOfExercise,
  newExercise,
  playOn,
  resultOf,
  startRun,
  variantSeed,
  writeExercise,
  writeResult,
  type Exercise,
} from '$lessons';
import type { Way } from './screens';

const CODE = 'B7';
const TASK: Exercise = newExercise('round-the-loop', 'exercise-loop1', 'The loop at the ferry');
const lesson = lessonOfExercise(TASK);

/** What the learner of a number hands in, as a crew would play it. */
function resultOfCrew(crew: string, number: number): string {
  const run = startRun(lesson, variantSeed(TASK, CODE, { number }, 1), false);
  playOn(run, lesson, crewFor(run, lesson, crew));
  return writeResult(resultOf(run, lesson, { who: `T-0${number}`, sitting: { classCode: CODE, attempt: 1 } }));
}

/** Places of one exercise that show without more ado. */
const PLACES = ['edit', 'share', 'task', 'papers'] as const;

export async function throughTheClass({ page, origin, take }: Way): Promise<void> {
  const goTo = async (place: string): Promise<void> => {
    await page.goto(`${origin}/?renderer=canvas#/${place}`);
    await page.getByRole('heading', { level: 1 }).first().waitFor();
    await page.getByText('Loading…').waitFor({ state: 'detached' });
  };
  await goTo('class');
  await page.getByText('Or paste a link or letters').click();
  await page.getByRole('textbox', { name: 'Link or letters of an exercise' }).fill(writeExercise(TASK));
  await page.getByRole('button', { name: 'Open it', exact: true }).click();
  await page.getByText('is now on this device').waitFor();
  await take('class, instructor');
  await goTo('guide');
  await take('class, guide');
  for (const place of PLACES) {
    await goTo(`${place}/${TASK.id}`);
    // The pictures of the start come after the words.
    await page.locator('main svg, main canvas, main table').first().waitFor();
    await take(`class, ${place}`);
  }
  await goTo(`board/${TASK.id}`);
  const handedIn = (['careful', 'steady', 'green'] as const).map((crew, i) => ({
    name: `${crew}.json`,
    mimeType: 'text/plain',
    buffer: Buffer.from(resultOfCrew(crew, i + 1)),
  }));
  await page.locator('input[data-take=files]').setInputFiles(handedIn);
  await page.getByText('3 results are taken in.').waitFor();
  await page.getByRole('progressbar').waitFor({ state: 'detached', timeout: 60_000 });
  await take('class, board');
  await page.getByRole('button', { name: 'Show on the wall' }).click();
  await take('class, on the wall');
}
