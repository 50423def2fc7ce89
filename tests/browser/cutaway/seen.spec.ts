// Seeing is proven: each small change of the state changes the picture, what a view level hides does not; lens, width, crew, rain.
import { expect, test } from '@playwright/test';
import type { Post, Tool } from '../../../src/cutaway/shown';
import { draw, frames, mount, picture, thingsSeen, type Globals } from './drawingPage';
import type { FixtureChoice } from './fixture';

test('on a phone each small change of the hole, its load, the pit or the fluid changes the picture; a blind one hides the hole', async ({
  page,
}) => {
  await mount(page, { width: 390, height: 332 });
  // What nobody at a blind hole can see, and what everybody sees in the pit.
  const hidden: FixtureChoice[] = [
    { halvedCell: 12 },
    ...[2, 3, 4, 5, 6].map((k) => ({ doubledClass: k })),
    { bed_m: 0.12 },
    { cake_m: 0.001 },
    { falling: true },
    { levelDown_m: 0.3 },
  ];
  const open: FixtureChoice[] = [{ pitDown_m: 0.02 }, { polymer_gL: 0.8 }, { flowing: false }, { blocked_frac: 0.5 }];
  for (const lens of [0, 1] as const) {
    for (const level of ['hole', 'blind'] as const) {
      await page.evaluate((power) => (window as unknown as Globals).cutaway.holdLens(power), lens);
      await draw(page, { level });
      const one = await picture(page);
      for (const choice of [...hidden, ...open]) {
        const same = level === 'blind' && hidden.includes(choice);
        await draw(page, { level, ...choice });
        expect((await picture(page)) === one, `${level}, lens ${lens}, ${JSON.stringify(choice)}`).toBe(same);
        await draw(page, { level });
      }
    }
  }
});

test('the lens is round the bit, clear of ruler and log, moves with the run, stands when it stands, and goes again', async ({
  page,
}) => {
  for (const [width, height] of [
    [742, 576],
    [390, 332],
    [320, 200],
  ] as const) {
    await mount(page, { width, height });
    await draw(page, { level: 'blind' });
    const without = await picture(page);
    const things = await thingsSeen(page);
    await page.evaluate(() => (window as unknown as Globals).cutaway.holdLens(1));
    expect(await picture(page)).not.toBe(without);
    // Ruler, log and rack are still there to be pointed at; in the lens nothing shows that the drawing hides.
    const seen = await thingsSeen(page);
    for (const kept of ['ruler', 'ownLog', 'rack', 'pump']) expect(seen, `${width} px`).toContain(kept);
    expect(seen.filter((thing) => !things.includes(thing))).toEqual([]);
    await page.evaluate(() => (window as unknown as Globals).cutaway.holdLens(0));
    expect(await picture(page)).toBe(without);
  }
  await draw(page, {}, 1);
  await page.evaluate(() => (window as unknown as Globals).cutaway.holdLens(2));
  const first = await picture(page);
  await expect.poll(() => picture(page)).not.toBe(first);
  await draw(page, {}, 0);
  const paused = await picture(page);
  await frames(page, 20);
  expect(await picture(page)).toBe(paused);
});

test('the crew is seen at each work, one less when the helper is away, and rain while it rains', async ({ page }) => {
  await mount(page, { width: 390, height: 332 });
  const at = (post: Post, tool: Tool = 'none'): FixtureChoice => ({
    flowing: false,
    crew: { workers: [{ post, tool }], away: 0 },
  });
  const choices: FixtureChoice[] = [
    { flowing: false },
    ...(['handle', 'winch', 'mouth', 'mouthBeyond', 'pump', 'stick', 'strainer', 'idle'] as const).map((post) =>
      at(post),
    ),
    at('settling', 'shovel'),
    at('suction', 'bucket'),
    at('suction', 'pole'),
    at('suction', 'sack'),
    at('channel', 'sieve'),
    at('bank', 'funnel'),
    at('mouth', 'tape'),
    { flowing: false, crew: { workers: [], away: 2 } },
    { flowing: false, sky: 'rain' },
    { flowing: false, sky: 'downpour' },
  ];
  const seen = new Set<string>();
  for (const choice of choices) {
    await draw(page, choice);
    seen.add(await picture(page));
  }
  expect(seen.size).toBe(choices.length);
  const rain = { level: 'blind', flowing: false, sky: 'rain' } as const;
  await draw(page, rain, 1);
  const first = await picture(page);
  await expect.poll(() => picture(page)).not.toBe(first);
  await draw(page, rain, 0);
  const paused = await picture(page);
  await frames(page, 20);
  expect(await picture(page)).toBe(paused);
});

test('the hole is drawn as wide as it is asked to be, and the picture says so', async ({ page }) => {
  await mount(page, { width: 390, height: 332 });
  await draw(page, { level: 'blind' });
  const home = await picture(page);
  const widest = await page.evaluate(() => {
    const { cutaway } = window as unknown as Globals;
    const spread = (): number => {
      let count = 0;
      for (let x = 0; x < innerWidth; x++) if (cutaway.describeAt(x, 200)?.thing.match(/nominal|stem/)) count++;
      return count;
    };
    const width = (times: number): number => {
      cutaway.widen(times);
      return spread();
    };
    return [width(12), width(24)];
  });
  expect(widest[1]! / widest[0]!).toBeGreaterThan(1.6);
  await page.evaluate(() => (window as unknown as Globals).cutaway.widen(null));
  expect(await picture(page)).toBe(home);
});
