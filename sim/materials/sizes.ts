// The eight grain-size classes carried by the stream, with the limits of ISO 14688-1. Cobbles are kept apart:
// no jet of this size lifts them.

export interface SizeClass {
  readonly id: SizeId;
  /** Diameter that stands for the class: geometric mean of its limits, rounded; clay has no lower limit, .001 is ASSUMED. */
  readonly d_mm: number;
  readonly lower_mm: number;
  readonly upper_mm: number;
}

export type SizeId =
  'clay' | 'silt' | 'fineSand' | 'mediumSand' | 'coarseSand' | 'fineGravel' | 'mediumGravel' | 'coarseGravel';

export const CLASS_COUNT = 8;

/** Limits in mm after ISO 14688-1; the main limits .002, .063, 2, 63 were read in a public text, the others are from memory. */
export const SIZE_CLASSES: readonly SizeClass[] = [
  { id: 'clay', d_mm: 0.001, lower_mm: 0, upper_mm: 0.002 },
  { id: 'silt', d_mm: 0.011, lower_mm: 0.002, upper_mm: 0.063 },
  { id: 'fineSand', d_mm: 0.11, lower_mm: 0.063, upper_mm: 0.2 },
  { id: 'mediumSand', d_mm: 0.35, lower_mm: 0.2, upper_mm: 0.63 },
  { id: 'coarseSand', d_mm: 1.1, lower_mm: 0.63, upper_mm: 2 },
  { id: 'fineGravel', d_mm: 3.5, lower_mm: 2, upper_mm: 6.3 },
  { id: 'mediumGravel', d_mm: 11, lower_mm: 6.3, upper_mm: 20 },
  { id: 'coarseGravel', d_mm: 35, lower_mm: 20, upper_mm: 63 },
];

/** Smallest grain a person sees singly, mm. US Air Force handbook 10-222 vol. 14, 2008, A3.3: about .07 mm. */
export const VISIBLE_GRAIN_mm = 0.07;

/** First class whose grains can be seen singly in the tray; finer classes only cloud the water. */
export const FIRST_VISIBLE_CLASS = SIZE_CLASSES.findIndex((c) => c.d_mm >= VISIBLE_GRAIN_mm);

/** Place of clay among the classes: it clots in water, silt does not. */
export const CLAY_CLASS = SIZE_CLASSES.findIndex((c) => c.id === 'clay');

/** Number of classes too fine to be seen singly, clay and silt: together they are the fines. */
export const FINE_CLASS_COUNT = FIRST_VISIBLE_CLASS;
