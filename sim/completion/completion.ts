// The well under way: its plan, its casing, what stands round it.
import type { SealName } from '../materials/seals';
import type { AnnulusState } from './annulus';
import { createCasing, type CasingState } from './casing';
import { FILL_COUNT, type FillName } from './fills';
import type { WellPlan } from './plan';

/** One seal as it was placed: where it lies follows from the annulus. */
export interface PlacedSeal {
  seal: SealName;
  volume_m3: number;
  /** Tick at which the last of it went in, and from which it may be built upon. */
  placed_tick: number;
  ready_tick: number;
  /** Told that it is ready. */
  told: boolean;
}

/** What the crew has put in, in the order of doing. */
export interface Poured {
  fill: FillName;
  volume_m3: number;
}

export interface CompletionState {
  plan: WellPlan | null;
  casing: CasingState;
  /** From the time on at which the casing is set. */
  annulus: AnnulusState | null;
  poured: Poured[];
  /** Thrown into a hole without a casing, by fill, m3. */
  openFill_m3: Float64Array;
  seals: PlacedSeal[];
  /** The last sounding: depth of what stands in the annulus, m. */
  sounded: { top_m: number; tick: number } | null;
}

export const createCompletion = (): CompletionState => ({
  plan: null,
  casing: createCasing(),
  annulus: null,
  poured: [],
  openFill_m3: new Float64Array(FILL_COUNT),
  seals: [],
  sounded: null,
});
