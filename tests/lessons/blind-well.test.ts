// A whole well on ground that nobody shows: depth, slots, casing, seal, powder, washing and chlorine, each once got wrong.

import { testDecisions } from './decisions';
import { powderTimes, WELL_DECISIONS } from './wellDecisions';

testDecisions('blind-well', 5, [
  ...WELL_DECISIONS,
  { name: 'three-times-the-powder', item: 'sealMade', reason: 'reason.sealMade.none', spoil: powderTimes(3) },
]);
