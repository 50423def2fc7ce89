// What the drawing looks at in each new view before it draws: what lies for good, and what a close look follows.

import type { CutawayView } from './shown';

/** What lies in the picture for good until the crew moves on or digs: when it changes, everything is drawn anew. */
export const siteOf = ({ level, holeNumber, pit, kit, stem, well }: CutawayView): string =>
  [
    level,
    holeNumber,
    kit.bit_m,
    stem.out,
    well?.head,
    well?.casing?.look,
    pit.dug,
    pit.settling.area_m2,
    pit.suction.area_m2,
  ].join(' ');

/** What a close look follows: the bit, or, when the rods are out, the lower end of the casing. */
export const watched_m = ({ stem, well }: CutawayView, bit_m: number): number =>
  stem.out ? (well?.casing?.shoe_m ?? 0) : bit_m;
