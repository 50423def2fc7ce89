// Slick fluid: dose, manner and trial, each once got wrong.

import { testDecisions, without, withPayload } from './decisions';

testDecisions('slick-fluid', 1, [
  { name: 'no-powder', item: 'doseFits', reason: 'reason.doseFits.thin', spoil: without('addAdditive') },
  {
    name: 'three-times-the-powder',
    item: 'doseFits',
    reason: 'reason.doseFits.thick',
    spoil: withPayload('addAdditive', ({ mass_g }) => ({ mass_g: (mass_g as number) * 3 })),
  },
  {
    name: 'dumped',
    item: 'noFishEyes',
    reason: 'reason.noFishEyes.lost',
    spoil: withPayload('addAdditive', () => ({ manner: 'dumped' })),
  },
  { name: 'never-tried', item: 'fluidTried', reason: 'reason.fluidTried.lost', spoil: without('feelFluid') },
]);
