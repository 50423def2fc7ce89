// The words of the trade: the page, the way to it from the help, and the bubble behind a dotted word, by tap and by key.
import { expect, goTo, test } from './app';

test('the help leads to the words, each with a meaning', async ({ page }) => {
  await goTo(page, 'help');
  await page.getByRole('main').getByRole('link', { name: 'Words of the trade' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Words of the trade' })).toBeVisible();
  await expect(page.getByRole('term').filter({ hasText: 'Annular seal' })).toBeVisible();
  await expect(page.getByText('A plug round the upper casing.')).toBeVisible();
});

test('a dotted word of the briefing opens its meaning, by tap and by key', async ({ page }) => {
  await goTo(page, 'brief/first-rods');
  const word = page.getByRole('main').getByRole('button', { name: 'pit', exact: true }).first();
  const meaning = page.getByText('A pit for the fluid, in two chambers.');
  await expect(meaning).toBeHidden();
  await word.click();
  await expect(meaning).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(meaning).toBeHidden();
  await word.focus();
  await page.keyboard.press('Enter');
  await expect(meaning).toBeVisible();
});
