// Sixty results at once, in the one file opened from disk without a network: all are told rightly, and the page can be used meanwhile.
import { exerciseFragment } from '../../lessons';
import { APP_FILE } from '../../src/serve/build.mjs';
import { aClass, CODE, EXERCISE, type Wanted } from '../lessons/results/aClass';
import { expect, test } from './app';
import { playedAgain } from './class-results';

const ON_DISK = new URL(`../../dist/${APP_FILE}`, import.meta.url).href;
test('sixty results from disk without a network, each told rightly, the page alive meanwhile', async ({
  page,
  context,
}) => {
  test.setTimeout(240_000);
  const handed = aClass();
  const count = (wanted: Wanted): number => handed.filter((one) => one.wanted === wanted).length;
  await context.setOffline(true);
  await page.goto(`${ON_DISK}?renderer=canvas${exerciseFragment(EXERCISE, CODE)}`);
  await page.waitForURL(/#\/task\//);
  await page.evaluate((hash) => (location.hash = hash), `#/board/${EXERCISE.id}`);
  await page
    .locator('input[data-take=files]')
    .setInputFiles(handed.map(({ from, text }) => ({ name: from, mimeType: 'text/plain', buffer: Buffer.from(text) })));
  await expect(page.getByRole('progressbar')).toBeVisible();

  const paste = page.getByText('Or paste letters or the text of a file');
  const field = page.getByRole('textbox', { name: 'Letters or text of a result' });
  // A page that is held up would answer when all is judged, not before.
  await paste.click();
  await expect(field).toBeVisible();
  await field.fill('typed meanwhile');
  await expect(page.getByRole('progressbar')).toBeVisible();
  await expect(field).toHaveValue('typed meanwhile');

  await playedAgain(page);
  await expect(page.getByText('5 were here already.')).toBeVisible();
  const verdicts = await page
    .getByRole('region', { name: 'All that was handed in' })
    .getByRole('row')
    .locator('strong')
    .allTextContents();
  const told = (words: string): number => verdicts.filter((one) => one === words).length;
  expect(told('reproduced')).toBe(count('reproduced'));
  expect(told('made with another version')).toBe(count('otherVersion'));
  // What was altered is either no longer readable, and said so, or not reproduced.
  const unread = Number(/^(\d+) could not be read/m.exec(await page.getByRole('status').first().innerText())![1]);
  expect(told('not reproduced') + unread).toBe(count('altered') + count('refused'));
  expect(verdicts).toHaveLength(60 - count('again') - unread);

  await page.reload();
  await expect(page.getByRole('progressbar')).toBeVisible();
  await playedAgain(page);
  await expect(page.getByRole('region', { name: 'How it went, by learner' }).getByRole('rowheader')).toHaveCount(25);
});
