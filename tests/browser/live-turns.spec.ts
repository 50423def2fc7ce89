// Two to four people take turns at one screen.
import { replayFile, sharesOf } from '../../lessons';
import { answerAll, expect, test } from './app';
import { keptRun, sitDown, toTheExercise, toTheHole } from './liveRun';
import { atWork, button } from './work';

test.describe('turns at one screen', () => {
  test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

  test('three take seats by taps, are asked to change, and the debrief tells who did what', async ({ page }) => {
    test.setTimeout(120_000);
    await toTheExercise(page);
    await sitDown(page, 'Three', 'After 10 min on the job clock');
    await page.getByLabel('Logger', { exact: true }).selectOption({ label: 'T-12' });
    await toTheHole(page);
    const turns = page.getByRole('region', { name: 'Whose turn it is' });
    await expect(turns).toContainText(/Driller\s*Fish\s*Pump hand\s*Bucket\s*Logger\s*T-12/);
    await page.getByRole('button', { name: /^Prime/ }).tap();
    await expect(turns.getByText('Time to change?')).toHaveCount(0);
    await page.getByRole('button', { name: /^Clock: / }).tap();
    await button(page, '15 minutes').tap();
    await expect(turns.getByText('Time to change?')).toBeVisible();
    await turns.getByRole('button', { name: 'Hand over' }).tap();
    await expect(turns).toContainText(/Driller\s*Bucket\s*Pump hand\s*T-12\s*Logger\s*Fish/);
    await expect(turns.getByText('Time to change?')).toHaveCount(0);
    // Over a new loading everybody keeps their seat.
    await page.reload();
    await atWork(page);
    await expect(turns).toContainText(/Driller\s*Bucket/);
    await button(page, 'Menu').tap();
    await button(page, 'Give up this hole').tap();
    await page
      .getByRole('button', { name: /Give up|give up/ })
      .last()
      .tap();
    await button(page, 'Go to the debrief').tap();
    await answerAll(page);
    const told = page.getByRole('region', { name: 'Who did what' });
    await expect(told.getByRole('row')).toHaveCount(4);
    await expect(told.getByRole('row', { name: /^Bucket/ })).toContainText('1 act');
    const file = await keptRun(page);
    expect(file.log.filter(([, action]) => action === 'takeSeat')).toHaveLength(6);
    const { run } = replayFile(file);
    expect(sharesOf(run!).map(({ who }) => who)).toEqual(['fish', 'bucket', 'T-12']);
  });

  test('one learner alone is asked for nothing', async ({ page }) => {
    await toTheExercise(page);
    await toTheHole(page);
    await expect(page.getByRole('region', { name: 'Whose turn it is' })).toHaveCount(0);
  });
});
