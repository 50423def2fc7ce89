// How the work screen holds up: axe in every theme, little room, large text, long words, either hand.
import type { Page } from '@playwright/test';
import { expect, test } from './app';
import { faults, ONE_IS_ENOUGH, THEMES } from './axe';
import { button, toTheHole } from './work';

for (const theme of THEMES) {
  test(`axe finds nothing at the hole, theme ${theme}`, async ({ page, browserName }) => {
    test.skip(browserName !== 'chromium', ONE_IS_ENOUGH);
    test.setTimeout(180_000);
    await page.setViewportSize({ width: 1280, height: 800 });
    await toTheHole(page, { setting: theme });
    expect(await faults(page, theme), 'all hands').toEqual([]);
    await page.getByRole('button', { name: /^Returns/ }).click();
    await button(page, 'Prime').click();
    await button(page, '60 times true speed').click();
    await expect(page.getByText(/^Priming/)).toHaveCount(0);
    expect(await faults(page, theme), 'under way, a sense told').toEqual([]);
    for (const tab of ['Notebook', 'What happened', 'Looking back']) {
      await page.getByRole('tab', { name: tab }).click();
      expect(await faults(page, theme), tab).toEqual([]);
    }
    for (const key of ['w', 'm', 'l', 'h', '0', 'e']) {
      await page.keyboard.press(key);
      await expect(page.getByRole('dialog')).toBeVisible();
      expect(await faults(page, theme), `question of ${key}`).toEqual([]);
      await page.keyboard.press('Escape');
    }
    await page.setViewportSize({ width: 390, height: 844 });
    for (const tab of ['Stem', 'Tray', 'Book']) {
      await page.getByRole('tab', { name: tab }).click();
      expect(await faults(page, theme), `phone, ${tab}`).toEqual([]);
    }
  });
}

const heightOf = async (page: Page, name: string): Promise<number> => {
  const box = await page.getByRole('region', { name }).boundingBox();
  return box?.height ?? 0;
};

test('at 320 x 640 the drawing keeps 200 px, senses and coaching stay, the hands scroll', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await toTheHole(page);
  expect(await heightOf(page, 'The ground, the hole and the pit')).toBeGreaterThanOrEqual(200);
  for (const name of ['The ground, the hole and the pit', 'What the crew can tell'])
    await expect(page.getByRole('region', { name })).toBeInViewport({ ratio: 1 });
  const coach = page.getByRole('complementary', { name: 'Coaching' });
  await expect(coach).toBeInViewport({ ratio: 1 });
  expect((await coach.boundingBox())?.height).toBeLessThan(60);
  await expect(page.getByRole('tab', { name: 'Stem' })).toBeInViewport({ ratio: 1 });
  // The coach speaks of the pump first, and its tab is in front.
  await page.getByRole('tab', { name: 'Stem' }).click();
  await expect(button(page, 'Turn')).toBeInViewport({ ratio: 1 });
  await expect(button(page, 'Stop drilling')).not.toBeInViewport();
  await button(page, 'Stop drilling').scrollIntoViewIfNeeded();
  await expect(button(page, 'Stop drilling')).toBeInViewport({ ratio: 1 });
  await expect(page.getByRole('region', { name: 'What the crew can tell' })).toBeInViewport({ ratio: 1 });
});

test('every target on a phone is large enough for a thumb', async ({ page }) => {
  await page.setViewportSize({ width: 390, height: 844 });
  await toTheHole(page);
  const small: string[] = [];
  for (const tab of ['Stem', 'Pump', 'Pit', 'Fluid', 'Tray', 'Book']) {
    await page.getByRole('tab', { name: tab }).click();
    for (const one of await page.getByRole('button').or(page.getByRole('tab')).all()) {
      const box = await one.boundingBox();
      if (box && (box.height < 43.9 || box.width < 43.9))
        small.push(`${await one.textContent()} ${box.width}x${box.height}`);
    }
  }
  expect(small).toEqual([]);
});

/** What is wider than the page or cut off inside its own box. */
async function clipped(page: Page): Promise<string[]> {
  return page.evaluate(() => {
    const found: string[] = [];
    const root = document.documentElement;
    if (root.scrollWidth > root.clientWidth) found.push(`page ${root.scrollWidth} > ${root.clientWidth}`);
    for (const element of document.querySelectorAll<HTMLElement>('main *')) {
      if (element.closest('.unseen, svg, canvas, [inert]') || !element.checkVisibility()) continue;
      const style = getComputedStyle(element);
      // One line of coaching is cut on purpose: a tap unfolds it.
      if (style.display === 'inline' || style.overflowX === 'auto' || style.textOverflow === 'ellipsis') continue;
      if (element.clientWidth > 0 && element.scrollWidth > element.clientWidth + 1)
        found.push(`${element.tagName}.${element.className} "${element.textContent?.trim().slice(0, 40)}"`);
    }
    return found;
  });
}

for (const [what, setting, words] of [
  ['in long, accented words', 'Normal', true],
  ['at double text size', 'Double', false],
] as const) {
  test(`nothing is clipped at 320 px ${what}`, async ({ page }) => {
    test.setTimeout(120_000);
    await page.setViewportSize({ width: 320, height: 640 });
    await toTheHole(page, { setting });
    if (words) {
      await page.goto('/?renderer=canvas&words=pseudo#/work');
      await expect(page.getByRole('timer')).toBeVisible();
      await expect(page.getByRole('heading', { level: 1 })).toHaveText(/^⟦.*⟧$/);
    }
    for (const tab of await page.getByRole('tab').all()) {
      await tab.click();
      expect(await clipped(page), (await tab.textContent()) ?? '').toEqual([]);
    }
    for (const key of ['w', 'm', 'l', 'h', '0']) {
      await page.keyboard.press(key);
      await expect(page.getByRole('dialog')).toBeVisible();
      expect(await clipped(page), `question of ${key}`).toEqual([]);
      await page.keyboard.press('Escape');
    }
  });
}

test('for the left hand the hands stand on the left', async ({ page }) => {
  await page.setViewportSize({ width: 1280, height: 800 });
  await toTheHole(page, { setting: 'Left' });
  const hands = await page.getByRole('region', { name: 'Hands' }).boundingBox();
  const drawing = await page.getByRole('region', { name: 'The ground, the hole and the pit' }).boundingBox();
  expect(hands!.x + hands!.width).toBeLessThanOrEqual(drawing!.x + 1);
});
