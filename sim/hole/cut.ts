// Cutting: the hole grows, its grains and pore water join what stands in the hole.
import type { HoleState } from './hole';
import type { Parcel } from './parcel';

/** The ground that the bit is in: shares of the grain volume by class (with cobbles they sum to 1). */
export interface CutGround {
  porosity_frac: number;
  /** Share of the pores that holds water. */
  saturation_frac: number;
  fractions: ArrayLike<number>;
}

/**
 * Deepens the hole by advance_m (at most one cell) at the radius of the bit. out receives what came in from the
 * ground (grains with their origin, pore water), for the ledger. Cobbles stay behind in the ground.
 */
export function cutGround(
  _hole: HoleState,
  _advance_m: number,
  _bit_m: number,
  _ground: CutGround,
  _out: Parcel,
): void {
  throw new Error('not filled in yet');
}
