// Hand-made cases of lessons/rubric/water.ts: yield, sand, clearness, lift, disinfection. Bands as in open-well.

import { cameTo, cleanWell } from '../handMadeWell';
import { leftAfterPlan, type HandMade, type ItemCase } from './cases';

const left: ItemCase = {
  kind: 'unfinished',
  says: 'left after the plan: nothing to measure',
  view: leftAfterPlan(),
  share: 0,
  reason: 'none',
  data: {},
};
const dry: ItemCase = {
  kind: 'none',
  says: 'a well that gives nothing',
  view: cameTo({ yield: { now_Lmin: 0, dry_Lmin: 0 } }),
  share: 0,
  reason: 'none',
  data: {},
};

const rate = (value: number) => [{ value, unit: 'L/min' }];
const sand = (value: number) => [{ value, unit: 'mg/L' }];
const looks = (share: number, NTU: number) => [
  { value: share, unit: '' },
  { value: NTU, unit: 'NTU' },
];

export const water: HandMade = {
  yieldAtDry: {
    bands: { full_Lmin: 12, none_Lmin: 3 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: '12 L/min (Y-17)',
        view: cameTo({ yield: { dry_Lmin: 12 } }),
        share: 1,
        reason: 'full',
        data: { yield_Lmin: 12, people: 500 },
        evidence: rate(12),
      },
      {
        kind: 'between',
        says: '7.5 are the middle of the band',
        view: cameTo({ yield: { dry_Lmin: 7.5 } }),
        share: (7.5 - 3) / (12 - 3),
        reason: 'lost',
        data: { yield_Lmin: 7.5, people: 500, goal_Lmin: 12 },
        evidence: rate(7.5),
      },
      {
        kind: 'none',
        says: 'two',
        view: cameTo({ yield: { dry_Lmin: 2 } }),
        share: 0,
        reason: 'lost',
        data: { yield_Lmin: 2, people: 500, goal_Lmin: 12 },
        evidence: rate(2),
      },
      {
        kind: 'none',
        says: 'forty, but brackish',
        view: cameTo({ water: { class: 'brackish', salt_gL: 3 } }),
        share: 0,
        reason: 'salt',
        data: { salt_gL: 3 },
        evidence: rate(40),
      },
      dry,
      left,
    ],
  },
  sandFree: {
    bands: { full_mgL: 5, none_mgL: 50 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: '5 mg/L (Y-06)',
        view: cameTo({ sand_mgL: 5 }),
        share: 1,
        reason: 'full',
        data: { sand_mgL: 5, limit_mgL: 5 },
        evidence: sand(5),
      },
      {
        kind: 'between',
        says: '27.5 are the middle of the band',
        view: cameTo({ sand_mgL: 27.5 }),
        share: (50 - 27.5) / (50 - 5),
        reason: 'lost',
        data: { sand_mgL: 27.5, limit_mgL: 5 },
        evidence: sand(27.5),
      },
      {
        kind: 'none',
        says: 'a gram',
        view: cameTo({ sand_mgL: 1000 }),
        share: 0,
        reason: 'lost',
        data: { sand_mgL: 1000, limit_mgL: 5 },
        evidence: sand(1000),
      },
      dry,
      left,
    ],
  },
  developed: {
    bands: { full_frac: 0.85, none_frac: 0.5, full_NTU: 5, none_NTU: 50 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: '85 % of the yield, 5 NTU (Y-08)',
        view: cameTo({ yield: { share_frac: 0.85 }, turbidity_NTU: 5 }),
        share: 1,
        reason: 'full',
        data: { given_pct: 85 },
        evidence: looks(0.85, 5),
      },
      {
        kind: 'between',
        says: '64 % of the yield: two fifths; 27.5 NTU would be half',
        view: cameTo({ yield: { share_frac: 0.64 }, turbidity_NTU: 27.5 }),
        share: (0.64 - 0.5) / (0.85 - 0.5),
        reason: 'lost',
        data: { given_pct: 64 },
        evidence: looks(0.64, 27.5),
      },
      {
        kind: 'between',
        says: '32 NTU: two fifths',
        view: cameTo({ turbidity_NTU: 32 }),
        share: (50 - 32) / (50 - 5),
        reason: 'cloudy',
        data: { turbidity_NTU: 32 },
        evidence: looks(0.95, 32),
      },
      {
        kind: 'none',
        says: 'mud',
        view: cameTo({ turbidity_NTU: 400 }),
        share: 0,
        reason: 'cloudy',
        data: { turbidity_NTU: 400 },
        evidence: looks(0.95, 400),
      },
      dry,
      left,
    ],
  },
  liftFits: {
    bands: {},
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'it draws from 5 m and 1 m of drawdown (Y-20)',
        view: cleanWell(),
        share: 1,
        reason: 'full',
        data: { level_m: 6 },
        evidence: [{ depth_m: 6 }],
      },
      {
        kind: 'none',
        says: 'suction from 9 m',
        view: cameTo({ dryStatic_m: 8, fittedWorks: false }),
        share: 0,
        reason: 'lost',
        data: { level_m: 9 },
        evidence: [{ depth_m: 9 }],
      },
      { kind: 'none', says: 'no pump', view: cameTo({ fitted: null }), share: 0, reason: 'none', data: {} },
      left,
    ],
  },
  disinfected: {
    bands: {},
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'dose and time enough (C-02, C-03)',
        view: cleanWell(),
        share: 1,
        reason: 'full',
        data: { ct_mgminL: 40000 },
        evidence: [{ value: 40000, unit: 'mg min/L' }],
      },
      {
        kind: 'between',
        says: 'too short: a quarter',
        view: cameTo({ disinfection: { enough: false, ct_mgminL: 600 } }),
        share: 0.25,
        reason: 'short',
        data: { ct_mgminL: 600 },
        evidence: [{ value: 600, unit: 'mg min/L' }],
      },
      {
        kind: 'none',
        says: 'never',
        view: cameTo({ disinfection: { done: false, enough: false, ct_mgminL: 0 } }),
        share: 0,
        reason: 'none',
        data: {},
      },
      left,
    ],
  },
};
