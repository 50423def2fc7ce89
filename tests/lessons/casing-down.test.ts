// The way down: level let down, joints glued over the open hole, casing run late, pack poured fast and not sounded, hung casing forced.

import { describeDrill } from './drillLogs';

describeDrill('casing-down', {
  level: { items: ['levelKept'], reason: 'reason.levelKept.lost' },
  joints: { items: ['jointsSet', 'levelKept'], reason: 'reason.jointsSet.lost' },
  late: { items: ['casingSoon', 'casingDown'], reason: 'reason.casingSoon.lost' },
  pack: { items: ['packFell', 'packDone'], reason: 'reason.packFell.lost' },
  hung: { items: ['hungGently', 'levelKept'], reason: 'reason.hungGently.lost' },
});
