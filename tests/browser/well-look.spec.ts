// How the work screen of the well holds up: axe in each theme on one screen, long words on a small phone.
import type { Page } from '@playwright/test';
import { expect, pasteRun, test } from './app';
import { faults } from './axe';
import { atWork, button } from './work';
import { wellRunFile } from './wellRun';

/** What is wider than the page or cut off inside its own box. */
async function clipped(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    const root = document.documentElement;
    if (root.scrollWidth > root.clientWidth) found.push(`page ${root.scrollWidth} > ${root.clientWidth}`);
    for (const element of document.querySelectorAll<HTMLElement>('main *')) {
      if (element.closest('.unseen, svg, canvas, [inert]') || !element.checkVisibility()) continue;
      const style = getComputedStyle(element);
      if (style.display === 'inline' || style.overflowX === 'auto' || style.textOverflow === 'ellipsis') continue;
      if (element.clientWidth > 0 && element.scrollWidth > element.clientWidth + 1)
        found.push(`${element.tagName}.${element.className} "${element.textContent?.trim().slice(0, 40)}"`);
    }
    return found;
  });
}

test('the tested well: axe finds nothing in any theme, and nothing is clipped at 320 px in long words', async ({
  page,
  browserName,
}) => {
  test.skip(browserName !== 'chromium', 'colours and words are the same in every browser');
  test.setTimeout(240_000);
  await page.setViewportSize({ width: 1280, height: 800 });
  await page.goto('/?renderer=canvas#/runs');
  await pasteRun(page, wellRunFile('tested'));
  await page.getByRole('button', { name: 'Go on with Well tested' }).click({ timeout: 60_000 });
  await atWork(page);
  await page.getByRole('button', { name: /^Jar/ }).click();
  for (const theme of ['paper', 'night', 'sun']) {
    await page.evaluate((name) => (document.documentElement.dataset['theme'] = name), theme);
    expect(await faults(page), `hands and senses, ${theme}`).toEqual([]);
  }
  await button(page, 'Test plot').click();
  await page.getByText('Readings as a table').click();
  for (const theme of ['sun', 'night', 'paper']) {
    await page.evaluate((name) => (document.documentElement.dataset['theme'] = name), theme);
    expect(await faults(page), `test plot, ${theme}`).toEqual([]);
  }
  await button(page, 'Close').click();

  await page.setViewportSize({ width: 320, height: 640 });
  await page.goto('/?renderer=canvas&words=pseudo#/work');
  await expect(page.getByRole('timer')).toBeVisible({ timeout: 60_000 });
  for (const tab of await page.getByRole('tab').all()) {
    await tab.click();
    expect(await clipped(page), (await tab.textContent()) ?? '').toEqual([]);
  }
  // The questions with the most to set: washing, test, apron; and the plot.
  for (const key of ['v', 't', 'a', 'z']) {
    await page.keyboard.press(key);
    const dialog = page.getByRole('dialog');
    if ((await dialog.count()) === 0) continue;
    expect(await clipped(page), `question of ${key}`).toEqual([]);
    await page.keyboard.press('Escape');
  }
});
