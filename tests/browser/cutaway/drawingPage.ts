// The drawing in a page of its own: mounted at a size, given views made by hand, asked what is where.
import type { Page } from '@playwright/test';
import { createHash } from 'node:crypto';
import { bundleForPage } from '../bundle';
import type { FixtureChoice } from './fixture';
import type * as Harness from './harness';
import type { WellChoice } from './wellFixture';

export type Globals = {
  drawing: typeof Harness;
  cutaway: Awaited<ReturnType<typeof Harness.show>>;
  /** The drawing has told that its picture is lost for good. */
  lost?: boolean;
};

let code: Promise<string> | undefined;

interface Mounting {
  width?: number;
  height?: number;
  renderer?: 'canvas' | 'webgl' | 'auto';
  reducedMotion?: boolean;
  theme?: string;
}

export async function mount(page: Page, how: Mounting = {}): Promise<string> {
  code ??= bundleForPage('tests/browser/cutaway/harness.ts', 'drawing');
  await page.setViewportSize({ width: how.width ?? 812, height: how.height ?? 700 });
  await page.goto('about:blank');
  await page.setContent(
    `<!doctype html><html lang="en" data-theme="${how.theme ?? 'paper'}"><body style="margin:0">
      <div id="host" style="position:absolute;inset:0;font-family:sans-serif"></div></body></html>`,
  );
  await page.addScriptTag({ content: await code });
  return page.evaluate(async ({ renderer = 'canvas', reducedMotion = false }) => {
    const globals = window as unknown as Globals;
    const host = document.getElementById('host') as HTMLElement;
    globals.cutaway = await globals.drawing.show(host, {
      renderer,
      reducedMotion,
      onlost: () => (globals.lost = true),
    });
    return globals.cutaway.kind;
  }, how);
}

export const draw = (page: Page, choice: FixtureChoice, pace = 0, well?: WellChoice): Promise<void> =>
  page.evaluate(
    ([given, speed, made]) => {
      const { cutaway, drawing } = window as unknown as Globals;
      cutaway.draw(drawing.handMade(given, made), speed);
    },
    [choice, pace, well] as const,
  );

/** A picture is compared by its fingerprint: a failure shall not print it. */
export const picture = async (page: Page): Promise<string> =>
  createHash('sha1')
    .update(await page.screenshot())
    .digest('hex');

/** Lets the page draw so many pictures. */
export const frames = (page: Page, count: number): Promise<void> =>
  page.evaluate(async (left) => {
    for (let i = 0; i < left; i++) await new Promise((next) => requestAnimationFrame(next));
  }, count);

/** What the drawing says of each point of a grid, without repeats. */
export const thingsSeen = (page: Page): Promise<string[]> =>
  page.evaluate(() => {
    const { cutaway } = window as unknown as Globals;
    const seen = new Set<string>();
    for (let y = 1; y < innerHeight; y += 3) {
      for (let x = 1; x < innerWidth; x += 3) {
        const what = cutaway.describeAt(x, y);
        if (what) seen.add(what.thing);
      }
    }
    return [...seen];
  });
