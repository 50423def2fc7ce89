// Flows of the pit: returns into the settling chamber, over the notch, out through the strainer.
import type { Parcel } from '../hole/parcel';
import type { Chamber, PitState } from './pit';

/** Scratch of the pit: slip of each class in each chamber, m/s. Never state. */
export interface PitWork {
  slipSettling_ms: Float64Array;
  slipSuction_ms: Float64Array;
}

export function createPitWork(): PitWork {
  throw new Error('not filled in yet');
}

/** Adds a parcel (returns, or water from a bucket) to a chamber. */
export function pourInto(_chamber: Chamber, _parcel: Parcel): void {
  throw new Error('not filled in yet');
}

/** Levels the two chambers out through the notch. Call after settlePit. */
export function levelOut(_pit: PitState, _work: PitWork): void {
  throw new Error('not filled in yet');
}

/**
 * Draws volume_m3 of suspension from the suction chamber into out; near the floor deposit comes along.
 * Returns the volume drawn, m3: less than asked for when the strainer's mouth stands out of the fluid.
 */
export function drawThroughStrainer(_pit: PitState, _volume_m3: number, _out: Parcel): number {
  throw new Error('not filled in yet');
}
