// Hand-made cases of lessons/rubric/loss.ts: drilling without returns, and fluid lost. Bands as in falling-pit.

import type { Row } from '../handMade';
import { drilled, halfway, told, type HandMade } from './cases';

/** Returns are poor in these minutes; a decimetre is drilled in each. */
const poor =
  (from: number, to: number) =>
  (_row: Row, i: number): Row => ({ returns_frac: i >= from && i <= to ? 0.5 : 0.9 });

/** So many litres gone by the last row, over what was gone at the first. */
const drunk =
  (litres: number, last = 44) =>
  (_row: Row, i: number): Row => ({ lost_m3: i === last ? (litres + 100) / 1000 : 0.1 });

export const loss: HandMade = {
  easedOff: {
    bands: { share_frac: 0.75, full_m: 0.1, none_m: 0.5, least_m: 1 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'one decimetre, and then it stood',
        view: drilled(poor(20, 20)),
        share: 1,
        reason: 'full',
        data: { blind_m: 0.1 },
        evidence: [{ tick: 1200, depth_m: 2 }],
      },
      {
        kind: 'full',
        says: 'three quarters are enough',
        view: drilled(() => ({ returns_frac: 0.75 })),
        share: 1,
        reason: 'full',
        data: { blind_m: 0 },
      },
      {
        kind: 'full',
        says: 'in the first minute of a flow the mouth fills: minutes 20 and 21 are not told',
        view: drilled((row, i) => ({ ...poor(20, 21)(row, i), flow_m3s: i === 19 ? 0 : 0.002 })),
        share: 1,
        reason: 'full',
        data: { blind_m: 0 },
      },
      {
        kind: 'between',
        says: 'three decimetres are the middle of the band',
        view: drilled(poor(20, 22)),
        share: (0.5 - 0.3) / (0.5 - 0.1),
        reason: 'lost',
        data: { blind_m: 0.3 },
        evidence: [{ tick: 1200, depth_m: 2 }],
      },
      {
        kind: 'none',
        says: 'a metre',
        view: drilled(poor(20, 29)),
        share: 0,
        reason: 'lost',
        data: { blind_m: 1 },
        evidence: [{ tick: 1200, depth_m: 2 }],
      },
      {
        kind: 'unfinished',
        says: 'two metres are enough to show it',
        view: halfway(poor(99, 99)),
        share: 1,
        reason: 'full',
        data: { blind_m: 0 },
      },
      {
        kind: 'unfinished',
        says: 'less than one metre is not',
        view: { ...halfway(poor(99, 99)), depth_m: 0.9 },
        share: 0,
        reason: 'none',
        data: {},
      },
    ],
  },
  littleLost: {
    bands: { full_L: 550, none_L: 1200, least_m: 1.5 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: '550 L; what was gone before is not the crew\u2019s',
        view: drilled(drunk(550)),
        share: 1,
        reason: 'full',
        data: { lost_L: 550 },
      },
      {
        kind: 'between',
        says: '875 L are the middle of the band; when the returns were lost is told',
        view: drilled(drunk(875), [told(900, 'returnsLost')]),
        share: (1200 - 875) / (1200 - 550),
        reason: 'lost',
        data: { lost_L: 875 },
        evidence: [{ tick: 900 }],
      },
      {
        kind: 'none',
        says: 'two cubic metres',
        view: drilled(drunk(2000)),
        share: 0,
        reason: 'lost',
        data: { lost_L: 2000 },
      },
      {
        kind: 'unfinished',
        says: 'two metres are enough to show it',
        view: halfway(drunk(300, 22)),
        share: 1,
        reason: 'full',
        data: { lost_L: 300 },
      },
      {
        kind: 'unfinished',
        says: 'less than a metre and a half is not',
        view: { ...halfway(drunk(0, 22)), depth_m: 1.4 },
        share: 0,
        reason: 'none',
        data: {},
      },
    ],
  },
};
