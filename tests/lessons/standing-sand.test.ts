// Sand that must stand: skin and pulls, each once got wrong.

import { testDecisions, without, withPayload } from './decisions';

testDecisions('standing-sand', 1, [
  { name: 'no-skin', item: 'levelHeld', reason: 'reason.levelHeld.lost', spoil: without('addAdditive') },
  {
    name: 'fast-pulls',
    item: 'slowPulls',
    reason: 'reason.slowPulls.lost',
    spoil: withPayload('lift', () => ({ speed_ms: 0.5 })),
  },
]);
