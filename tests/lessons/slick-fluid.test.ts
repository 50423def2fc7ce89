// Slick fluid: dose, manner, soak and trial, each once got wrong.

import { testDecisions, without, withPayload, type Spoil } from './decisions';

/** The powder comes out of its tin only where the coarse sand begins. */
const late: Spoil = (deed, { stem, time_s }, memory) => {
  if (stem.bottom_m >= 2) return deed;
  memory.patience.notBefore_s.addAdditive = time_s + 2;
  return deed?.action === 'addAdditive' ? null : deed;
};

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
  { name: 'too-late', item: 'doseFits', reason: 'reason.doseFits.thin', spoil: late },
  { name: 'never-tried', item: 'fluidTried', reason: 'reason.fluidTried.lost', spoil: without('feelFluid') },
]);
