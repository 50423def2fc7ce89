// The driller's record: filled in at the hole, read on any screen, printed on exactly one page of A4 and of Letter with nothing cut off.
import type { Page } from '@playwright/test';
import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { BLANK_SHEET, CSV_COLUMNS, type RecordSheet } from '../../lessons';
import { RECORD_FIELDS } from '../../sim';
import { FULL_SHEET } from '../lessons/record/fullSheet';
import { expect, goTo, pasteRun, savedText, test } from './app';
import { faults, THEMES } from './axe';
import { bundleForPage } from './bundle';
import { wellRunFile } from './wellRun';

const SIZES = [
  [1280, 800],
  [390, 844],
  [320, 640],
] as const;
/** The system's Firefox takes no order to print, nor to show a page as if printed. */
const ONLY_CHROMIUM_PRINTS = 'printed in Chromium';
const PAPERS = ['A4', 'Letter'] as const;
const at = (path: string): string => fileURLToPath(new URL(`../../${path}`, import.meta.url));

/** Pages of a PDF: its objects of type Page, the list of pages not among them. */
async function pagesOf(page: Page, format: (typeof PAPERS)[number]): Promise<number> {
  const pdf = (await page.pdf({ format })).toString('latin1');
  return pdf.match(/\/Type\s*\/Page(?!s)/g)?.length ?? 0;
}

/** What the page of paper cuts off: parts that end beyond its foot or its right edge, and words beyond their own box. */
async function cutOff(page: Page): Promise<string[]> {
  // As wide as the paper between its margins, so that the page on the screen is the page that is printed.
  await page.setViewportSize({ width: 720, height: 1000 });
  await page.emulateMedia({ media: 'print' });
  const found = await page.evaluate(() => {
    const paper = document.querySelector('.sheet')!.getBoundingClientRect();
    const wrong: string[] = [];
    for (const part of document.querySelectorAll<Element>('.sheet *')) {
      if (!part.checkVisibility() || part.closest('clipPath, defs, g[clip-path]')) continue;
      const box = part.getBoundingClientRect();
      if (box.width === 0 || box.height === 0) continue;
      const over = box.bottom > paper.bottom + 1 || box.right > paper.right + 1 || box.left < paper.left - 1;
      if (over) wrong.push(`${part.tagName} ${part.textContent?.trim().slice(0, 30)}`);
      if (part.scrollWidth > part.clientWidth + 1 && part.clientWidth > 0 && part instanceof HTMLElement)
        wrong.push(`wide: ${part.tagName} ${part.textContent?.trim().slice(0, 30)}`);
    }
    return wrong;
  });
  await page.emulateMedia({ media: null });
  return found;
}

/** Two words of a drawing that lie over one another. */
const coveredWords = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const words = [...document.querySelectorAll('.drawing text')].filter((word) => word.checkVisibility());
    const boxes = words.map((word) => ({ said: word.textContent ?? '', box: word.getBoundingClientRect() }));
    const wrong: string[] = [];
    boxes.forEach((one, i) => {
      for (const other of boxes.slice(i + 1)) {
        const across = Math.min(one.box.right, other.box.right) - Math.max(one.box.left, other.box.left);
        const down = Math.min(one.box.bottom, other.box.bottom) - Math.max(one.box.top, other.box.top);
        // Boxes of text are taller than its letters.
        if (across > 1 && down > 0.35 * one.box.height) wrong.push(`${one.said} / ${other.said}`);
      }
    });
    return wrong;
  });

const KINDS = ['clay', 'silt', 'fineSand', 'coarseSand', 'gravel', 'peat'] as const;
const LONG = 'All that somebody wants to have written down about this well, to the very last letter that fits. '.repeat(
  2,
);

/** As much as a record can hold: every field to its last letter, forty layers, many fills, samples and mishaps. */
const CROWDED: RecordSheet = {
  ...FULL_SHEET,
  written: Object.fromEntries(RECORD_FIELDS.map((field) => [field, LONG.slice(0, 160)])),
  layers: Array.from({ length: 40 }, (_, i) => ({
    ...FULL_SHEET.layers[0],
    from_m: i * 0.47,
    to_m: (i + 1) * 0.47,
    kind: KINDS[i % KINDS.length],
    secondary: ['silt'],
  })),
  samples: Array.from({ length: 45 }, (_, i) => ({ ...FULL_SHEET.samples[0], sample: i + 1, depth_m: i * 0.42 })),
  noticed: Array.from({ length: 14 }, (_, i) => ({ time_s: i, event: 'returnsLost', depth_m: i })),
  fills: Array.from({ length: 9 }, (_, i) => ({
    ...FULL_SHEET.fills[i % 3],
    from_m: Math.max(0, 17 - 2 * i),
    to_m: 19 - 2 * i,
  })),
};
/** The widest letters there are, without a place to break. */
const WIDE: RecordSheet = {
  ...CROWDED,
  written: Object.fromEntries(RECORD_FIELDS.map((field) => [field, 'W'.repeat(160)])),
};

let code: Promise<string> | undefined;

async function showAlone(page: Page, sheet: RecordSheet): Promise<void> {
  code ??= bundleForPage('tests/browser/record/mount.ts', 'paper');
  await page.setContent('<!doctype html><html lang="en"><body></body></html>');
  const css = ['theme', 'base'].map((name) => readFileSync(at(`src/styles/${name}.css`), 'utf8')).join('\n');
  await page.addStyleTag({ content: `${css}\n@page { margin: 10mm }` });
  await page.addScriptTag({ content: await code });
  await page.evaluate((shown) => (window as unknown as { paper: { show(s: unknown): void } }).paper.show(shown), sheet);
  await expect(page.getByRole('heading', { name: 'Driller’s record' })).toBeVisible();
}

for (const [name, sheet] of [
  ['a full record', FULL_SHEET],
  ['a record as crowded as can be', CROWDED],
  ['one of the widest letters', WIDE],
  ['the blank form', BLANK_SHEET],
] as const) {
  test(`${name} is one page of A4 and of Letter, nothing cut off`, async ({ page, browserName }) => {
    test.skip(browserName !== 'chromium', ONLY_CHROMIUM_PRINTS);
    await showAlone(page, sheet);
    for (const paper of PAPERS) expect(await pagesOf(page, paper), paper).toBe(1);
    expect(await cutOff(page)).toEqual([]);
  });
}

test('on paper no word of the section covers another', async ({ page, browserName }) => {
  test.skip(browserName !== 'chromium', ONLY_CHROMIUM_PRINTS);
  await showAlone(page, FULL_SHEET);
  await page.setViewportSize({ width: 720, height: 1000 });
  await page.emulateMedia({ media: 'print' });
  expect(await coveredWords(page)).toEqual([]);
});

async function sideways(page: Page): Promise<number> {
  return page.evaluate(() => document.documentElement.scrollWidth - document.documentElement.clientWidth);
}

test('the blank form is found at the start, reads on every screen and prints alone', async ({ page, browserName }) => {
  await goTo(page, '');
  await page.getByRole('link', { name: 'Blank driller’s record' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Blank driller’s record' })).toBeVisible();
  for (const [width, height] of SIZES) {
    await page.setViewportSize({ width, height });
    expect(await sideways(page), `${width}`).toBe(0);
  }
  for (const theme of THEMES) {
    await goTo(page, '');
    await page.getByRole('radio', { name: theme, exact: true }).check();
    await goTo(page, 'form');
    await expect(page.getByRole('heading', { level: 2, name: 'Driller’s record' })).toBeVisible();
    expect(await faults(page, theme), theme).toEqual([]);
  }
  await expect(page.getByText('NOT A REAL WELL')).toHaveCount(0);
  if (browserName !== 'chromium') return;
  for (const paper of PAPERS) expect(await pagesOf(page, paper), paper).toBe(1);
  await page.emulateMedia({ media: 'print' });
  await expect(page.getByRole('navigation')).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Print this page' })).toBeHidden();
});

test('the record of a well: written at the hole, shown, printed, kept as files', async ({ page, browserName }) => {
  test.setTimeout(150_000);
  await pasteRun(page, wellRunFile('built'));
  await page.getByRole('button', { name: 'Go on with Well built' }).click();
  await expect(page.getByRole('timer')).toBeVisible({ timeout: 60_000 });
  await page.getByRole('button', { name: 'Menu' }).click();
  await page.getByRole('dialog').getByRole('button', { name: 'Driller’s record' }).click();
  const place = page.getByRole('textbox', { name: 'Place' });
  await place.fill('Reedbank, by the ferry path');
  await page.getByRole('textbox', { name: 'Remarks' }).fill('=1+1');
  await page.getByRole('button', { name: 'Show the page' }).click();

  await expect(page.getByRole('heading', { level: 1, name: 'Driller’s record' })).toBeVisible();
  const sheet = page.getByRole('article', { name: 'Driller’s record' });
  await expect(sheet).toContainText('Reedbank, by the ferry path');
  await expect(sheet).toContainText('SIMULATED PRACTICE HOLE');
  await expect(sheet).toContainText('PVC 63 × 3.0 mm');
  await expect(sheet).toContainText('No one drinks before a laboratory has tested the water.');
  expect(await faults(page)).toEqual([]);
  for (const [width, height] of SIZES) {
    await page.setViewportSize({ width, height });
    expect(await sideways(page), `${width}`).toBe(0);
  }
  if (browserName === 'chromium') {
    for (const paper of PAPERS) expect(await pagesOf(page, paper), paper).toBe(1);
    expect(await cutOff(page)).toEqual([]);
  }

  const csv = await savedText(page, () => page.getByRole('button', { name: 'Save as CSV table' }).click());
  expect(csv.name).toMatch(/^record-open-well-.*\.csv$/);
  const lines = csv.text.split('\r\n');
  expect(lines[0]).toBe(CSV_COLUMNS.join(','));
  expect(lines).toContain(`written,,,,remarks,,,,,'=1+1`);
  const json = await savedText(page, () => page.getByRole('button', { name: 'Save as JSON' }).click());
  const kept = JSON.parse(json.text) as RecordSheet;
  expect(kept).toMatchObject({ format: 'hand-jetting-record', version: 1, simulated: true, lesson: 'open-well' });
  expect(kept.written).toMatchObject({ place: 'Reedbank, by the ferry path', remarks: '=1+1' });
  expect(kept.casing?.kind).toBe('pvc63');
  expect(kept.test?.rows.length).toBeGreaterThan(3);

  await page.getByRole('link', { name: 'Back to the hole' }).click();
  await expect(page.getByRole('timer')).toBeVisible({ timeout: 30_000 });
});

test('with no run there is a sentence and a way back', async ({ page }) => {
  await goTo(page, 'record');
  await expect(page.getByRole('heading', { level: 1, name: 'No run is open' })).toBeVisible();
});
