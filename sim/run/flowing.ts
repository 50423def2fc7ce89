// When the stem counts as flowing.

import type { RunState } from './state';

/** Below this the crew sees no stream, m3/s: a litre a minute. */
export const FLOWING_m3s = 1 / 60000;

export function flowing(state: RunState): boolean {
  return state.pump.flow_m3s > FLOWING_m3s;
}
