// The seal: of cuttings, too short, washed at once, and left out.

import { describeDrill } from './drillLogs';

describeDrill('the-seal', {
  material: { items: ['sealMade'], reason: 'reason.sealMade.none' },
  interval: { items: ['sealInterval', 'sealPlace'], reason: 'reason.sealInterval.short' },
  wait: { items: ['sealWaited'], reason: 'reason.sealWaited.lost' },
  leftOut: { items: ['sealInterval', 'sealWaited'], reason: 'reason.sealInterval.none' },
});
