// Sand that must stand: skin, stops and pulls, each once got wrong.

import { testDecisions, without, withPayload, type Spoil } from './decisions';

/** So long the crew looks for the next rod, s. */
const SEARCH_s = 300;

/** With the flow off somebody goes for the next rod. */
function longStops(): Spoil {
  let from_s = -Infinity;
  return (deed, { time_s }) => {
    if (deed?.action !== 'addRod') return deed;
    if (time_s > from_s + SEARCH_s + 60) from_s = time_s;
    return time_s < from_s + SEARCH_s ? null : deed;
  };
}

testDecisions('standing-sand', 1, [
  { name: 'no-skin', item: 'levelHeld', reason: 'reason.levelHeld.lost', spoil: without('addAdditive') },
  { name: 'long-stops', item: 'shortStops', reason: 'reason.shortStops.lost', spoil: longStops() },
  {
    name: 'fast-pulls',
    item: 'slowPulls',
    reason: 'reason.slowPulls.lost',
    spoil: withPayload('lift', () => ({ speed_ms: 0.5 })),
  },
]);
