// Hand-made cases of lessons/rubric/mending.ts: how long broken things stood. Bands as in bad-day.

import type { RunEvent } from '$sim';
import { withWellEvents } from '../handMadeWell';
import { leftAfterPlan, told, type HandMade } from './cases';

const broke = (...events: RunEvent[]) => withWellEvents(() => false, events);
const mended = (tick: number, what: string): RunEvent => told(tick, 'mended', { what });

export const mending: HandMade = {
  mendedSoon: {
    bands: { full_s: 720, none_s: 2400 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'twelve minutes',
        view: broke(told(3000, 'engineStopped'), mended(3720, 'engine')),
        share: 1,
        reason: 'full',
        data: { time_min: 12 },
        evidence: [{ tick: 3000, value: 720, unit: 's' }],
      },
      {
        kind: 'between',
        says: 'the longest counts: 26 minutes are the middle of the band; what is mended later mends both',
        view: broke(
          told(3000, 'engineStopped'),
          told(3560, 'engineStopped'),
          mended(4000, 'hose'),
          mended(4560, 'engine'),
        ),
        share: (2400 - 1560) / (2400 - 720),
        reason: 'lost',
        data: { time_min: 26 },
        evidence: [
          { tick: 3000, value: 1560, unit: 's' },
          { tick: 3560, value: 1000, unit: 's' },
        ],
      },
      {
        kind: 'none',
        says: 'never: it counts to the end',
        view: broke(told(98200, 'hoseBurst'), mended(98300, 'engine')),
        share: 0,
        reason: 'lost',
        data: { time_min: 30 },
        bands: { full_s: 720, none_s: 1800 },
        evidence: [{ tick: 98200, value: 1800, unit: 's' }],
      },
      {
        kind: 'none',
        says: 'nothing broke: nothing shows',
        view: broke(),
        share: 0,
        reason: 'none',
        data: {},
      },
      {
        kind: 'unfinished',
        says: 'mended in time, and the well left after the plan',
        view: { ...leftAfterPlan(), events: [told(3000, 'hoseBurst'), mended(3300, 'hose')] },
        share: 1,
        reason: 'full',
        data: { time_min: 5 },
        evidence: [{ tick: 3000, value: 300, unit: 's' }],
      },
    ],
  },
};
