// `npm run gallery`: every screen in each theme and size, and twelve states of the drawing, on one page to be looked at. `-- states`: these alone;
// `-- night`: the screens of that theme alone, and all states.
import { mkdirSync, rmSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { join } from 'node:path';
import { openApp } from '../bench/pageTrace';
import { draw, frames, mount } from '../browser/cutaway/drawingPage';
import { throughTheApp } from './screens';
import { sheetOf, type Shot } from './sheet';
import { STATES } from './states';

const folder = fileURLToPath(new URL('../../.cache/gallery/', import.meta.url));
const THEMES = [
  ['Paper', 'paper'],
  ['Sun or projector', 'sun'],
  ['Night', 'night'],
] as const;
const SIZES = [
  [1280, 800],
  [390, 844],
  [320, 640],
] as const;
/** The drawing's own room on a desk and on a phone. */
const STATE_SIZES = [
  [742, 576],
  [390, 380],
] as const;

/** So long a picture of another size may be on its way. */
const DRAWN_ms = 600;

const asked = process.argv.slice(2);
const statesOnly = asked.includes('states');
const named = THEMES.filter(([, theme]) => asked.includes(theme));
const shots: Shot[] = [];
rmSync(folder, { recursive: true, force: true });
mkdirSync(folder, { recursive: true });

const app = await openApp(1280, 800);
const { page, origin } = app;
// The compiler of these programs names functions by a helper that a page does not have.
await page.addInitScript('globalThis.__name = (named) => named');
const fileFor = (...parts: readonly (string | number)[]): string =>
  `${parts
    .join('-')
    .replace(/[^\w]+/g, '-')
    .toLowerCase()}.png`;

for (const [, theme] of THEMES)
  for (const [width, height] of STATE_SIZES) {
    await mount(page, { width, height, theme });
    for (const [i, { view, well }] of STATES.entries()) {
      await draw(page, view, 0, well);
      await frames(page, 2);
      const file = fileFor('state', i + 1, theme, width);
      await page.screenshot({ path: join(folder, file) });
      shots.push({ group: `States, ${theme}, ${width} x ${height}`, says: String(i + 1), file });
    }
  }

if (!statesOnly)
  for (const [label, theme] of named.length > 0 ? named : THEMES) {
    const take = async (name: string): Promise<void> => {
      for (const [width, height] of SIZES) {
        await page.setViewportSize({ width, height });
        await frames(page, 3);
        // The cutaway is drawn by a worker, which has frames of its own.
        await page.waitForTimeout(DRAWN_ms);
        const file = fileFor(name, theme, width);
        await page.screenshot({ path: join(folder, file), fullPage: true });
        shots.push({ group: `${name}`, says: `${theme}, ${width} x ${height}`, file });
      }
      await page.setViewportSize({ width: 1280, height: 800 });
    };
    await throughTheApp({ page, origin, take }, label);
    // The next theme begins with an empty device: whatever is kept on leaving is cleared as well.
    await page.goto('about:blank');
    await app.devtools.send('Storage.clearDataForOrigin', { origin, storageTypes: 'all' });
  }

writeFileSync(
  join(folder, 'index.html'),
  sheetOf(
    shots,
    STATES.map(({ says }) => says),
  ),
);
await app.close();
console.log(`${shots.length} pictures: ${join(folder, 'index.html')}`);
process.exit(0);
