// The first rods: priming, powder, weight, clearing and labels, each once got wrong.

import { neverDoing, testDecisions, without, withPayload, type Spoil } from './decisions';

/** The hand on the rope hardly lets the stem down. */
const timid: Spoil = (deed, { stem }, memory) => {
  memory.feed_frac = Math.min(memory.feed_frac, 0.1);
  if (deed?.action !== 'setFeed' || deed.payload.feed_frac === 0) return deed;
  return stem.feed_frac === 0.1 ? null : { action: 'setFeed', payload: { feed_frac: 0.1 } };
};

/** The flow is stopped as soon as the rod is down. */
const atOnce: Spoil = (deed, _senses, memory) => {
  if (memory.clearing_s > 0) {
    memory.clearing_s = 0;
    memory.lifted = true;
  }
  return deed;
};

testDecisions('first-rods', 3, [
  { name: 'not-primed', item: 'depthReached', reason: 'reason.depthReached.lost', spoil: neverDoing('prime') },
  { name: 'no-powder', item: 'doseFits', reason: 'reason.doseFits.thin', spoil: without('addAdditive') },
  { name: 'a-timid-hand', item: 'depthReached', reason: 'reason.depthReached.lost', spoil: timid },
  {
    name: 'labels-too-deep',
    item: 'labelsTrue',
    reason: 'reason.labelsTrue.lost',
    spoil: withPayload('catchSample', ({ label_m }) => ({ label_m: (label_m as number) + 0.8 })),
  },
  { name: 'not-cleared', item: 'clearedStops', reason: 'reason.clearedStops.lost', spoil: atOnce },
]);
