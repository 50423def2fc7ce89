// A run steered from a second window, over http and from the one file opened from disk.
import { replayFile } from '../../lessons';
import { expect, test } from './app';
import { FORMS, keptRun, PLAIN, steer, toTheExercise, toTheHole } from './liveRun';
import { atWork, button, jobTime } from './work';

for (const [how, app] of FORMS) {
  test(`a fault from the second window strikes in the first and stands in its log, ${how}`, async ({ page }) => {
    await toTheExercise(page, app);
    await toTheHole(page);
    const child = await steer(page);
    await expect(child.getByText('Nothing is broken.')).toBeVisible();
    await expect(child.getByRole('button', { name: 'The engine stops' })).toHaveAttribute('aria-disabled', 'true');
    await button(child, 'Heavy rain').click();
    await button(child, 'A helper goes away').click();
    await expect(child.getByText(/^It rains for another/)).toBeVisible();
    await expect(page.getByRole('group', { name: 'Crew' })).toContainText('1 hand free');
    await expect(page.getByRole('button', { name: /^Dig a ditch/ })).toBeVisible();
    await button(child, 'Dig a ditch').click();
    await expect(page.getByRole('group', { name: 'Crew' })).toContainText('Mending what went wrong');
    const file = await keptRun(page);
    expect(file.log.filter(([, action]) => action === 'fault' || action === 'mend')).toEqual([
      [0, 'fault', { fault: 'rainFills' }],
      [0, 'fault', { fault: 'helperAway' }],
      [0, 'mend', { what: 'ditch' }],
    ]);
    expect(file.practice).toBe(false);
    expect(replayFile(file).reproduced).toBe(true);
    await expect(child.getByRole('main').getByText('The first window has left the hole.')).toBeVisible();
  });

  test(`freezing stops clock and hands, also over a new loading, ${how}`, async ({ page }) => {
    test.setTimeout(120_000);
    await toTheExercise(page, app);
    await toTheHole(page);
    const child = await steer(page);
    await button(page, 'Go').click();
    await expect.poll(() => jobTime(page)).toBeGreaterThan(1);
    await button(child, 'Stop the clock and take the hands away').click();
    const note = page.getByRole('dialog', { name: 'The instructor has stopped the clock.' });
    await expect(note).toBeVisible();
    const stopped_s = await jobTime(page);
    await page.keyboard.press('Escape');
    await page.keyboard.press('p');
    await page.keyboard.press('o');
    await expect(note).toBeVisible();
    await expect(note.getByRole('button')).toHaveCount(0);
    await expect(child.getByRole('group', { name: 'Pace of the clock' }).getByRole('button').first()).toBeDisabled();
    await page.reload();
    await atWork(page);
    await expect(note).toBeVisible();
    expect(await jobTime(page)).toBe(stopped_s);
    // The steering window finds the page again by itself.
    await expect(child.getByRole('main').getByText('The first window is at the hole.')).toBeVisible();
    await button(child, 'Let them go on').click();
    await expect(note).toHaveCount(0);
    await button(page, 'Go').click();
    await expect.poll(() => jobTime(page)).toBeGreaterThan(stopped_s);
    const file = await keptRun(page);
    expect(file.log.some(([, action]) => action === 'prime')).toBe(false);
  });

  test(`either window tells when the other is gone, ${how}`, async ({ page }) => {
    await toTheExercise(page, app);
    await toTheHole(page);
    const child = await steer(page);
    await button(child, 'Stop the clock and take the hands away').click();
    const note = page.getByRole('dialog', { name: 'The instructor has stopped the clock.' });
    await expect(note).toBeVisible();
    await child.close();
    await expect(note).toContainText('The steering window is closed.');
    await note.getByRole('button', { name: 'Go on without it' }).click();
    await expect(note).toHaveCount(0);
    await expect(page.getByText('The steering window is closed.').first()).toBeVisible();
    await button(page, 'Close this note').click();
    const again = await steer(page);
    await page.close();
    await expect(again.getByRole('main').getByText('The first window is closed or does not answer.')).toBeVisible();
    await expect(button(again, 'Stop the clock and take the hands away')).toBeDisabled();
  });
}

test('the ground is shown in the first window and covered again, and the run is no pass', async ({ page }) => {
  await toTheExercise(page);
  await toTheHole(page);
  const child = await steer(page);
  await expect(child.getByRole('list').filter({ hasText: /^0 to / })).toBeVisible();
  const drawn = page.getByRole('region', { name: 'The ground, the hole and the pit' });
  await expect(drawn.getByText(/silty sand|coarse sand|medium sand|fine sand/)).toHaveCount(0);
  await button(child, 'Show the true ground in the first window').click();
  await expect(page.getByText('The instructor shows the true ground.')).toBeVisible();
  await expect(drawn.getByText(/sand|silt|clay/).first()).toBeAttached();
  await button(child, 'Show the true ground in the first window').click();
  await expect(page.getByText('The instructor shows the true ground.')).toHaveCount(0);
  await expect(drawn.getByText(/silty sand|coarse sand|medium sand|fine sand/)).toHaveCount(0);
  const file = await keptRun(page);
  const shown = file.log.filter(([, action]) => action === 'useHint').map(([, , payload]) => payload);
  expect(shown).toEqual([
    { hint: 'steering', level: 1 },
    { hint: 'ground', level: 3 },
  ]);
});

test('the view for the wall has large letters and no hands; the clock is run from the second window', async ({
  page,
}) => {
  await toTheExercise(page);
  await toTheHole(page);
  const child = await steer(page);
  const letter = (): Promise<string> => page.evaluate(() => getComputedStyle(document.documentElement).fontSize);
  expect(await letter()).toBe('16px');
  await button(child, 'View for the wall').click();
  await expect(button(page, 'Back to the hands')).toBeVisible();
  expect(await letter()).toBe('24px');
  await expect(page.getByRole('button', { name: /^Prime/ })).toHaveCount(0);
  await page.keyboard.press('o');
  await button(child, '20 times true speed').click();
  await expect.poll(() => jobTime(page)).toBeGreaterThan(5);
  await button(child, 'Pause').click();
  await button(page, 'Back to the hands').click();
  await expect(page.getByRole('button', { name: /^Prime/ })).toBeVisible();
  expect(await letter()).toBe('16px');
  await expect(button(child, 'View for the wall')).toHaveAttribute('aria-pressed', 'false');
  expect((await keptRun(page)).log.some(([, action]) => action === 'prime')).toBe(false);
});

test('a run that is judged and not live says beforehand that steering costs the pass', async ({ page }) => {
  await page.goto(`/${PLAIN}#/`);
  await page.getByRole('button', { name: 'Fish' }).click();
  await page.evaluate(() => (location.hash = '#/brief/first-rods'));
  await toTheHole(page);
  await button(page, 'Menu').click();
  await expect(page.getByText('So this run will not count as a pass.', { exact: false })).toBeVisible();
});

test('the steering window by keys alone, and from an address that no run opened', async ({ page }) => {
  await page.goto(`/${PLAIN}#/steer`);
  await expect(page.getByRole('heading', { level: 1, name: 'This window steers nothing yet' })).toBeVisible();
  await toTheExercise(page);
  await toTheHole(page);
  const child = await steer(page);
  const tabTo = async (name: string): Promise<void> => {
    for (let i = 0; i < 40; i++) {
      if (await button(child, name).evaluate((element) => element === document.activeElement)) return;
      await child.keyboard.press('Tab');
    }
    throw new Error(`no way by Tab to ${name}`);
  };
  await tabTo('Heavy rain');
  await child.keyboard.press('Enter');
  await expect(child.getByText(/^It rains for another/)).toBeVisible();
  // What cannot be done stays in the way of the keys, says why, and does nothing.
  await child.getByRole('button', { name: 'The engine stops' }).focus();
  await child.keyboard.press('Enter');
  await expect(child.getByRole('button', { name: 'The engine stops' })).toHaveAccessibleDescription(/pump/);
  await child.getByRole('radio', { name: 'As it is' }).focus();
  await child.keyboard.press('ArrowRight');
  await expect(child.getByRole('heading', { name: 'The true ground' })).toHaveCount(0);
});
