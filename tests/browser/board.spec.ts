// The planning board: placed by drag, by two taps and by the fields; impossible figures get their sentence; written down by the act.
import { AxeBuilder } from '@axe-core/playwright';
import type { Locator, Page } from '@playwright/test';
import { expect, test } from './app';
import { atTheDrilledHole } from './well';
import { button } from './work';

const field = (page: Page, name: string): Locator => page.getByRole('textbox', { name, exact: false });

async function openBoard(page: Page): Promise<void> {
  await atTheDrilledHole(page);
  const tab = page.getByRole('tab', { name: 'Well', exact: true });
  if (await tab.isVisible()) await tab.click();
  await page.getByRole('button', { name: /^Plan the well/ }).click();
  await expect(page.getByRole('dialog', { name: 'Plan the well' })).toBeVisible();
}

/** Where a depth stands on the screen, read off the figures of the drawing's own ruler; across, over the well. */
async function placeOf(page: Page): Promise<(depth_m: number) => { x: number; y: number }> {
  const drawing = page.getByRole('img', { name: /^Your log and the well you plan/ });
  const marks = await drawing.evaluate((svg) =>
    [...svg.querySelectorAll('text')].flatMap((text) => {
      const { top, height } = text.getBoundingClientRect();
      return /^\d+(\.\d+)?$/.test(text.textContent) ? [{ depth_m: Number(text.textContent), y: top + height / 2 }] : [];
    }),
  );
  const [top, foot] = [marks[0]!, marks.at(-1)!];
  const box = (await drawing.boundingBox())!;
  return (depth_m) => ({
    x: box.x + box.width * 0.55,
    y: top.y + ((depth_m - top.depth_m) * (foot.y - top.y)) / (foot.depth_m - top.depth_m),
  });
}

test('a well is planned with the fields, its figures follow, and it is written down', async ({ page }) => {
  await openBoard(page);
  await expect(page.getByText('No slots: no water comes in.')).toBeVisible();
  await page.getByRole('combobox', { name: 'Pipe' }).selectOption('pvc63');
  await field(page, 'Screen top').fill('4');
  await field(page, 'Screen foot').fill('5,5');
  await field(page, 'Slots side by side').fill('2');
  await expect(page.getByText('Screen 1.5 m long.')).toBeVisible();
  await expect(page.getByText('Your log there: fine sand, 1 m.')).toBeVisible();
  await expect(page.getByText('Your log there: medium sand, 0.5 m.')).toBeVisible();
  // Two slots of 30 mm every 10 mm along 1.5 m: 150 heights.
  await expect(page.getByText(/^300 slots, 3% of the pipe open\.$/)).toBeVisible();
  await expect(page.getByText(/^Gap round the pipe 31 mm, reckoned for the bit’s width\./)).toBeVisible();
  await page.getByRole('combobox', { name: 'Grain' }).selectOption('pack1');
  await page.getByRole('button', { name: 'Pack top: less' }).click({ clickCount: 5 });
  await page.getByRole('combobox', { name: 'Material' }).selectOption('bentonitePellets');
  await field(page, 'Seal foot').fill('3');
  await expect(page.getByText(/^3 m long: \d+ L, \d+ kg\.$/)).toBeVisible();
  await page.getByRole('button', { name: 'Write it down' }).click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await expect(page.getByRole('button', { name: /^Plan the well/ })).toContainText('screen 4 to 5.5 m');
});

test('what cannot be is said at the field and at the button; what is only foolish is allowed', async ({ page }) => {
  await openBoard(page);
  const write = page.getByRole('button', { name: 'Write it down' });
  await field(page, 'Screen foot').fill('9');
  await expect(page.getByText(/^The hole ends at 5\.99 m\.$/)).toBeVisible();
  await expect(field(page, 'Screen foot')).toHaveAttribute('aria-invalid', 'true');
  await expect(write).toHaveAttribute('aria-disabled', 'true');
  await write.click({ force: true });
  await expect(field(page, 'Screen foot')).toBeFocused();
  await field(page, 'Screen foot').fill('');
  await expect(page.getByText('Type a number.')).toBeVisible();
  await field(page, 'Screen foot').fill('5.8');
  await field(page, 'Slot width').fill('-1');
  await expect(page.getByText('It cannot be less than nothing.')).toBeVisible();
  await field(page, 'Slot width').fill('1');
  await field(page, 'From slot to slot').fill('1');
  await expect(page.getByText('From 2 to 500.')).toBeVisible();
  await field(page, 'From slot to slot').fill('10');
  // A seal across the screen.
  await page.getByRole('combobox', { name: 'Material' }).selectOption('clay');
  await field(page, 'Seal foot').fill('5.5');
  await page.getByRole('group').filter({ hasText: 'Handbooks' }).last().click();
  await expect(page.getByText(/^The seal covers part of the screen\./)).toBeVisible();
  await write.click();
  await expect(page.getByRole('dialog')).toHaveCount(0);
});

test('an end of the screen is dragged, and another set by two taps', async ({ page }) => {
  await openBoard(page);
  const at = await placeOf(page);
  const from = at(5.9);
  await page.mouse.move(from.x, from.y);
  await page.mouse.down();
  await page.mouse.move(from.x, at(5).y, { steps: 4 });
  await page.mouse.up();
  await expect(field(page, 'Screen foot')).not.toHaveValue('5.9');
  const foot = Number(await field(page, 'Screen foot').inputValue());
  expect(Math.abs(foot - 5)).toBeLessThanOrEqual(0.2);
  await page.mouse.click(from.x, at(4.8).y);
  await page.mouse.click(from.x, at(2).y);
  const top = Number(await field(page, 'Screen top').inputValue());
  expect(Math.abs(top - 2)).toBeLessThanOrEqual(0.2);
});

test('by keys alone; a plan left open is found again', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await openBoard(page);
  const top = field(page, 'Screen top');
  await top.focus();
  const before = Number(await top.inputValue());
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('PageDown');
  await expect.poll(async () => Number(await top.inputValue())).toBeCloseTo(before - 1.1, 6);
  await page.keyboard.press('Escape');
  await expect(page.getByRole('dialog')).toHaveCount(0);
  await page.getByRole('button', { name: /^Plan the well/ }).click();
  await expect.poll(async () => Number(await top.inputValue())).toBeCloseTo(before - 1.1, 6);
});

for (const [width, height, theme] of [
  [320, 640, 'paper'],
  [390, 844, 'night'],
  [1280, 800, 'sun'],
] as const)
  test(`no fault that a machine can find at ${width} x ${height}, ${theme}`, async ({ page }) => {
    await page.setViewportSize({ width, height });
    await openBoard(page);
    await page.evaluate((name) => (document.documentElement.dataset['theme'] = name), theme);
    await field(page, 'Screen foot').fill('9');
    const { violations } = await new AxeBuilder({ page }).include('main').analyze();
    expect(violations.map(({ id, nodes }) => [id, nodes.map((node) => node.html)])).toEqual([]);
    const wide = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth);
    expect(wide).toBeLessThanOrEqual(0);
    await expect(button(page, 'Write it down')).toBeInViewport();
  });
