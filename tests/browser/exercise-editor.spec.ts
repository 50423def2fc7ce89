// The editor of an exercise: made, changed, told what is wrong, mended, tried by crews, with grounds for the class; all of it kept.
import { expect, savedText, test } from './app';
import { keptOf, MADE, openEditor, openPart, sumOf } from './exercise';

test('layers are laid, things go wrong, points are shared: what is wrong is told and mended, and a reload keeps it', async ({
  page,
}) => {
  await page.goto('/#/class');
  await page.getByRole('combobox', { name: 'Which lesson it starts from' }).selectOption('The first rods');
  await page.getByRole('button', { name: 'Make it' }).click();
  await expect(page.getByText('Made from the lesson “The first rods”. Edition 1.')).toBeVisible();

  await openPart(page, 'Words');
  await page.getByRole('textbox', { name: 'Title' }).fill('Clay by the ferry');
  await expect(page.getByRole('heading', { level: 1, name: 'Clay by the ferry' })).toBeVisible();
  await page.getByRole('textbox', { name: 'What the learner reads first' }).fill('Drill three rods.\nMind the clay.');

  await openPart(page, 'Ground');
  await page.getByRole('radio', { name: /^Layers by hand/ }).check();
  await page.getByRole('button', { name: /^2\. / }).click();
  await page.getByRole('button', { name: /^Kind: / }).click();
  await page.getByRole('radio', { name: 'firm clay' }).check();
  await page.getByRole('button', { name: 'Done', exact: true }).click();
  await expect(page.getByRole('button', { name: 'Kind: firm clay' })).toBeFocused();
  await page.getByRole('textbox', { name: 'How thick' }).fill('0,8');
  await page.getByRole('button', { name: 'Add one below' }).click();
  await expect(page.getByRole('button', { name: /^3\. / })).toBeFocused();
  await page.getByRole('button', { name: 'More: How thick' }).click();
  await expect(page.getByRole('textbox', { name: 'How thick' })).toHaveValue('1.1');
  await page.getByRole('textbox', { name: 'Depth of the water now' }).fill('2');
  await page.getByRole('checkbox', { name: /^Salt water below a depth/ }).check();
  await expect(sumOf(page, 'Ground')).toContainText('water at 2 m. The same for all.');

  await openPart(page, 'What goes wrong');
  await page.getByRole('button', { name: 'Add it', exact: true }).click();
  await page.getByRole('textbox', { name: 'Soonest' }).fill('3');
  await expect(page.getByText('The soonest must not come after the latest.').first()).toBeVisible();
  await expect(page.getByRole('heading', { name: 'Not ready to be given out' })).toBeVisible();
  await page.getByRole('textbox', { name: 'Latest' }).fill('3.5');
  await expect(page.getByRole('heading', { name: /^It can be given out/ })).toBeVisible();

  await openPart(page, 'Points');
  await page.getByRole('textbox', { name: 'Safety, in all' }).fill('26');
  await expect(sumOf(page, 'Points')).toContainText('110 of 100 points are given');
  await page.getByRole('button', { name: 'Spread in proportion' }).click();
  await expect(sumOf(page, 'Points')).toContainText('100 of 100 points are given. That is right.');

  await page.reload();
  await expect(page.getByRole('heading', { level: 1, name: 'Clay by the ferry' })).toBeVisible();
  await expect(sumOf(page, 'Words')).toContainText('2 lines of your own');
  await expect(sumOf(page, 'What goes wrong')).toContainText('1 thing goes wrong.');
  await openPart(page, 'Ground');
  await expect(page.getByRole('button', { name: /^2\. firm clay/ })).toBeVisible();
  await expect(page.getByRole('checkbox', { name: /^Salt water below a depth/ })).toBeChecked();
  await expect(page.getByText('Only you see this. It is the same for all.')).toBeVisible();
});

test('what is not sound is kept too, told where it is mended, and keeps the exercise from being given out', async ({
  page,
}) => {
  await openEditor(page);
  await openPart(page, 'Time, depth and kit');
  const water = page.getByRole('textbox', { name: 'Water L' });
  await water.fill('99999');
  await expect(water).toHaveAttribute('aria-invalid', 'true');
  await expect(page.getByText('Set a figure from 0 to 20,000 L.').first()).toBeVisible();
  await page.reload();
  await expect(page.getByRole('heading', { name: 'Not ready to be given out' })).toBeVisible();
  await expect(page.getByRole('link', { name: 'Give it out' })).toHaveCount(0);
  const kept = await keptOf(page, MADE.id);
  expect([kept.exercise.stocks.water_L, kept.draft!.stocks.water_L]).toEqual([undefined, 99999]);
  // Pressed all the same, it takes one to the field.
  await page.getByRole('button', { name: 'Give it out' }).press('Enter');
  await expect(water).toBeFocused();
  await water.fill('800');
  await expect(page.getByRole('link', { name: 'Give it out' })).toBeVisible();
  await page.getByRole('button', { name: 'Water: back to the lesson’s 1,500 L' }).click();
  await expect(water).toHaveValue('1500');
});

test('the way to a figure opens what it lies in', async ({ page }) => {
  await openEditor(page);
  await openPart(page, 'Ground');
  await page.getByRole('radio', { name: /^Layers by hand/ }).check();
  await page.getByRole('button', { name: /^2\. / }).click();
  await page.getByRole('textbox', { name: 'How thick' }).fill('');
  await openPart(page, 'Points');
  await page.getByRole('button', { name: /^Ground: Set a figure from 0\.1 to 60 m/ }).click();
  await expect(page.getByRole('textbox', { name: 'How thick' })).toBeFocused();
  await expect(page.getByRole('button', { name: /^2\. / })).toHaveAttribute('aria-expanded', 'true');
});

test('the last changes are taken back one by one', async ({ page }) => {
  await openEditor(page);
  await openPart(page, 'What is seen');
  await page.getByRole('radio', { name: /^Blind/ }).check();
  await openPart(page, 'Ground');
  await page.getByRole('radio', { name: /^A landscape/ }).check();
  await page.getByRole('radio', { name: /^Delta/ }).check();
  await page.getByRole('button', { name: 'Take back: Ground' }).click();
  await expect(page.getByRole('radio', { name: /^Flood plain/ })).toBeChecked();
  await page.getByRole('button', { name: 'Take back: Ground' }).click();
  await page.getByRole('button', { name: 'Take back: What is seen' }).click();
  await expect(page.getByRole('button', { name: 'Nothing to take back' })).toBeVisible();
  await expect.poll(async () => (await keptOf(page, MADE.id)).exercise).toEqual(MADE);
});

test('a boundary is dragged, and a thing on the plan is tapped and put down', async ({ page }) => {
  await openEditor(page, { ...MADE, lesson: 'open-well', weights: { siteChosen: 50, sealMade: 50 } });
  await openPart(page, 'Ground');
  await page.getByRole('radio', { name: /^Layers by hand/ }).check();
  await expect(page.getByRole('button', { name: /^1\. / })).toBeVisible();
  const grip = page.locator('.column .grip').first();
  await grip.scrollIntoViewIfNeeded();
  const before = (await keptOf(page, MADE.id)).exercise.ground;
  const box = (await grip.boundingBox())!;
  await page.mouse.move(box.x + 24, box.y + 18);
  await page.mouse.down();
  await page.mouse.move(box.x + 24, box.y + 28, { steps: 4 });
  await page.mouse.up();
  const thickness = async (): Promise<number> => {
    const { ground } = (await keptOf(page, MADE.id)).exercise;
    return ground.by === 'layers' ? ground.layers[0]!.thickness_m : 0;
  };
  await expect.poll(thickness).toBeGreaterThan(0.6);
  expect(before.by).not.toBe('layers');

  await openPart(page, 'Site plan');
  await page.getByRole('radio', { name: /^By hand/ }).check();
  const plan = page.locator('.editing');
  await plan.scrollIntoViewIfNeeded();
  const spot = (await page.locator('.handle').first().boundingBox())!;
  const sheet = (await plan.boundingBox())!;
  await page.mouse.click(spot.x + 22, spot.y + 22);
  await expect(page.getByRole('button', { name: /^Spot A/, expanded: true })).toBeVisible();
  await page.mouse.click(sheet.x + sheet.width / 2, sheet.y + sheet.height / 2);
  await expect(page.getByRole('textbox', { name: 'From the left edge' })).toHaveValue('40');
  await expect(page.getByRole('textbox', { name: 'From the bottom edge' })).toHaveValue('30');
});

test('crews try it, grounds are found, a change drops what no longer holds', async ({ page }) => {
  test.setTimeout(180_000);
  await openEditor(page);
  await page.getByRole('button', { name: 'Let them try it' }).click();
  await expect(page.getByRole('progressbar')).toBeVisible();
  await expect(page.getByRole('heading', { level: 3, name: 'It can be given out' })).toBeVisible({ timeout: 90_000 });
  await expect(page.getByText(/^Points of the careful crew: /)).toBeVisible();
  await openPart(page, 'Grounds for the class');
  await page.getByRole('textbox', { name: 'How many grounds' }).fill('3');
  await page.getByRole('region', { name: 'Grounds for the class' }).getByRole('button', { name: 'Find them' }).click();
  await expect(page.getByText(/^3 grounds are found/)).toBeVisible({ timeout: 90_000 });
  await expect(page.getByRole('heading', { name: 'Ready to be given out' })).toBeVisible();
  await expect.poll(async () => (await keptOf(page, MADE.id)).exercise.pool?.seeds.length).toBe(3);
  const pool = (await keptOf(page, MADE.id)).exercise.pool!;
  expect(pool.spread_points).toBeLessThanOrEqual(5);

  await page.reload();
  await expect(page.getByRole('heading', { name: 'Ready to be given out' })).toBeVisible();
  await expect(page.getByText(`Number ${pool.seeds[0]}`)).toBeVisible();
  await openPart(page, 'Ground');
  await page.getByRole('checkbox', { name: /^The driest time of the year/ }).check();
  await expect(page.getByText('No crew has tried it as it is now.')).toBeVisible();
  await openPart(page, 'Grounds for the class');
  await expect(page.getByText('Those found before are dropped.')).toBeVisible();
  await page.getByRole('button', { name: 'Take back: Ground' }).click();
  await expect(page.getByRole('heading', { name: 'Ready to be given out' })).toBeVisible();
});

test('a long look for grounds is stopped, and nothing is changed', async ({ page }) => {
  await openEditor(page);
  await openPart(page, 'Grounds for the class');
  await page.getByRole('textbox', { name: 'How many grounds' }).fill('200');
  await page.getByRole('region', { name: 'Grounds for the class' }).getByRole('button', { name: 'Find them' }).click();
  await expect(page.getByText(/of 200 found\. Ground/)).toBeVisible();
  await page.getByRole('button', { name: 'Stop' }).click();
  await expect(page.getByRole('progressbar')).toHaveCount(0);
  await expect(page.getByRole('button', { name: 'Nothing to take back' })).toBeVisible();
});

test('what is wrong with the task itself is found by the crews, with the way to the field', async ({ page }) => {
  test.setTimeout(120_000);
  await openEditor(page, { ...MADE, cap_s: 900 });
  await page.getByRole('button', { name: 'Let them try it' }).click();
  await expect(page.getByRole('heading', { level: 3, name: 'Not yet to be given out' })).toBeVisible({
    timeout: 90_000,
  });
  await page.getByRole('button', { name: 'Go to: Time, depth and kit' }).first().click();
  await expect(page.getByRole('textbox', { name: 'Time on the job clock' })).toBeFocused();
});

test('an exercise is copied, and deleted only when that is said twice', async ({ page }) => {
  await openEditor(page);
  await page.getByRole('button', { name: 'Make a copy' }).click();
  await expect(page.getByRole('heading', { level: 1, name: 'Three rods, copy' })).toBeVisible();
  await page.getByRole('button', { name: 'Delete this exercise' }).click();
  await expect(page.getByRole('button', { name: 'Keep it' })).toBeFocused();
  await page.getByRole('button', { name: 'Keep it' }).click();
  await page.getByRole('button', { name: 'Delete this exercise' }).click();
  await page.getByRole('button', { name: 'Delete it', exact: true }).click();
  await expect(page).toHaveURL(/#\/class$/);
  await expect(page.getByRole('heading', { level: 3, name: 'Three rods', exact: true })).toBeVisible();
  await expect(page.getByText('Three rods, copy')).toHaveCount(0);
});

test('an edition that was given out stays as it is; the next change makes a new one', async ({ page }) => {
  await openEditor(page);
  await page.getByRole('link', { name: 'Give it out' }).click();
  await expect(page.getByText('“Three rods”, edition 1')).toBeVisible();
  await savedText(page, () => page.getByRole('button', { name: 'Save the file' }).click());
  await page.goBack();
  await expect(page.getByText(/This edition has been given out/)).toBeVisible();
  await openPart(page, 'Points');
  await page.getByRole('button', { name: 'Less: Points to pass' }).click();
  await expect(page.getByText('Edition 2.')).toBeVisible();
  await page.getByRole('button', { name: 'Take back: Points' }).click();
  await expect(page.getByText('Edition 1.')).toBeVisible();
});
