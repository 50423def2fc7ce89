// The screen: in the wrong place, with slots that let the sand through, too short, and with too many slots.

import { describeDrill } from './drillLogs';

describeDrill('the-screen', {
  place: { items: ['screenPlace'], reason: 'reason.screenPlace.fine' },
  slot: { items: ['slotFits'], reason: 'reason.slotFits.wide' },
  length: { items: ['openAreaEnough'], reason: 'reason.openAreaEnough.lost' },
  strong: { items: ['casingStrong'], reason: 'reason.casingStrong.slots' },
});
