// The stop decision: too soon, too deep, and without samples.

import { describeDrill } from './drillLogs';

describeDrill('deep-enough', {
  early: { items: ['stretchEnough'], reason: 'reason.stretchEnough.lost' },
  late: { items: ['noDeeper'], reason: 'reason.noDeeper.told' },
  samples: { items: ['sampleEachRod', 'labelsTrue', 'stretchEnough'], reason: 'reason.sampleEachRod.lost' },
});
