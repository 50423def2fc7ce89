// Hand-made cases of lessons/rubric/screenPlan.ts: pack over the screen, sump and cap under it. Bands as in the-screen.

import { cleanWell, planned } from '../handMadeWell';
import { leftAfterPlan, type HandMade } from './cases';

export const screenPlan: HandMade = {
  packCovers: {
    bands: { full_m: 0.6, none_m: 0 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'a metre over the screen (S-13)',
        view: cleanWell(),
        share: 1,
        reason: 'full',
        data: { above_m: 1, goal_m: 0.6 },
        evidence: [{ depth_m: 7, value: 1, unit: 'm' }],
      },
      { kind: 'full', says: 'no pack', view: planned({ pack: 'none' }), share: 1, reason: 'without', data: {} },
      {
        kind: 'between',
        says: 'three decimetres are half',
        view: planned({ packTop_m: 7.7 }),
        share: 0.3 / 0.6,
        reason: 'lost',
        data: { above_m: 0.3, goal_m: 0.6 },
        evidence: [{ depth_m: 7.7, value: 0.3, unit: 'm' }],
      },
      {
        kind: 'none',
        says: 'it ends at the screen',
        view: planned({ packTop_m: 8 }),
        share: 0,
        reason: 'lost',
        data: { above_m: 0, goal_m: 0.6 },
        evidence: [{ depth_m: 8, value: 0, unit: 'm' }],
      },
      {
        kind: 'unfinished',
        says: 'a good plan is one, whether or not the casing was run',
        view: leftAfterPlan(),
        share: 1,
        reason: 'full',
        data: { above_m: 1, goal_m: 0.6 },
        evidence: [{ depth_m: 7, value: 1, unit: 'm' }],
      },
    ],
  },
  screenFoot: {
    bands: { full_m: 0.5 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'half a metre and a cap (S-22)',
        view: cleanWell(),
        share: 1,
        reason: 'full',
        data: { sump_m: 0.5, goal_m: 0.5 },
        evidence: [{ depth_m: 11, value: 0.5, unit: 'm' }],
      },
      {
        kind: 'between',
        says: 'a cap and two fifths of the sump',
        view: planned({ sump_m: 0.2 }),
        share: (1 + 0.2 / 0.5) / 2,
        reason: 'lost',
        data: { sump_m: 0.2, goal_m: 0.5 },
        evidence: [{ depth_m: 11, value: 0.2, unit: 'm' }],
      },
      {
        kind: 'between',
        says: 'a sump without a cap',
        view: planned({ cap: false }),
        share: 1 / 2,
        reason: 'open',
        data: { sump_m: 0.5, goal_m: 0.5 },
        evidence: [{ depth_m: 11, value: 0.5, unit: 'm' }],
      },
      {
        kind: 'none',
        says: 'neither',
        view: planned({ cap: false, sump_m: 0 }),
        share: 0,
        reason: 'open',
        data: { sump_m: 0, goal_m: 0.5 },
        evidence: [{ depth_m: 11, value: 0, unit: 'm' }],
      },
      {
        kind: 'unfinished',
        says: 'a good plan is one, whether or not the casing was run',
        view: leftAfterPlan(),
        share: 1,
        reason: 'full',
        data: { sump_m: 0.5, goal_m: 0.5 },
        evidence: [{ depth_m: 11, value: 0.5, unit: 'm' }],
      },
    ],
  },
};
