// Which pack suits a sand, and whether the slot holds the pack.
import { uniformity_ratio } from '../ground/conductivity';
import { finerThan_frac, sizeAt_mm, type Gradation } from '../ground/gradation';
import { clamp } from '../numeric/curve';

/** d30 of the pack beside d30 of the finest layer: 4 for fine even sand, 6 for coarse uneven sand (TI 814-01; ASTM D5092 6.3.3.1). */
const EVEN_ratio = 4;
const UNEVEN_ratio = 6;
/** Cu at which sand counts as even, and as uneven. ASSUMED. */
const EVEN_CU = 2.5;
const UNEVEN_CU = 5;
/** Medians: 4 to 6 is usual; up to 8 no sand comes, beyond 10 it passes (Driscoll 1986; from memory). */
export const MEDIAN_RATIOS = { least: 4, most: 6, sandFree: 8, sandPasses: 10 } as const;
/** The slot holds at least this share of the pack (TI 814-01; TM 5-813-1: 85 to 100 %). */
export const PACK_HELD_frac = 0.85;

/** d30 of the pack for a sand, mm: 4 d30 (Cu up to 2.5) to 6 d30 (Cu from 5). Worked value: d30 .20, Cu 2 -> .8; Cu 6 -> 1.2. */
export function packFor_mm(d30_mm: number, cu_ratio: number): number {
  const unevenness = clamp((cu_ratio - EVEN_CU) / (UNEVEN_CU - EVEN_CU), 0, 1);
  return d30_mm * (EVEN_ratio + unevenness * (UNEVEN_ratio - EVEN_ratio));
}

export interface PackFit {
  /** Median of the pack over that of the sand. */
  readonly median_ratio: number;
  /** d30 that the pack should have, and has. */
  readonly wanted_mm: number;
  readonly d30_mm: number;
  /** Terzaghi and Peck: d15 of the pack over d85 of the sand, below 4 to 5 to hold it; over d15 of the sand, above 4 to 5 to drain it. */
  readonly holds_ratio: number;
  readonly drains_ratio: number;
  readonly word: 'fits' | 'tight' | 'coarse' | 'sandPasses';
}

/**
 * How a pack suits a sand. The word follows from the medians: fits up to 8 apart (sand-free), coarse 8-10, beyond it sand passes; tight
 * below 4 where its d30 is too fine as well.
 * Worked value: pack1 (d50 1.41) on d50 .25 -> 5.64, fits.
 */
export function packFit(pack: Gradation, sand: Gradation): PackFit {
  const median_ratio = pack.d50_mm / sand.d50_mm;
  const d15_mm = sizeAt_mm(pack, 0.15);
  const { least, sandFree, sandPasses } = MEDIAN_RATIOS;
  const wanted_mm = packFor_mm(sand.d30_mm, uniformity_ratio(sand.d60_mm, sand.d10_mm));
  const word =
    median_ratio < least && pack.d30_mm < wanted_mm
      ? 'tight'
      : median_ratio <= sandFree
        ? 'fits'
        : median_ratio <= sandPasses
          ? 'coarse'
          : 'sandPasses';
  return {
    median_ratio,
    wanted_mm,
    d30_mm: pack.d30_mm,
    holds_ratio: d15_mm / sand.d85_mm,
    drains_ratio: d15_mm / sizeAt_mm(sand, 0.15),
    word,
  };
}

/** Share of a pack, or of a sand, that a slot or a cloth's opening holds back: what is coarser. Worked value: a slot of d10 -> .9. */
export const held_frac = (grains: Gradation, opening_mm: number): number => 1 - finerThan_frac(grains, opening_mm);
