// What a plan is held against: the hole and the ground as far as they are known.
import type { Gradation } from '../ground/gradation';
import type { HoleShape } from './quantities';

/** What the crew knows of its hole. */
export interface HoleFacts {
  readonly bit_m: number;
  /** By the tally of rods. */
  readonly depth_m: number;
}

/** A bed of the crew's own log with the usual grains of its kind, or of the true ground. */
export interface PlanBed extends Gradation {
  readonly top_m: number;
  readonly bottom_m: number;
  readonly K_ms: number;
}

export interface PlanFacts extends HoleFacts {
  /** The hole as it was passed through; left out: as wide as the bit. */
  readonly hole?: HoleShape;
  /** What the crew logged; may be empty. */
  readonly beds: readonly PlanBed[];
  /** Lowest level of the water, m; null: not known. */
  readonly lowest_m: number | null;
  /** Rate that the well shall give. */
  readonly rate_m3s: number;
}
