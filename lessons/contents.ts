// The table of contents: every lesson's id in the order they are learnt. Small enough for a page that shows no lesson yet.

export const DRILL_IDS = [
  'round-the-loop',
  'first-rods',
  'slick-fluid',
  'reading-the-tray',
  'standing-sand',
  'falling-pit',
  'stiff-clay',
  'full-pit',
  'deep-enough',
  'the-screen',
  'casing-down',
  'the-seal',
  'clear-water',
] as const;
export type DrillId = (typeof DRILL_IDS)[number];

export const WHOLE_WELL_IDS = ['open-well', 'blind-well', 'bad-day'] as const;
export type LessonId = DrillId | (typeof WHOLE_WELL_IDS)[number];

/** Drills take a few minutes and are about one thing; whole wells take half an hour and are about all. */
export const CONTENTS: { readonly drills: readonly DrillId[]; readonly wholeWells: readonly LessonId[] } = {
  drills: DRILL_IDS,
  wholeWells: WHOLE_WELL_IDS,
};

/** Practices are free holes to order; they have no points. */
export const PRACTICE_IDS = ['open-hole'] as const;

/** All lessons that are here, in their order. */
export const LESSON_ORDER: readonly LessonId[] = [...CONTENTS.drills, ...CONTENTS.wholeWells];
