// How the class board looks and holds up: the wall, axe in every theme, nothing clipped at 320 px in long words or double text, large targets.
import type { Page } from '@playwright/test';
import { writeResult } from '../../lessons';
import { expect, test } from './app';
import { faults, ONE_IS_ENOUGH, THEMES } from './axe';
import { ownExercise } from './class';
import { handedIn, openBoard, playedAgain, resultFrom, takeIn, TASK, type HandedIn } from './class-results';
import { clipped } from './clipped';

test('the wall shows what cost most and who needs what, by keys, with no points of single learners', async ({
  page,
}) => {
  await openBoard(page);
  const stranger = { ...resultFrom('green', 3), who: 'Amina', attempt: 3 };
  await takeIn(page, [...handedIn(), { name: 'stranger.json', text: writeResult(stranger) }]);
  const open = page.getByRole('button', { name: 'Show on the wall' });
  await open.focus();
  await page.keyboard.press('Enter');
  const wall = page.getByRole('dialog', { name: 'What cost us most' });
  await expect(wall).toBeVisible();
  await expect(wall.getByRole('listitem').first()).toContainText('of 4 learners');
  await page.keyboard.press('ArrowRight');
  await expect(page.getByRole('dialog', { name: 'How the class did' })).toContainText('% of the points');
  await page.keyboard.press('ArrowRight');
  const drills = page.getByRole('dialog', { name: 'What to practise next' });
  await expect(drills).toContainText('T-03');
  await expect(drills).toContainText('another sign');
  await expect(drills).not.toContainText('Amina');
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(open).toBeFocused();
});

for (const theme of THEMES) {
  test(`axe finds nothing on the board and on the wall, theme ${theme}`, async ({ page, browserName }) => {
    test.skip(browserName !== 'chromium', ONE_IS_ENOUGH);
    test.setTimeout(120_000);
    await page.goto('/#/');
    await page.getByRole('radio', { name: theme, exact: true }).check();
    await openBoard(page);
    expect(await faults(page, theme), 'empty').toEqual([]);
    await takeIn(page, handedIn());
    expect(await faults(page, theme), 'board').toEqual([]);
    await page.setViewportSize({ width: 390, height: 844 });
    expect(await faults(page, theme), 'board as cards').toEqual([]);
    await page.getByRole('button', { name: 'Delete all results' }).click();
    expect(await faults(page, theme), 'deleting asked').toEqual([]);
    await page.getByRole('button', { name: 'Keep them' }).click();
    await page.getByRole('button', { name: 'Show on the wall' }).click();
    for (const name of ['What cost us most', 'How the class did', 'What to practise next']) {
      await expect(page.getByRole('dialog', { name })).toBeVisible();
      expect(await faults(page, theme), name).toEqual([]);
      await page.keyboard.press('ArrowRight');
    }
  });
}

async function boardHolds(page: Page, files: readonly HandedIn[]): Promise<void> {
  await page
    .locator('input[data-take=files]')
    .setInputFiles(files.map(({ name, text }) => ({ name, mimeType: 'text/plain', buffer: Buffer.from(text) })));
  await expect(page.locator('tbody th').first()).toBeVisible({ timeout: 30_000 });
  await playedAgain(page);
  expect(await clipped(page), 'board').toEqual([]);
  await page.locator('button[aria-describedby=wall-is]').click();
  for (let k = 0; k < 3; k++) {
    expect(await clipped(page), `wall ${k}`).toEqual([]);
    await page.keyboard.press('ArrowRight');
  }
  await page.keyboard.press('Escape');
}

test('nothing of the board is clipped at 320 px in long, accented words', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await ownExercise(page, TASK);
  await page.goto(`/?words=pseudo#/board/${TASK.id}`);
  await expect(page.locator('main h1')).toHaveText(/^⟦.*⟧$/);
  await boardHolds(page, handedIn());
});

test('nothing of the board is clipped at 320 px at double text size', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await page.goto('/#/');
  await page.getByRole('radio', { name: 'Double' }).check();
  await openBoard(page);
  await boardHolds(page, handedIn());
});

test('at double text size the tables become cards on a wide screen too', async ({ page }) => {
  await page.goto('/#/');
  await page.getByRole('radio', { name: 'Double' }).check();
  await openBoard(page);
  await boardHolds(page, handedIn());
});

test('every button and field of the board is at least 48 px high on a phone', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await openBoard(page);
  await takeIn(page, handedIn());
  const small = await page.evaluate(() =>
    [...document.querySelectorAll<HTMLElement>('main button, main .button, main a, summary, textarea, input, select')]
      .filter((one) => one.checkVisibility() && !one.closest('.unseen, label') && !one.matches('.unseen'))
      .filter((one) => one.getBoundingClientRect().height < 47.5)
      .map((one) => `${one.textContent?.trim()} ${one.getBoundingClientRect().height}`),
  );
  expect(small).toEqual([]);
});
