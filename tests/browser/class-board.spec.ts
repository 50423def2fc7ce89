// The class board: results taken in, played again and judged; what is taken out of it; deleting; all of it from disk.
import type { Page } from '@playwright/test';
import { parse } from 'csv-parse/sync';
import { packResult, resultParts, writeResult } from '../../lessons';
import { squaresOf } from '../../src/classroom/qr/squares';
import { APP_FILE } from '../../src/serve/build.mjs';
import { expect, savedText, test } from './app';
import { handedIn, openBoard, playedAgain, resultFrom, takeIn } from './class-results';

const rowsOf = (page: Page, name: string) =>
  page
    .getByRole('region', { name })
    .getByRole('row')
    .filter({ has: page.getByRole('rowheader') });
const listed = (page: Page, who: string) =>
  rowsOf(page, 'All that was handed in').filter({ has: page.getByRole('rowheader', { name: who, exact: true }) });

/** The words of all that was handed in, by learner. */
async function verdicts(page: Page): Promise<string[]> {
  const rows = await rowsOf(page, 'All that was handed in').all();
  return Promise.all(
    rows.map(async (row) => {
      const [who, verdict] = await Promise.all([
        row.getByRole('rowheader').textContent(),
        row.locator('strong').textContent(),
      ]);
      return `${who} ${verdict}`;
    }),
  );
}

const ALL = [
  'T-01 reproduced',
  'T-01 reproduced',
  'T-02 reproduced',
  'T-02 reproduced',
  'T-03 reproduced',
  'T-04 not reproduced',
  'Fish made with another version',
];

test('results are taken in, played again and judged, and stay when the page is loaded anew', async ({ page }) => {
  await openBoard(page);
  await expect(page.getByText('No result is here yet.')).toBeVisible();
  await takeIn(page, handedIn());
  await expect(page.getByText('7 results are taken in.')).toBeVisible();
  await expect(page.getByText('1 was here already.')).toBeVisible();
  await expect(page.getByText('broken.json: The result breaks off before its end. Copy it again.')).toBeVisible();
  expect((await verdicts(page)).sort()).toEqual([...ALL].sort());
  await expect(listed(page, 'T-04')).toContainText('The file was altered.');
  await expect(listed(page, 'Fish')).toContainText('0.0.1');
  await expect(listed(page, 'T-01').filter({ hasText: 'the same result once more' })).toHaveCount(1);
  await expect(listed(page, 'T-02').filter({ hasText: 'an earlier attempt' })).toHaveCount(1);
  // Only the latest attempt of each learner counts.
  await expect(rowsOf(page, 'How it went, by learner')).toHaveCount(3);
  const second = rowsOf(page, 'How it went, by learner').filter({ hasText: 'T-02' });
  await expect(second).toContainText('passed');
  await expect(page.getByRole('region', { name: 'Who needs which drill' })).toContainText('T-03');
  await expect(page.getByRole('region', { name: 'What cost most' }).getByRole('listitem').first()).toContainText(
    'of 3 learners lost',
  );
  await page.reload();
  await playedAgain(page, ALL.length);
  expect((await verdicts(page)).sort()).toEqual([...ALL].sort());
});

test('results come by drop, by pasted letters and text, several at once; the same again is noticed', async ({
  page,
}) => {
  await openBoard(page);
  const dropped = await page.evaluateHandle(
    (files) => {
      const data = new DataTransfer();
      for (const { name, text } of files) data.items.add(new File([text], name, { type: 'application/json' }));
      return data;
    },
    handedIn().slice(0, 2),
  );
  await page.dispatchEvent('body', 'drop', { dataTransfer: dropped });
  await expect(page.getByText('2 results are taken in.')).toBeVisible();
  await page.getByText('Or paste letters or the text of a file').click();
  const field = page.getByRole('textbox', { name: 'Letters or text of a result' });
  await field.fill(`${packResult(resultFrom('green', 3))}\n${packResult(resultFrom('careful', 2, 2))}\n`);
  await page.getByRole('button', { name: 'Take these in' }).click();
  await expect(page.getByText('2 results are taken in.')).toBeVisible();
  await expect(field).toHaveValue('');
  await field.fill('this is a letter to the class');
  await page.getByRole('button', { name: 'Take these in' }).click();
  await expect(page.getByText(/^pasted text: This is no result/)).toBeVisible();
  await playedAgain(page);
  await expect(rowsOf(page, 'All that was handed in')).toHaveCount(4);
});

/** Pictures of QR codes, as a camera takes them straight on: made in the page from the dark squares. */
async function photosOf(page: Page, texts: readonly string[]): Promise<Buffer[]> {
  const photos: Buffer[] = [];
  for (const text of texts) {
    const squares = (await squaresOf(text))!;
    const dark = Array.from({ length: squares.side }, (_, row) =>
      Array.from({ length: squares.side }, (_, column) => squares.dark(row, column)),
    );
    const address = await page.evaluate((rows) => {
      const [RIM, SQUARE_px] = [4, 5];
      const canvas = document.createElement('canvas');
      canvas.width = canvas.height = (rows.length + 2 * RIM) * SQUARE_px;
      const context = canvas.getContext('2d')!;
      context.fillStyle = '#fff';
      context.fillRect(0, 0, canvas.width, canvas.height);
      context.fillStyle = '#000';
      rows.forEach((row, y) =>
        row.forEach((isDark, x) => {
          if (isDark) context.fillRect((x + RIM) * SQUARE_px, (y + RIM) * SQUARE_px, SQUARE_px, SQUARE_px);
        }),
      );
      return canvas.toDataURL('image/png');
    }, dark);
    photos.push(Buffer.from(address.split(',')[1]!, 'base64'));
  }
  return photos;
}

test('results come by photos of QR codes; of a result in parts the missing ones are asked for', async ({ page }) => {
  await openBoard(page);
  const letters = packResult(resultFrom('careful', 1));
  const parts = resultParts(letters, Math.ceil(letters.length * 0.7))!;
  expect(parts.length).toBeGreaterThan(1);
  const photos = await photosOf(page, parts);
  const input = page.locator('input[data-take=photos]');
  const take = (list: readonly Buffer[]): Promise<void> =>
    input.setInputFiles(list.map((buffer, i) => ({ name: `photo ${i}.png`, mimeType: 'image/png', buffer })));
  await take(photos.slice(1));
  await expect(page.getByText(`Of a result in ${parts.length} codes ${parts.length - 1}`)).toBeVisible();
  await take(photos.slice(0, 1));
  await expect(page.getByText('1 result is taken in.')).toBeVisible();
  await playedAgain(page);
  await expect(listed(page, 'T-01')).toContainText('reproduced');
  await take([Buffer.from(photos[0]!.subarray(0, 40))]);
  await expect(page.getByText('photo 0.png: No QR code was found in the picture.')).toBeVisible();
});

test('one class is shown at a time, for signs are given anew in each', async ({ page }) => {
  await openBoard(page);
  const other = { ...resultFrom('green', 3), who: 'T-01', classCode: 'ZZ9' };
  await takeIn(page, [...handedIn().slice(0, 2), { name: 'other.json', text: writeResult(other) }]);
  await expect(rowsOf(page, 'How it went, by learner')).toHaveCount(2);
  await page.getByRole('combobox', { name: 'Which class' }).selectOption({ label: 'ZZ9: 1 result' });
  await expect(rowsOf(page, 'How it went, by learner')).toHaveCount(1);
  await expect(listed(page, 'T-01')).toContainText('not the ground of this learner and attempt');
});

interface Kept {
  readonly format: string;
  readonly version: number;
  readonly results: readonly { readonly who: string; readonly verdict: string; readonly score: number | null }[];
}

test('the class is kept as a table, as JSON and as statements', async ({ page }) => {
  await openBoard(page);
  await takeIn(page, handedIn());
  const csv = await savedText(page, () => page.getByRole('button', { name: 'Save as CSV table' }).click());
  expect(csv.name).toMatch(/^class-B7-exercise-loop1-\d{4}-\d\d-\d\d\.csv$/);
  const rows = parse<Record<string, string>>(csv.text, { bom: true, columns: true, record_delimiter: '\r\n' });
  expect(rows.map(({ learner, verdict }) => `${learner} ${verdict}`).sort()).toEqual(
    [
      'T-01 reproduced',
      'T-01 reproduced',
      'T-02 reproduced',
      'T-02 reproduced',
      'T-03 reproduced',
      'T-04 notReproduced',
      'fish otherVersion',
    ].sort(),
  );
  expect(rows.filter(({ counts }) => counts === 'yes').map(({ learner, attempt }) => `${learner}/${attempt}`)).toEqual([
    'T-01/1',
    'T-02/2',
    'T-03/1',
  ]);
  const claimed = resultFrom('careful', 1).claimed.score;
  expect(Number(rows.find(({ learner }) => learner === 'T-01')!['score'])).toBe(claimed);
  const json = await savedText(page, () => page.getByRole('button', { name: 'Save as JSON' }).click());
  const kept = JSON.parse(json.text) as Kept;
  expect(kept).toMatchObject({ format: 'hand-jetting-class', version: 1 });
  expect(kept.results.length).toBe(rows.length);
  const xapi = await savedText(page, () => page.getByRole('button', { name: 'Save as xAPI statements' }).click());
  const statements = JSON.parse(xapi.text) as { actor: { account: { name: string } } }[];
  // Four results that are reproduced and no repeats, all finished: two statements each.
  expect(statements.map(({ actor }) => actor.account.name).sort()).toEqual(
    ['T-01', 'T-02', 'T-02', 'T-03'].flatMap((who) => [who, who]),
  );
});

test('all results are deleted after a question, and are gone for good', async ({ page }) => {
  await openBoard(page);
  await takeIn(page, handedIn().slice(0, 3));
  await page.getByRole('button', { name: 'Delete all results' }).click();
  await expect(page.getByText('3 results of this exercise go for good.')).toBeVisible();
  await expect(page.getByRole('button', { name: 'Keep them' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(rowsOf(page, 'All that was handed in')).toHaveCount(3);
  await page.getByRole('button', { name: 'Delete all results' }).click();
  await page.getByRole('button', { name: 'Delete for good' }).click();
  await expect(page.getByText('No result is here yet.')).toBeVisible();
  await page.reload();
  await expect(page.getByText('No result is here yet.')).toBeVisible();
});

test('the one file opened from disk does it all with the network cut', async ({ page, context }) => {
  const disk = new URL(`../../dist/${APP_FILE}`, import.meta.url).href;
  await context.setOffline(true);
  await openBoard(page, disk);
  await takeIn(page, handedIn());
  expect((await verdicts(page)).sort()).toEqual([...ALL].sort());
  await page.reload();
  await playedAgain(page, ALL.length);
  await expect(rowsOf(page, 'How it went, by learner')).toHaveCount(3);
});
