// The full pit: the heap, the strength of the fluid, the strainer, each once got wrong.

import { neverDoing, testDecisions, withPayload, type Spoil } from './decisions';

const low = neverDoing('setStrainer', 'clearStrainer');

/** The strainer stays where it hangs, and nobody heeds the labouring pump. */
const unheeded: Spoil = (deed, senses, memory) => {
  const heeded = deed?.action === 'setThrottle' && senses.pump.sound !== 'steady' && senses.pump.sound !== 'off';
  return low(heeded ? null : deed, senses, memory);
};

testDecisions('full-pit', 4, [
  { name: 'not-dug', item: 'heapDug', reason: 'reason.heapDug.lost', spoil: neverDoing('digOutPit') },
  {
    name: 'too-thick',
    item: 'doseFits',
    reason: 'reason.doseFits.thick',
    spoil: withPayload('addAdditive', ({ mass_g }) => ({ mass_g: (mass_g as number) * 4 })),
  },
  {
    name: 'strainer-low',
    item: 'strainerOpen',
    reason: 'reason.strainerOpen.lost',
    spoil: unheeded,
  },
]);
