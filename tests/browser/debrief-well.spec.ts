// The debrief of a well: the verdict after the asking, both leak times side by side, the well as it stands beside the true ground.
import { writeRunFile } from '../../lessons';
import { answerAll, expect, pasteRun, test } from './app';
import { faults } from './axe';
import { deed, untilLight, wellLesson, wellRunAt } from './wellRun';

function handedOver(): string {
  const run = wellRunAt('built');
  untilLight(run, 3600);
  deed(run, 'handOver');
  return writeRunFile(run, wellLesson(), { who: 'T-01', name: 'A well' });
}

test('the verdict comes in its own step, and the well stands in the section', async ({ page }) => {
  test.setTimeout(150_000);
  await pasteRun(page, handedOver());
  await page.getByRole('button', { name: 'Look back on A well' }).click();
  await expect(page.getByRole('checkbox').first()).toBeVisible({ timeout: 60_000 });
  expect(await page.locator('main').innerHTML()).not.toMatch(/Down along the casing|What stands round/);
  await answerAll(page);
  await page.getByRole('radio', { name: 'The well' }).check();
  await expect(page.getByText('Water in the well, below ground')).toBeVisible();
  await page.getByRole('button', { name: 'The well' }).click();
  await expect(page.getByRole('heading', { level: 2, name: 'The well' })).toBeFocused();
  const seal = page.getByRole('region', { name: 'Dirty water from above' });
  await expect(seal.getByRole('term')).toHaveText(['Down along the casing', 'Down through the ground']);
  await expect(seal.getByRole('definition')).toHaveCount(2);
  for (const name of ['Water', 'Pump', 'Sand and cloudiness', 'Latrine', 'Casing and screen', 'Apron, drain, cap'])
    await expect(page.getByRole('region', { name: new RegExp(`^${name}`) })).toBeVisible();
  await expect(page.getByText(/It took \d+ working hours and \d+ marks/)).toBeVisible();
  expect(await faults(page)).toEqual([]);

  await page.getByRole('button', { name: 'The ground' }).click();
  await expect(page.getByRole('heading', { level: 3, name: 'What stands round the casing' })).toBeVisible();
  for (const width of [1280, 320]) {
    await page.setViewportSize({ width, height: 700 });
    await expect
      .poll(() => page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth))
      .toBe(0);
  }
  expect(await faults(page)).toEqual([]);
  await expect(page.getByRole('link', { name: 'The driller’s record' })).toBeVisible();
});
