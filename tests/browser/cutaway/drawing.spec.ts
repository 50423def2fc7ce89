// The drawing in a page of its own: it shows what the view says, moves only when the run does, and answers what is where.
import { expect, test } from '@playwright/test';
import { draw, frames, mount, picture, thingsSeen, type Globals } from './drawingPage';
import type { FixtureChoice } from './fixture';

test('every thing of the scene can be found by pointing at it, on a desk and on the smallest phone', async ({
  page,
}) => {
  const wanted = ['bit', 'stem', 'fluid', 'bed', 'channel', 'settling', 'heap', 'suction', 'strainer', 'pump'];
  wanted.push('deliveryHose', 'suctionHose', 'drive', 'swivel', 'rope', 'winch', 'tripod', 'rack', 'ruler', 'ownLog');
  wanted.push('neighbours', 'ground', 'wall', 'falling', 'crew');
  for (const [width, height] of [
    [812, 700],
    [390, 400],
    [320, 200],
  ] as const) {
    await mount(page, { width, height });
    await draw(page, { bed_m: 0.5, falling: true });
    const seen = await thingsSeen(page);
    expect(
      wanted.filter((thing) => !seen.includes(thing)),
      `${width} x ${height}`,
    ).toEqual([]);
    await draw(page, { level: 'blind', bed_m: 0.5 });
    const blind = await thingsSeen(page);
    expect(blind).toContain('nominal');
    for (const hidden of ['fluid', 'bed', 'air', 'wall', 'falling']) expect(blind).not.toContain(hidden);
  }
});

test('a blind lesson looks the same whatever the hole is like inside', async ({ page }) => {
  await mount(page);
  await draw(page, { level: 'blind', washOut: false, bed_m: 0, levelDown_m: 0 });
  const one = await picture(page);
  await draw(page, { level: 'blind', washOut: true, bed_m: 0.9, levelDown_m: 1.5, falling: true, cake_m: 2e-3 });
  expect(await picture(page)).toBe(one);
  await draw(page, { level: 'hole', washOut: true, bed_m: 0.9, levelDown_m: 1.5 });
  expect(await picture(page)).not.toBe(one);
});

test('things move while the run goes on, and stand still when it is paused or nothing flows', async ({ page }) => {
  await mount(page);
  await draw(page, {}, 1);
  const first = await picture(page);
  await expect.poll(() => picture(page)).not.toBe(first);
  await draw(page, {}, 0);
  const paused = await picture(page);
  await frames(page, 20);
  expect(await picture(page)).toBe(paused);
});

test('with reduced motion grains are drawn but nothing moves between two states', async ({ page }) => {
  await mount(page, { reducedMotion: true });
  await draw(page, {}, 1);
  const first = await picture(page);
  await frames(page, 20);
  expect(await picture(page)).toBe(first);
  await draw(page, { depth_m: 8.6 }, 1);
  expect(await picture(page)).not.toBe(first);
});

test('each change of level, bed, flow, strainer or log is seen', async ({ page }) => {
  await mount(page);
  const choices: FixtureChoice[] = [
    {},
    { bed_m: 0.8 },
    { levelDown_m: 1 },
    { flowing: false },
    { polymer_gL: 2 },
    { level: 'open' },
    { depth_m: 3 },
    { cake_m: 0.002 },
    { falling: true },
    { level: 'open', seep_m2s: 5e-4 },
    { level: 'open', seep_m2s: -5e-4 },
  ];
  const seen = new Set<string>();
  for (const choice of choices) {
    await draw(page, choice);
    seen.add(await picture(page));
  }
  expect(seen.size).toBe(choices.length);
});

test('the wheel zooms, a drag pans, and the picture comes home again', async ({ page }) => {
  await mount(page);
  // Without grains: those stay where they are in the ground, not on the screen.
  await draw(page, { level: 'blind' });
  const home = await picture(page);
  await page.mouse.move(400, 500);
  await page.mouse.wheel(0, -600);
  await expect.poll(() => picture(page)).not.toBe(home);
  const closer = await picture(page);
  await page.mouse.down();
  await page.mouse.move(300, 400, { steps: 4 });
  await page.mouse.up();
  expect(await picture(page)).not.toBe(closer);
  await page.evaluate(() => (window as unknown as Globals).cutaway.home());
  await page.mouse.move(1, 1);
  expect(await picture(page)).toBe(home);
});

test('the theme of the page is the theme of the picture, at once', async ({ page }) => {
  await mount(page);
  await draw(page, {});
  const seen = new Set([await picture(page)]);
  for (const theme of ['night', 'sun']) {
    await page.evaluate((name) => (document.documentElement.dataset['theme'] = name), theme);
    await expect.poll(async () => seen.has(await picture(page))).toBe(false);
    seen.add(await picture(page));
  }
  expect(seen.size).toBe(3);
});

test('it fits itself to its place when that changes, and goes without a trace', async ({ page }) => {
  await mount(page);
  await draw(page, {});
  await page.setViewportSize({ width: 390, height: 400 });
  await expect
    .poll(() => page.locator('canvas').evaluate((canvas: HTMLCanvasElement) => canvas.width / devicePixelRatio))
    .toBe(390);
  await page.evaluate(() => (window as unknown as Globals).cutaway.destroy());
  await expect(page.locator('canvas')).toHaveCount(0);
});

test('WebGL draws the scene', async ({ page, browserName }) => {
  test.skip(browserName !== 'chromium', 'the other browser has no WebGL without a screen');
  expect(await mount(page, { renderer: 'webgl', width: 500, height: 420 })).toBe('webgl');
  await draw(page, {}, 1);
  const first = await picture(page);
  await expect.poll(() => picture(page), { timeout: 20_000 }).not.toBe(first);
  const lost = await page
    .locator('canvas')
    .evaluate((canvas: HTMLCanvasElement) => canvas.getContext('webgl2')?.isContextLost() ?? true);
  expect(lost).toBe(false);
  // Ground, sky and fluid all have their place: many colours, not one.
  const colours = await page.evaluate(
    async (png) => {
      const image = new Image();
      image.src = `data:image/png;base64,${png}`;
      await image.decode();
      const canvas = document.createElement('canvas');
      canvas.width = image.width;
      canvas.height = image.height;
      const context = canvas.getContext('2d') as CanvasRenderingContext2D;
      context.drawImage(image, 0, 0);
      const { data } = context.getImageData(0, 0, image.width, image.height);
      const seen = new Set<number>();
      for (let i = 0; i < data.length; i += 4)
        seen.add(((data[i] ?? 0) << 16) | ((data[i + 1] ?? 0) << 8) | (data[i + 2] ?? 0));
      return seen.size;
    },
    (await page.screenshot()).toString('base64'),
  );
  expect(colours).toBeGreaterThan(200);
});

test('when WebGL is taken away and given back the same view is drawn again, and when it is not the page is told', async ({
  page,
  browserName,
}) => {
  test.skip(browserName !== 'chromium', 'the other browser has no WebGL without a screen');
  await mount(page, { renderer: 'webgl', width: 390, height: 332 });
  // Paused, so that nothing but the loss itself can bring about a new picture; the first one may still be on its way.
  await draw(page, {});
  await frames(page, 10);
  const before = await picture(page);
  const lose = (back: boolean): Promise<void> =>
    page.locator('canvas').evaluate(async (canvas: HTMLCanvasElement, again) => {
      const taken = canvas.getContext('webgl2')?.getExtension('WEBGL_lose_context');
      const event = (name: string): Promise<unknown> =>
        new Promise((done) => canvas.addEventListener(name, done, { once: true }));
      const lost = event('webglcontextlost');
      taken?.loseContext();
      await lost;
      if (!again) return;
      const restored = event('webglcontextrestored');
      setTimeout(() => taken?.restoreContext());
      await restored;
    }, back);
  await lose(true);
  await expect.poll(() => picture(page)).toBe(before);
  expect(await page.evaluate(() => (window as unknown as Globals).lost ?? false)).toBe(false);
  await lose(false);
  await expect.poll(() => page.evaluate(() => (window as unknown as Globals).lost ?? false)).toBe(true);
});

test('a slow imitation of WebGL is left for the canvas', async ({ page }) => {
  expect(await mount(page, { renderer: 'auto' })).toBe('canvas');
});
