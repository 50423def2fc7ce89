// Scratch of the pit, worked out afresh each tick. Never state.
import { CLASS_COUNT } from '../materials/sizes';
import { createParcel, type Parcel } from '../hole/parcel';

export interface PitWork {
  /** Slip of each class in each chamber, m/s, set by settlePit. */
  slipSettling_ms: Float64Array;
  slipSuction_ms: Float64Array;
  /** Length of the tick, s. */
  dt_s: number;
  passing: Parcel;
}

export function createPitWork(): PitWork {
  return {
    slipSettling_ms: new Float64Array(CLASS_COUNT),
    slipSuction_ms: new Float64Array(CLASS_COUNT),
    dt_s: 1,
    passing: createParcel(),
  };
}
