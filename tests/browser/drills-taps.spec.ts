// Every drill by taps alone, on a phone, from the briefing to the debrief.
import type { DrillId } from '../../lessons';
import { test } from './app';
import { workLesson } from './player/lesson';
import { tapper } from './player/tapper';

test.use({ viewport: { width: 390, height: 844 }, hasTouch: true });

/** The ground of each drill: one that a careful crew passes without much ado. */
const GROUNDS: Readonly<Record<DrillId, number>> = {
  'round-the-loop': 8,
  'first-rods': 8,
  'slick-fluid': 8,
  'reading-the-tray': 3,
  'standing-sand': 2,
  'falling-pit': 8,
  'stiff-clay': 7,
  'full-pit': 4,
  'deep-enough': 2,
  'the-screen': 1,
  'casing-down': 1,
  'the-seal': 1,
  'clear-water': 1,
};

/** One is enough in the second browser. */
const IN_BOTH: readonly DrillId[] = ['first-rods'];

for (const [id, ground] of Object.entries(GROUNDS) as [DrillId, number][])
  test(`${id} by taps alone`, async ({ page, browserName }) => {
    test.skip(browserName !== 'chromium' && !IN_BOTH.includes(id), 'one browser is enough for most drills');
    test.setTimeout(180_000);
    await workLesson(tapper(page), id, ground);
  });
