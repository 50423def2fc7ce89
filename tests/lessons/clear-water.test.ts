// Clear water: washed too short, a pump that does not reach, not disinfected, not tested.

import { describeDrill } from './drillLogs';

describeDrill('clear-water', {
  wash: { items: ['developed'], reason: 'reason.developed.cloudy' },
  lift: { items: ['liftFits'], reason: 'reason.liftFits.lost' },
  disinfect: { items: ['disinfected', 'chlorineGone'], reason: 'reason.disinfected.none' },
  test: { items: ['testRun'], reason: 'reason.testRun.none' },
});
