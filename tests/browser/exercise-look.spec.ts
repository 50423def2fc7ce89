// How the editor of an exercise holds up: by keys alone, with axe in every theme, in long words and double text at 320 px, under a finger, from disk.
import type { Page } from '@playwright/test';
import { APP_FILE } from '../../src/serve/build.mjs';
import { expect, test } from './app';
import { faults, ONE_IS_ENOUGH, THEMES } from './axe';
import { clipped } from './clipped';
import { MADE, openEditor } from './exercise';

const PARTS = ['words', 'ground', 'site', 'kit', 'faults', 'seen', 'points', 'pool'] as const;

/** Something of everything: layers, a plan, things that go wrong, a budget; and something to mend in each part that can be wrong. */
const FULL: typeof MADE = {
  ...MADE,
  lesson: 'open-well',
  weights: { siteChosen: 50, sealMade: 50 },
  budget_marks: 400,
  ground: {
    by: 'layers',
    layers: [
      { kind: 'lateriticCrust', thickness_m: 1 },
      { kind: 'swellingClay', thickness_m: 3 },
      { kind: 'weatheredRock', thickness_m: 6 },
    ],
    waterTable_m: 3,
    swing_m: 1,
    confinedRise_m: 0,
    perched: true,
    salt: { from_m: 9, salt_gL: 4 },
    seed: 4294967295,
  },
  site: {
    spots: [
      { id: 'A', east_m: 12, north_m: 20, rise_m: 0.4 },
      { id: 'B', east_m: 60, north_m: 20, rise_m: 0 },
    ],
    wells: [{ hamlet: 'Three Carts', east_m: 300, north_m: 30, depth_m: 12, level_m: 3, dryLevel_m: 4 }],
    sources: [{ source: 'refusePit', east_m: 30, north_m: 40, bottom_m: 1.5 }],
    floodLine_m: 0.2,
    overheadLine: { from_m: 10, to_m: 50, height_m: 6 },
  },
  faults: [
    { id: 'rainFills', from: { time_s: 600 }, to: { time_s: 1200 }, rain_mmh: [30, 60] },
    { id: 'helperAway', from: { event: 'casingLanded', delay_s: 60 }, to: { event: 'casingLanded', delay_s: 300 } },
    { id: 'saltyLayer', from: { depth_m: 4 }, to: { depth_m: 5 }, thickness_m: [1, 2], salt_gL: [3, 5] },
  ],
};

/** Opens a part and one row in each of its lists; in long words nothing has a name that a test could know. */
async function unfold(page: Page, part: (typeof PARTS)[number]): Promise<void> {
  await page.locator(`#part-${part}`).click();
  const inside = page.locator(`#part-${part}-fields`);
  await expect(inside).toBeVisible();
  for (const list of await inside.locator('ul, ol').all()) {
    const row = list.locator('button.row').first();
    if ((await row.count()) > 0 && (await row.getAttribute('aria-expanded')) === 'false') await row.click();
  }
  const more = inside.locator('button[aria-controls]');
  for (let i = 0; i < Math.min(2, await more.count()); i++) {
    const one = more.nth(i);
    if ((await one.getAttribute('aria-expanded')) === 'false') await one.click();
  }
}

for (const theme of THEMES) {
  test(`axe finds nothing in the editor, theme ${theme}`, async ({ page, browserName }) => {
    test.skip(browserName !== 'chromium', ONE_IS_ENOUGH);
    test.setTimeout(180_000);
    await page.goto('/#/');
    await page.getByRole('radio', { name: theme }).check();
    await openEditor(page, FULL);
    await expect(page.getByRole('figure')).toBeVisible();
    expect(await faults(page, theme), 'folded').toEqual([]);
    for (const part of PARTS) {
      await unfold(page, part);
      expect(await faults(page, theme), part).toEqual([]);
    }
    await page.locator('#part-kit').click();
    await page.getByRole('textbox', { name: 'Water', exact: false }).first().fill('99999');
    await expect(page.getByRole('heading', { name: 'Not ready to be given out' })).toBeVisible();
    await page.getByRole('button', { name: 'Delete this exercise' }).click();
    expect(await faults(page, theme), 'something to mend, deletion asked').toEqual([]);
  });
}

for (const [what, words, largest] of [
  ['in long, accented words', 'pseudo', false],
  ['at double text size', 'plain', true],
] as const) {
  test(`nothing of the editor is clipped at 320 px ${what}`, async ({ page }) => {
    test.setTimeout(120_000);
    await page.setViewportSize({ width: 320, height: 640 });
    await page.goto('/#/');
    if (largest) await page.getByRole('radio', { name: 'Double' }).check();
    await openEditor(page, FULL, words);
    await expect(page.getByRole('figure')).toBeVisible();
    expect(await clipped(page), 'folded').toEqual([]);
    for (const part of PARTS) {
      await unfold(page, part);
      // The height beside a peg of the plan stands out over its button: nothing cuts it off.
      const cut = (await clipped(page)).filter((one) => !one.startsWith('BUTTON.spot'));
      expect(cut, part).toEqual([]);
    }
  });
}

test('every button and field of the editor is at least 48 px high on a phone', async ({ page }) => {
  await page.setViewportSize({ width: 320, height: 640 });
  await openEditor(page, FULL);
  for (const part of PARTS) {
    await unfold(page, part);
    const small = await page.evaluate(() =>
      [
        ...document.querySelectorAll<HTMLElement>(
          'button:not(.term), .button, summary, textarea, input, select, label:has(input)',
        ),
      ]
        .filter((one) => one.checkVisibility() && !one.closest('.unseen') && !one.matches('label input'))
        .filter((one) => one.getBoundingClientRect().height < 47.5)
        .map((one) => `${one.textContent?.trim()} ${one.getBoundingClientRect().height}`),
    );
    expect(small, part).toEqual([]);
  }
});

/** Presses Tab until something of that role and name has the focus. */
async function tabTo(
  page: Page,
  role: 'button' | 'link' | 'textbox' | 'radio' | 'combobox' | 'checkbox',
  name: RegExp,
): Promise<void> {
  const wanted = page.getByRole(role, { name }).first();
  await expect(wanted).toBeVisible();
  for (let i = 0; i < 150; i++) {
    await page.keyboard.press('Tab');
    if (await wanted.evaluate((one) => one === document.activeElement)) return;
  }
  throw new Error(`${role} ${name} is not reached by Tab`);
}

test('by keys alone: made, a layer laid thicker, something added that goes wrong, points mended, given out', async ({
  page,
}) => {
  await page.goto('/#/class');
  await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
  await tabTo(page, 'combobox', /^Which lesson/);
  await page.keyboard.type('The first');
  await tabTo(page, 'button', /^Make it$/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: 'The first rods' })).toBeFocused();

  await tabTo(page, 'button', /^Ground As in the lesson/);
  await page.keyboard.press('Enter');
  await tabTo(page, 'radio', /^The lesson/);
  await page.keyboard.press('ArrowDown');
  await page.keyboard.press('ArrowDown');
  await expect(page.getByRole('radio', { name: /^Layers by hand/ })).toBeChecked();
  await tabTo(page, 'textbox', /^How thick/);
  const thick = page.getByRole('textbox', { name: 'How thick' });
  const before = Number(await thick.inputValue());
  await page.keyboard.press('ArrowUp');
  await page.keyboard.press('PageUp');
  await expect(thick).toHaveValue(String(Math.round((before + 1.1) * 100) / 100));

  await tabTo(page, 'button', /^What goes wrong/);
  await page.keyboard.press('Enter');
  await tabTo(page, 'button', /^Add it$/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('button', { name: /^1\. The pump stops/ })).toBeVisible();

  await tabTo(page, 'button', /^Points 100 of 100/);
  await page.keyboard.press('Enter');
  await tabTo(page, 'textbox', /^Additives, in all/);
  await page.keyboard.press('ArrowDown');
  await tabTo(page, 'textbox', /^Points to pass/);
  await page.keyboard.press('Shift+Tab');
  for (let i = 0; i < 60; i++) {
    if (await page.getByRole('button', { name: 'Spread evenly' }).evaluate((one) => one === document.activeElement))
      break;
    await page.keyboard.press('Shift+Tab');
  }
  await page.keyboard.press('Enter');
  await expect(page.getByRole('region', { name: 'Points', exact: true })).toContainText('That is right.');
  await tabTo(page, 'link', /^Give it out$/);
  await page.keyboard.press('Enter');
  await expect(page.getByRole('heading', { level: 1, name: 'Give out an exercise' })).toBeFocused();
});

test('works from the one file opened from disk: laid, tried by crews in a worker, kept', async ({ page }) => {
  test.setTimeout(120_000);
  const onDisk = new URL(`../../dist/${APP_FILE}`, import.meta.url).href;
  await page.goto(`${onDisk}#/class`);
  await page.getByRole('combobox', { name: 'Which lesson it starts from' }).selectOption('The first rods');
  await page.getByRole('button', { name: 'Make it' }).click();
  await page.locator('#part-ground').click();
  await page.getByRole('radio', { name: /^Layers by hand/ }).check();
  await expect(page.getByRole('figure')).toBeVisible();
  await page.getByRole('button', { name: 'Let them try it' }).click();
  await expect(page.getByText(/^Points of the careful crew: /)).toBeVisible({ timeout: 90_000 });
  await page.reload();
  await expect(page.getByText(/^Points of the careful crew: /)).toBeVisible();
});

test('where the browser has no workers, the page itself lets the crews try, and stays alive', async ({ page }) => {
  test.setTimeout(120_000);
  await page.addInitScript(() => Reflect.deleteProperty(globalThis, 'Worker'));
  await openEditor(page);
  await page.getByRole('button', { name: 'Let them try it' }).click();
  await expect(page.getByRole('progressbar')).toBeVisible();
  await page.locator('#part-words').click();
  await page.getByRole('textbox', { name: 'Title' }).fill('Meanwhile');
  await expect(page.getByRole('heading', { level: 1, name: 'Meanwhile' })).toBeVisible();
  await expect(page.getByText(/^Points of the careful crew: /)).toBeVisible({ timeout: 90_000 });
});
