// Drills of different kinds by keyboard alone, from the hole to the debrief.
import type { DrillId } from '../../lessons';
import { test } from './app';
import { workLesson } from './player/lesson';
import { typist } from './player/typist';

test.use({ viewport: { width: 1280, height: 800 } });

/** The ground of each drill: one that a careful crew passes without much ado. */
const GROUNDS: Readonly<Partial<Record<DrillId, number>>> = {
  'first-rods': 8,
  'slick-fluid': 8,
  'stiff-clay': 7,
  'casing-down': 1,
};

/** One is enough in the second browser. */
const IN_BOTH: readonly DrillId[] = ['first-rods'];

for (const [id, ground] of Object.entries(GROUNDS) as [DrillId, number][])
  test(`${id} by keyboard alone`, async ({ page, browserName }) => {
    test.skip(browserName !== 'chromium' && !IN_BOTH.includes(id), 'one browser is enough for most drills');
    test.setTimeout(180_000);
    await workLesson(typist(page), id, ground);
  });
