// The drawing of the well: every piece can be pointed at, a blind lesson shows only what was measured, what falls moves.
import { expect, test } from '@playwright/test';
import { draw, frames, mount, picture, thingsSeen } from './drawingPage';
import type { WellChoice } from './wellFixture';

test('every piece of a well can be found by pointing at it, and in a blind lesson only what was measured', async ({
  page,
}) => {
  const fills: WellChoice['fills'] = [
    ['cement', 0.5, 3.5],
    ['pack07', 4.5, 7],
    ['ground', 7.25, 8.35],
  ];
  const still = { flowing: false, bed_m: 0 } as const;
  for (const [width, height] of [
    [812, 700],
    [320, 200],
  ] as const) {
    await mount(page, { width, height });
    await draw(page, { ...still, level: 'open' }, 0, { fills, drawn_m: 1.5, sounded_m: 4 });
    const seen = new Set(await thingsSeen(page));
    await draw(page, { ...still, level: 'open' }, 0, { fills, head: true });
    for (const thing of await thingsSeen(page)) seen.add(thing);
    const wanted = ['casing', 'screen', 'casingWater', 'inflow', 'drawn', 'pack', 'seal', 'cavedIn', 'void', 'sounded'];
    wanted.push('cone', 'apron', 'wellPump', 'pump', 'rack', 'ground');
    expect(
      wanted.filter((thing) => !seen.has(thing)),
      `${width} x ${height}`,
    ).toEqual([]);
    for (const gone of ['stem', 'bit', 'drive', 'swivel', 'deliveryHose']) expect([...seen]).not.toContain(gone);
    await draw(page, { ...still, level: 'blind' }, 0, { fills, sounded_m: 4 });
    const blind = await thingsSeen(page);
    for (const known of ['casing', 'screen', 'sounded']) expect(blind).toContain(known);
    for (const hidden of ['pack', 'seal', 'cavedIn', 'void', 'inflow']) expect(blind).not.toContain(hidden);
  }
});

test('a blind lesson looks the same whatever stands round the casing', async ({ page }) => {
  await mount(page);
  await draw(page, { level: 'blind', flowing: false }, 0, { fills: [], sounded_m: 4 });
  const one = await picture(page);
  await draw(page, { level: 'blind', flowing: false }, 0, { snapped: true, sounded_m: 4 });
  expect(await picture(page)).toBe(one);
  await draw(page, { level: 'hole', flowing: false }, 0, { snapped: true, sounded_m: 4 });
  expect(await picture(page)).not.toBe(one);
});

test('pack on its way down moves while the run goes on, and stands still when it is paused', async ({ page }) => {
  await mount(page);
  const pouring = { fills: [['pack07', 7, 8.35]], falling: true } as WellChoice;
  await draw(page, { flowing: false }, 1, pouring);
  const first = await picture(page);
  await expect.poll(() => picture(page)).not.toBe(first);
  await draw(page, { flowing: false }, 0, pouring);
  const paused = await picture(page);
  await frames(page, 20);
  expect(await picture(page)).toBe(paused);
});
