// The frame: addresses, titles, focus, back button, live region, help, the crash page.
import { beginRun, expect, goTo, savedText, test } from './app';

test('each place has its address, its title and its heading, which takes the focus', async ({ page }) => {
  await goTo(page, '');
  await expect(page).toHaveTitle('Jet small wells by hand · Hand jetting trainer');
  for (const [way, heading] of [
    ['Saved runs', 'Saved runs'],
    ['Help', 'Help'],
    ['About', 'About and cautions'],
    ['Start', 'Jet small wells by hand'],
  ] as const) {
    await page.getByRole('navigation').getByRole('link', { name: way }).click();
    await expect(page.getByRole('heading', { level: 1, name: heading })).toBeFocused();
    await expect(page).toHaveTitle(`${heading} · Hand jetting trainer`);
    await expect(page.getByRole('link', { name: way })).toHaveAttribute('aria-current', 'page');
  }
  await page.goBack();
  await expect(page.getByRole('heading', { level: 1, name: 'About and cautions' })).toBeFocused();
});

test('an address that leads nowhere says so', async ({ page }) => {
  for (const place of ['nowhere', 'brief', 'brief/a/b', 'work/7']) {
    await goTo(page, place);
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('This page is not here');
  }
});

test('the back button leaves the hole with the clock stopped and the run kept', async ({ page }) => {
  await beginRun(page);
  await page.keyboard.press('4');
  await page.goBack();
  await expect(page.getByRole('heading', { level: 1, name: 'The first rods' })).toBeVisible();
  await goTo(page, '');
  await expect(page.getByRole('heading', { name: 'Go on where you were' })).toBeVisible();
});

test('there is one live region that reads what happens', async ({ page }) => {
  await goTo(page, '');
  await page.getByRole('button', { name: 'Fish' }).click();
  const live = page.locator('[aria-live]');
  await expect(live).toHaveCount(1);
  await expect(live).toHaveText('Fish is learning now.');
});

test('the help lists the keys of every screen, as page and as dialog', async ({ page }) => {
  await goTo(page, 'help');
  await expect(page.getByRole('rowheader', { name: 'At the hole' })).toBeVisible();
  const cells = await page.getByRole('table').getByRole('cell').allTextContents();
  expect(cells.length).toBeGreaterThan(40);
  expect(cells.filter((text) => /\w\.\w/.test(text))).toEqual([]);
  await goTo(page, '');
  await page.keyboard.press('?');
  const dialog = page.getByRole('dialog', { name: 'Help' });
  await expect(dialog.getByRole('rowheader', { name: 'At the hole' })).toBeVisible();
  await page.keyboard.press('Escape');
  await expect(dialog).toBeHidden();
});

test('letter keys can be switched off', async ({ page }) => {
  await goTo(page, '');
  await page.getByRole('group', { name: 'Letter keys' }).getByRole('radio', { name: 'Off' }).check();
  await page.getByRole('heading', { level: 1 }).focus();
  await page.keyboard.press('?');
  await expect(page.getByRole('dialog')).toBeHidden();
  await page.keyboard.press('F1');
  await expect(page.getByRole('dialog', { name: 'Help' })).toBeVisible();
});

test('when something breaks the run is kept, and one goes on from the last save', async ({ page }) => {
  await beginRun(page);
  await page.evaluate(() => window.dispatchEvent(new ErrorEvent('error', { error: new Error('planted') })));
  await expect(page.getByRole('heading', { level: 1, name: 'Something broke' })).toBeFocused();
  await expect(page.getByRole('textbox', { name: /Report/ })).toHaveValue(/planted/);
  const { text } = await savedText(page, () => page.getByRole('button', { name: 'Save the run to a file' }).click());
  expect((JSON.parse(text) as { log: unknown[] }).log.length).toBe(6);
  await page.getByRole('button', { name: 'Go on from the last save' }).click();
  await expect(page.getByRole('heading', { level: 1, name: /The first rods/ })).toBeVisible();
});

test('about says what the trainer is not', async ({ page }) => {
  await goTo(page, 'about');
  await expect(page.getByText('It does not replace supervised practice at a real hole.')).toBeVisible();
  await expect(page.getByText('Local codes, permits and licensed drillers come first.')).toBeVisible();
  await expect(page.getByText('MIT licence', { exact: false })).toBeVisible();
});
