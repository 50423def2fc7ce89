// The ways by which an exercise comes to a learner, and what is said where one fails. Nothing that is here is lost.
import { exerciseFragment, packExercise, writeExercise, type Exercise } from '../../lessons';
import { expect, test } from './app';
import { LAID, openOnStart, ownExercise, pasteExercise } from './class';

const title = LAID.title;
const edited = (change: Partial<Exercise>): Exercise => ({ ...LAID, ...change });

test('a link opens the exercise, keeps the class code, and is not met again on the way back', async ({ page }) => {
  await page.goto('/#/');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await page.goto(`/${exerciseFragment(LAID, 'B7')}`);
  await expect(page.getByRole('heading', { level: 1, name: title })).toBeVisible();
  await expect(page.getByRole('textbox', { name: 'Class code' })).toHaveValue('B7');
  await expect(page.getByText('Choose your sign first.')).toBeVisible();
  await page.getByRole('button', { name: 'Fish', exact: true }).click();
  await expect(page.getByText('This is attempt 1.')).toBeVisible();
  await page.goBack();
  await expect(page.getByRole('heading', { level: 1, name: 'Jet small wells by hand' })).toBeVisible();
  await expect(page.getByRole('link', { name: title })).toBeVisible();
});

test('the instructor’s words stand in the briefing, and the budget', async ({ page }) => {
  await openOnStart(page, packExercise(LAID));
  await page.getByRole('link', { name: 'To the exercise' }).click();
  await expect(page.getByText('Drill three rods beside the landing.')).toBeVisible();
  await expect(page.getByRole('listitem').filter({ hasText: /The ferryman says/ })).toHaveText(
    /^The ferryman says: sand.* all the way\.$/,
  );
  await expect(page.getByText('The whole job may cost 250 marks.')).toBeVisible();
  await expect(page.getByText('Neighbours met silt first')).toHaveCount(0);
});

test('words that look like code are words', async ({ page }) => {
  const asked: string[] = [];
  page.on('dialog', (dialog) => {
    asked.push(dialog.message());
    void dialog.dismiss();
  });
  const code = '<img src=x onerror=alert(1)>';
  await openOnStart(page, packExercise(edited({ title: code, briefing: [`${code} {depth_m}`, '${alert(2)}'] })));
  await page.getByRole('link', { name: 'To the exercise' }).click();
  await expect(page.getByRole('heading', { level: 1, name: code })).toBeVisible();
  await expect(page.getByText(`${code} {depth_m}`)).toBeVisible();
  await expect(page.locator('main img')).toHaveCount(0);
  expect(asked).toEqual([]);
});

test('a file is taken, and what is wrong with one is said with its field', async ({ page }, info) => {
  await page.goto('/#/');
  await page.getByRole('button', { name: 'Open an exercise', exact: true }).click();
  const file = page.locator('input[data-take="file"]');
  const give = (text: string) =>
    file.setInputFiles({ name: 'exercise.json', mimeType: 'application/json', buffer: Buffer.from(text) });
  for (const [text, says] of [
    [JSON.stringify(edited({ pass_points: 500 })), 'The exercise is wrong at "pass_points".'],
    [JSON.stringify(LAID).slice(0, 300), 'The exercise breaks off before its end. Copy it again.'],
    ['{"format":"other"}', 'This is no exercise of this trainer.'],
    [' '.repeat(70_000), /^The exercise is too large: 68.4 kB/],
    [writeExercise(LAID).replace(/"packed": "(.)/, '"packed": "0'), 'The exercise is damaged and cannot be opened.'],
  ] as const) {
    await give(text);
    await expect(page.getByText(says)).toBeVisible();
    await expect(page.getByText('Nothing on this device was changed.')).toBeVisible();
  }
  await give(writeExercise(LAID));
  await expect(page.getByText(`“${title}” is now on this device.`)).toBeVisible();
  expect(info.errors).toEqual([]);
});

test('an older edition never takes the place of a newer one, nor anything that of one changed here', async ({
  page,
}) => {
  await openOnStart(page, packExercise(edited({ edition: 3 })));
  await pasteExercise(page, packExercise(edited({ edition: 2 })));
  await expect(page.getByText(`A newer edition of “${title}” is here already. It stays.`)).toBeVisible();
  await pasteExercise(page, packExercise(edited({ edition: 4, title: 'Four rods' })));
  await expect(page.getByText('“Four rods” is now here in its new edition.')).toBeVisible();
  await ownExercise(page, edited({ id: 'exercise-own1' }));
  await page.goto('/#/class');
  await pasteExercise(page, packExercise(edited({ id: 'exercise-own1', pass_points: 60 })));
  await expect(page.getByText(`You have changed “${title}” here since. Your own stays.`)).toBeVisible();
});

test('the QR code on the page that gives it out opens it from a photo', async ({ page }) => {
  await ownExercise(page, LAID);
  await page.evaluate((id) => (location.hash = `#/share/${id}`), LAID.id);
  await page.getByRole('textbox', { name: 'Class code' }).fill('k-9');
  await page.getByRole('textbox', { name: 'Class code' }).blur();
  await expect(page.getByText('Write it on the wall: K9')).toBeVisible();
  const code = page.getByRole('img', { name: `QR code of ${title}` });
  await code.scrollIntoViewIfNeeded();
  const photo = await code.screenshot();
  await page.goto('/#/');
  await page.getByRole('button', { name: 'Open an exercise', exact: true }).click();
  const field = page.locator('input[data-take="photo"]');
  await field.setInputFiles({ name: 'photo.png', mimeType: 'image/png', buffer: photo });
  await expect(page.getByText(`“${title}” was here already.`)).toBeVisible({ timeout: 20_000 });
});

test('only tried, it is a practice without a result', async ({ page }) => {
  await openOnStart(page, packExercise(LAID));
  await page.getByRole('link', { name: 'To the exercise' }).click();
  await page.getByRole('radio', { name: 'Only to try it' }).check();
  await expect(page.getByText('As practice. You may go back, and nobody gets a result.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'First watch a careful crew' })).toBeVisible();
  await page.getByRole('radio', { name: 'For the class: with a result' }).check();
  await expect(page.getByText('Your instructor has written it on the wall.')).toBeVisible();
});
