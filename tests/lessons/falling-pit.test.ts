// The falling pit: easing off, thickening, water, each once got wrong.

import { testDecisions, without, withPayload, type Spoil } from './decisions';

/** Without powder, and drilled on whatever comes back. */
const drilledOn: Spoil = (deed, { stem, returns, hands }, memory) => {
  memory.water.lost_s = -1;
  memory.water.givenUp = false;
  memory.water.returns_frac = 1;
  if (deed?.action === 'addAdditive') return null;
  const blind = returns.running && returns.share_frac < 0.8 && stem.turning && stem.left_m > 0.1;
  return blind && stem.feed_frac === 0 && hands.free >= 1 ? { action: 'setFeed', payload: { feed_frac: 1 } } : deed;
};

testDecisions('falling-pit', 1, [
  { name: 'drilled-on', item: 'easedOff', reason: 'reason.easedOff.lost', spoil: drilledOn },
  {
    name: 'not-thickened',
    item: 'doseFits',
    reason: 'reason.doseFits.thin',
    spoil: withPayload('addAdditive', ({ mass_g }) => ({ mass_g: Math.max(10, Math.round((mass_g as number) * 0.3)) })),
  },
  {
    name: 'no-water-added',
    item: 'pitStood',
    reason: 'reason.pitStood.lost',
    spoil: without('addWater', 'fillPit', 'addAdditive'),
  },
]);
