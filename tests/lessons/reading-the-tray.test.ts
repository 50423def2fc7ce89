// Reading the tray: how often, which depth, which name, which log, each once got wrong.

import { testDecisions, without, withPayload, type Spoil } from './decisions';

/** One sample from each rod is thought enough. */
const few: Spoil = (deed, { stem }) => (deed?.action === 'catchSample' && stem.left_m > 0.7 ? null : deed);

testDecisions('reading-the-tray', 3, [
  { name: 'few-samples', item: 'changesFound', reason: 'reason.changesFound.missed', spoil: few },
  {
    name: 'labels-too-deep',
    item: 'changesFound',
    reason: 'reason.changesFound.missed',
    spoil: withPayload('catchSample', ({ label_m }) => ({ label_m: (label_m as number) + 0.8 })),
  },
  {
    name: 'all-called-fine',
    item: 'changesFound',
    reason: 'reason.changesFound.none',
    spoil: withPayload('nameSample', () => ({ main: 'fineSand' })),
  },
  { name: 'no-log', item: 'changesFound', reason: 'reason.changesFound.none', spoil: without('logLayer') },
]);
