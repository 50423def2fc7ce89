// Stiff clay: weight, flow and patience, each once got wrong.

import { testDecisions, withPayload, type Spoil } from './decisions';

/** The throttle is put down to save petrol once the clay is met. */
const saved: Spoil = (deed, { stem, pump }) =>
  stem.sound === 'sticky' && pump.throttle_frac === 1
    ? { action: 'setThrottle', payload: { throttle_frac: 0.5 } }
    : deed?.action === 'setThrottle' && stem.bottom_m > 1 && deed.payload.throttle_frac === 1
      ? null
      : deed;

testDecisions('stiff-clay', 1, [
  {
    name: 'all-the-weight',
    item: 'bitClean',
    reason: 'reason.bitClean.lost',
    spoil: withPayload('setFeed', (payload) => (payload.feed_frac !== 0 ? { feed_frac: 1 } : payload)),
  },
  {
    name: 'a-timid-hand',
    item: 'clayPace',
    reason: 'reason.clayPace.lost',
    spoil: withPayload('setFeed', ({ feed_frac }) => ({ feed_frac: Math.min(feed_frac as number, 0.1) })),
  },
  { name: 'flow-saved', item: 'clayPace', reason: 'reason.clayPace.lost', spoil: saved },
]);
