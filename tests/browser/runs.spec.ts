// Saved runs: files in and out, names, deleting, and files that are no runs.
import { openSync, ftruncateSync, writeFileSync, closeSync } from 'node:fs';
import { readRunFile } from '../../lessons';
import { beginRun, expect, finishedRunFile, goTo, pasteRun, savedText, test } from './app';

test('a file is opened by choosing it, and by dropping it', async ({ page }, info) => {
  const path = info.outputPath('run.json');
  writeFileSync(path, finishedRunFile());
  await goTo(page, 'runs');
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Choose a file' }).click(),
  ]);
  await chooser.setFiles(path);
  await expect(page.getByText('Opened: Careful run.')).toBeVisible();
  await expect(page.getByRole('heading', { level: 2, name: 'Careful run' })).toHaveCount(1);

  const dropped = await page.evaluateHandle((text) => {
    const data = new DataTransfer();
    data.items.add(new File([text], 'run.json', { type: 'application/json' }));
    return data;
  }, finishedRunFile());
  await page.dispatchEvent('body', 'drop', { dataTransfer: dropped });
  await expect(page.getByRole('heading', { level: 2, name: 'Careful run' })).toHaveCount(2);
});

test('a saved run is renamed, saved to a file, deleted and brought back', async ({ page }) => {
  await pasteRun(page, finishedRunFile());
  await page.getByRole('button', { name: 'Rename Careful run' }).click();
  await page.getByRole('textbox', { name: 'New name' }).fill('Best so far');
  await page.getByRole('button', { name: 'Keep this name' }).click();
  await expect(page.getByRole('heading', { level: 2, name: 'Best so far' })).toBeVisible();

  const { text } = await savedText(page, () =>
    page.getByRole('button', { name: 'Save Best so far to a file' }).click(),
  );
  const read = readRunFile(text);
  expect(read.ok && read.file.name).toBe('Best so far');

  await page.getByRole('button', { name: 'Delete Best so far' }).click();
  await expect(page.getByRole('heading', { level: 2, name: 'Best so far' })).toHaveCount(0);
  await page.getByRole('button', { name: 'Bring it back' }).click();
  await expect(page.getByRole('heading', { level: 2, name: 'Best so far' })).toBeVisible();
  await page.reload();
  await expect(page.getByRole('heading', { level: 2, name: 'Best so far' })).toBeVisible();
});

const run = (): Record<string, unknown> => JSON.parse(finishedRunFile()) as Record<string, unknown>;
const BAD: readonly [what: string, text: () => string, sentence: RegExp][] = [
  ['is empty', () => ' ', /The file is empty\./],
  ['breaks off', () => finishedRunFile().slice(0, 900), /breaks off before its end/],
  ['is not JSON', () => 'hello, this is a letter', /is no JSON text/],
  ['is of something else', () => '{"some":"thing"}', /no run of this trainer/],
  ['has a newer format', () => JSON.stringify({ ...run(), version: 99 }), /format version 99/],
  ['is of another version', () => JSON.stringify({ ...run(), sim: '0.0.1' }), /another version: 0\.0\.1/],
  ['belongs to an unknown lesson', () => JSON.stringify({ ...run(), lesson: 'seal-all' }), /not here: seal-all/],
  ['has a damaged field', () => JSON.stringify({ ...run(), ticks: 'many' }), /damaged at "ticks"/],
  ['claims another score', () => JSON.stringify({ ...run(), claimed: { score: 12 } }), /The file was altered/],
  ['has another end', () => JSON.stringify({ ...run(), hash: '0123456789abcdef' }), /The file was altered/],
  ['stands on other ground', () => JSON.stringify({ ...run(), seed: 8 }), /not the ground of its seed/],
];

test('a file with anything wrong gets a sentence, and the present run is kept', async ({ page }) => {
  await beginRun(page);
  for (const [what, text, sentence] of BAD) {
    await pasteRun(page, text());
    await expect(page.getByText(sentence), `a file that ${what}`).toBeVisible();
    await expect(page.getByText('Your present run is untouched.')).toBeVisible();
  }
  await expect(page.getByRole('list', { name: 'Runs on this device' }).getByRole('heading')).toHaveCount(1);
  await page.getByRole('button', { name: /^Go on with The first rods/ }).click();
  await expect(page).toHaveURL(/#\/work$/);
});

test('a file of 100 MB is refused by its size, unread', async ({ page }, info) => {
  const path = info.outputPath('large.json');
  const file = openSync(path, 'w');
  ftruncateSync(file, 100 * 1024 * 1024);
  closeSync(file);
  await goTo(page, 'runs');
  const [chooser] = await Promise.all([
    page.waitForEvent('filechooser'),
    page.getByRole('button', { name: 'Choose a file' }).click(),
  ]);
  await chooser.setFiles(path);
  await expect(page.getByText('The file is too large: 100 MB.')).toBeVisible();
});
