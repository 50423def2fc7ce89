// What goes with the layers of a ground: water levels, salt, flood, tint. Ranges are [least, most]; a seed picks within them.
import type { ColourWord } from '../materials/soils';

export type Range = readonly [least: number, most: number];

/** Salt water under fresh: brackish from brackish_m down, salt from salt_m further down. */
export interface SaltRange {
  readonly brackish_m: Range;
  readonly brackish_gL: Range;
  readonly salt_m: Range;
  readonly salt_gL: Range;
}

export interface Surroundings {
  /** Depth of the water table now, and how much lower it falls by the end of the driest season. */
  readonly waterTable_m: Range;
  readonly swing_m: Range;
  /** How far the water of a confined aquifer stands above the table; negative: below it. */
  readonly confinedRise_m: Range;
  /** Chance that a permeable layer above the table, lying on a tight one, holds perched water. */
  readonly perched_frac: number;
  readonly salt: SaltRange | null;
  /** Height of the highest flood above the lowest spot. */
  readonly floodLine_m: Range;
  /** Colour that air gives to nearly everything here, or none. */
  readonly tint: ColourWord | null;
}

/** Ordinary flat ground: water tables of flood plains lie at 1-8 m and swing 1-6 m (BGS/DPHE 2001, from memory). ASSUMED. */
export const FLAT_GROUND: Surroundings = {
  waterTable_m: [2, 5],
  swing_m: [1, 3],
  confinedRise_m: [-0.5, 1.5],
  perched_frac: 0.3,
  salt: null,
  floodLine_m: [-0.5, 0.5],
  tint: null,
};
