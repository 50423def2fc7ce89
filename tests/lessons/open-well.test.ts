// A whole well with the ground shown: spot, depth, slots, casing, seal, powder, washing and chlorine, each once got wrong.

import { testDecisions } from './decisions';
import { atSpot, powderTimes, WELL_DECISIONS } from './wellDecisions';

testDecisions('open-well', 6, [
  atSpot('A'),
  ...WELL_DECISIONS,
  { name: 'four-times-the-powder', item: 'sandFree', reason: 'reason.sandFree.lost', spoil: powderTimes(4) },
]);
