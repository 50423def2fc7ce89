// Sand that must stand: skin, level, stops and pulls, each once got wrong.

import { testDecisions, without, withPayload, type Spoil } from './decisions';

/** Four minutes of talk at each stop, and nobody looks down the mouth. */
function talk(): Spoil {
  let since_s = -1;
  return (deed, { time_s, pump, stem }) => {
    if (deed?.action === 'topUp' && stem.bottom_m >= 1) return null;
    if (pump.throttle_frac > 0 || stem.bottom_m < 1) since_s = -1;
    else if (since_s < 0) since_s = time_s;
    return since_s >= 0 && time_s - since_s < 240 && deed?.action === 'addRod' ? null : deed;
  };
}

testDecisions('standing-sand', 1, [
  { name: 'no-skin', item: 'levelHeld', reason: 'reason.levelHeld.lost', spoil: without('addAdditive') },
  { name: 'long-stops', item: 'shortStops', reason: 'reason.shortStops.lost', spoil: talk() },
  {
    name: 'fast-pulls',
    item: 'slowPulls',
    reason: 'reason.slowPulls.lost',
    spoil: withPayload('lift', () => ({ speed_ms: 0.5 })),
  },
]);
