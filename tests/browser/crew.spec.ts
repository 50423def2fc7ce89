// Other hands at the hole: the crew before, a careful crew that shows the work, a crew to which the rest is left.
import { createCrew, jobFor, lessonById, startRun, writeRunFile } from '../../lessons';
import { act, sensesOf, step } from '../../sim';
import { expect, goTo, pasteRun, test } from './app';
import { readCautions } from './cautions';
import { atWork, button, jobTime } from './work';

test.use({ viewport: { width: 390, height: 844 } });

test('a careful crew shows the work: each new reason stops the clock, and one can take over', async ({ page }) => {
  await page.goto('/?renderer=canvas#/brief/first-rods');
  await readCautions(page);
  await button(page, 'First watch a careful crew').click();
  await atWork(page);
  const crew = page.getByRole('group', { name: 'A careful crew works' });
  await expect(crew).toContainText('A run that was shown does not count as a pass.');
  const reasons = new Set<string>();
  for (let n = 0; n < 3; n++) {
    const goOn = crew.getByRole('button', { name: 'Go on' });
    await expect(goOn).toBeVisible({ timeout: 30_000 });
    reasons.add(await crew.locator('.why').innerText());
    const time_s = await jobTime(page);
    await page.waitForTimeout(300);
    expect(await jobTime(page), 'the clock stands while one reads').toBe(time_s);
    await goOn.click();
  }
  expect(reasons.size).toBe(3);
  await crew.getByRole('button', { name: 'I take over' }).click();
  await expect(crew).toHaveCount(0);
  await expect(page.getByRole('tab', { name: 'Stem', exact: true })).toBeVisible();
});

test('the crew before works while one waits', async ({ page }) => {
  test.setTimeout(120_000);
  await goTo(page, 'brief/the-screen');
  await readCautions(page);
  await button(page, 'Go to the hole').click();
  const works = page.getByText('The crew before you is still at work.');
  // It has been at work since the briefing was opened, so it may be ready at once.
  await expect(works.or(page.getByRole('timer'))).toBeVisible();
  await expect(page.getByRole('timer')).toBeVisible({ timeout: 60_000 });
  expect(await jobTime(page)).toBeGreaterThan(3600);
});

/** The screen is planned and may be left to the crew now. */
function plannedFile(): string {
  const lesson = lessonById('the-screen')!;
  const run = startRun(lesson, 1);
  const crew = createCrew('careful', jobFor(run, lesson));
  for (let n = 0; n < 7200 && run.state.leaving !== 'offered'; n++) {
    const deed = crew.decide(sensesOf(run));
    if (deed) act(run, deed.action, deed.payload);
    step(run);
  }
  return writeRunFile(run, lesson, { who: 'fish', name: 'Planned' });
}

test('the rest is left to the crew, which finishes the well', async ({ page, browserName }) => {
  test.skip(browserName !== 'chromium', 'one browser is enough for a long way');
  test.setTimeout(180_000);
  await page.goto('/?renderer=canvas#/runs');
  await pasteRun(page, plannedFile());
  await page.getByRole('button', { name: 'Go on with Planned' }).click({ timeout: 60_000 });
  await atWork(page);
  await page.getByRole('tab', { name: 'Well', exact: true }).click();
  await button(page, 'Leave it to the crew').click();
  const crew = page.getByRole('group', { name: 'The crew finishes your work' });
  await crew.getByRole('button', { name: 'Go to the end' }).click();
  await expect(page.getByRole('heading', { name: 'The work here is done.' })).toBeVisible({ timeout: 120_000 });
  await button(page, 'Go to the debrief').click();
  await expect(page.getByRole('heading', { level: 1, name: 'Looking back' })).toBeVisible();
});
