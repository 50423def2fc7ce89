// The strainer: how it blocks and what it draws near the floor.
import type { PitState } from './pit';

/** One tick of blocking at this flow; clears nothing. */
export function blockStrainer(_pit: PitState, _flow_m3s: number, _dt_s: number): void {
  throw new Error('not filled in yet');
}

export function clearStrainer(pit: PitState): void {
  pit.blockage_frac = 0;
}

/** Is the mouth of the strainer under the fluid? */
export function strainerCovered(_pit: PitState): boolean {
  throw new Error('not filled in yet');
}
