// When the stem counts as flowing.

import type { RunState } from './state';

/** Below this the crew sees no stream, m3/s: a litre a minute. */
export const FLOWING_m3s = 1 / 60000;

/** What goes down the stem of what the pump gives: the rest leaves by a torn hose, m3/s. */
export function stemFlow_m3s({ pump, faults }: RunState): number {
  return pump.flow_m3s * (1 - faults.hoseLost_frac);
}

export function flowing(state: RunState): boolean {
  return state.pump.flow_m3s > FLOWING_m3s;
}
