// The way from the drilled hole to the finished well by taps alone, on a phone: rods out, casing, pack, seal, washing, test,
// chlorine, apron, hand-over. The plan is made already; the board that makes it has tests of its own.
import type { Page } from '@playwright/test';
import { expect, pasteRun, test } from './app';
import { atWork, button } from './work';
import { wellRunFile, type Stage } from './wellRun';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

/** Opens a run of the lesson at a stage of the work. */
async function openAt(page: Page, stage: Stage): Promise<void> {
  await page.goto('/?renderer=canvas#/runs');
  await pasteRun(page, wellRunFile(stage));
  await page.getByRole('button', { name: `Go on with Well ${stage}` }).click({ timeout: 60_000 });
  await atWork(page);
}

const tab = async (page: Page, name: string): Promise<void> => {
  const one = page.getByRole('tab', { name, exact: true });
  if ((await one.getAttribute('aria-selected')) !== 'true') await one.click();
};

const senses = (page: Page) => page.getByRole('region', { name: 'What the crew can tell' });

/** Presses a hand of a group, answers its question and waits until its task is done. */
async function deed(page: Page, group: string, hand: string, answers: readonly string[] = []): Promise<void> {
  await tab(page, group);
  await page.getByRole('button', { name: hand, exact: true }).click();
  for (const answer of answers) {
    const dialog = page.getByRole('dialog');
    const radio = dialog.getByRole('radio', { name: answer, exact: true });
    if (await radio.count()) await radio.first().check();
    else await dialog.getByRole('button', { name: answer, exact: true }).first().click();
  }
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await untilDone(page);
}

/** Waits for the task, and once more where something that happened ended the wait. */
async function untilDone(page: Page): Promise<void> {
  const free = page.getByText('2 hands free');
  const waiting = button(page, 'Stop waiting');
  for (let tries = 0; tries < 20 && !(await free.isVisible()); tries++) {
    await waitFor(page, 'Task done');
    await expect(waiting).toHaveCount(0, { timeout: 60_000 });
  }
  await expect(free).toBeVisible();
}

async function waitFor(page: Page, what: string): Promise<void> {
  await page.getByRole('button', { name: /^Clock:/ }).click();
  await button(page, what).click();
  await expect(button(page, 'Stop waiting')).toHaveCount(0, { timeout: 60_000 });
}

test('a whole well from the last rod to the hand-over, by taps alone', async ({ page, browserName }) => {
  test.skip(browserName !== 'chromium', 'one browser is enough for the longest way');
  test.setTimeout(240_000);
  await openAt(page, 'stopped');
  // The first thing to do stands first.
  await expect(page.getByRole('tab').first()).toHaveText('Well');
  await deed(page, 'Well', 'Pull out rods', ['slow', 'Pull them out']);
  await expect(page.getByRole('tab', { name: 'Stem', exact: true })).toHaveCount(0);
  await deed(page, 'Well', 'Run casing in', ['yes', 'Lower it']);
  await expect(senses(page)).toContainText('at its depth');
  await expect(page.getByRole('tab', { name: 'Fill', exact: true })).toHaveAttribute('aria-selected', 'true');
  await deed(page, 'Fill', 'Pour pack', ['20 L', '0.5 L/min', 'Pour it']);
  await waitFor(page, '5 minutes');
  await deed(page, 'Fill', 'Sound');
  await expect(senses(page)).toContainText(/fill at \d/);
  await deed(page, 'Fill', 'Place seal', ['5 L', '0.5 L/min', 'Place it']);
  await expect(senses(page)).toContainText('not ready');
  await waitFor(page, 'Seals have set');
  await expect(senses(page)).toContainText('ready');
  // The drawing in words, for those who listen.
  const told = page.getByRole('region', { name: 'The ground, the hole and the pit' });
  await expect(told).toContainText(/Casing: set for good, shoe at \d/);
  await expect(told).toContainText(/Pack: 0\.7 to 1\.2 mm/);
  await expect(told).toContainText(/Seal: bentonite granules/);
  await expect(page.getByRole('tab', { name: 'Water', exact: true })).toHaveAttribute('aria-selected', 'true');
  await deed(page, 'Water', 'Wash the well', ['surge', '30 min', 'Wash it']);
  await expect(senses(page)).toContainText(/clear|hazy|cloudy|muddy/);
  await deed(page, 'Water', 'Dip');
  await expect(senses(page)).toContainText(/\d\.\d\d m/);
  await deed(page, 'Water', 'Yield test', ['one', '10 L/min', '30 min', 'Begin the test']);
  await button(page, 'Test plot').click();
  await expect(page.getByRole('dialog')).toContainText(/Pumping drew the water/);
  await page.getByText('Readings as a table').click();
  expect(await page.getByRole('dialog').getByRole('row').count()).toBeGreaterThan(5);
  await button(page, 'Close').click();
  await deed(page, 'Finish', 'Disinfect', ['50 mg/L', '1 h', 'Pour it in']);
  await deed(page, 'Finish', 'Apron, pump', ['suction pump', 'yes', 'Build it']);
  await button(page, 'Hand over').click();
  await expect(page.getByRole('dialog')).toContainText('Nobody drinks before a laboratory has tested the water.');
  await page.getByRole('dialog').getByRole('button', { name: 'Hand over', exact: true }).click();
  await expect(page.getByRole('heading', { name: 'The work here is done.' })).toBeVisible();
});
