// A slot against the bare sand, without pack or cloth.
import { sizeAt_mm, type Gradation } from '../ground/gradation';

/** Share of the sand that the slot holds back: 40 % for even sand and sweet water to 60 % to be safe (Driscoll 1986 ch. 13, from memory). */
const HELD_LEAST_frac = 0.4;
const HELD_MOST_frac = 0.6;
/** Below this slot a pack is needed, mm: .010 in (UFGS 02521). */
const LEAST_SLOT_mm = 0.25;

/** Slot that holds a share of the sand, mm: the size with so much coarser. Worked value: .4 held -> d60; .5 -> d50. */
export const slotHolding_mm = (sand: Gradation, held_frac: number): number => sizeAt_mm(sand, 1 - held_frac);

export interface NaturalFit {
  /** Narrowest and widest slot that lets a sand build its own filter. */
  readonly from_mm: number;
  readonly to_mm: number;
  /** Such slots would be under .25 mm: cloth or pack is needed. */
  readonly needsPack: boolean;
}

/** Slots for a sand without pack: from 60 to 40 % held. Worked value: fine sand, d50 .15, d60 .17 -> to .17, needs a pack. */
export function naturalFit(sand: Gradation): NaturalFit {
  const to_mm = slotHolding_mm(sand, HELD_LEAST_frac);
  return { from_mm: slotHolding_mm(sand, HELD_MOST_frac), to_mm, needsPack: to_mm < LEAST_SLOT_mm };
}
