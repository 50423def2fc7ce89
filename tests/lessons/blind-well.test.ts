// A whole well on ground that nobody shows: spot, depth, slots, casing, seal, powder, washing and chlorine, each once got wrong.

import { testDecisions, without } from './decisions';
import { atSpot, powderTimes, WELL_DECISIONS } from './wellDecisions';

testDecisions('blind-well', 5, [
  atSpot('B'),
  ...WELL_DECISIONS,
  // Where clay from the ground thickens the water enough, no powder does no harm; on this ground the hole is lost without it.
  { name: 'no-powder', item: 'fluidReady', reason: 'reason.fluidReady.none', spoil: without('addAdditive'), seed: 2 },
  { name: 'three-times-the-powder', item: 'sealMade', reason: 'reason.sealMade.none', spoil: powderTimes(3) },
]);
