// Settling in both chambers.
import type { PitWork } from './exchange';
import type { PitState } from './pit';

/** One tick of settling in both chambers; refreshes the slip of each class for the fluid as it is. */
export function settlePit(_pit: PitState, _work: PitWork, _temperature_C: number, _dt_s: number): void {
  throw new Error('not filled in yet');
}
