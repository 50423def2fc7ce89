// Hand-made cases of lessons/rubric/fitForPeople.ts: polymer broken, test run, chlorine gone. Bands as in clear-water.

import type { LogEntry } from '$sim';
import { cameTo, cleanWell } from '../handMadeWell';
import { leftAfterPlan, told, wellWith, type HandMade, type ItemCase } from './cases';

const go = (tick: number, dose_mgL: number, contact_s: number): LogEntry => [
  tick,
  'breakPolymer',
  { dose_mgL, contact_s },
];
const dosed = (tick: number, value: number) => [{ tick, value, unit: 'mg/L' }];

const test = (tick: number, step_s: number, recovery_s: number, more: Record<string, number> = {}): LogEntry => [
  tick,
  'yieldTest',
  { lift: 'suction', rate1_Lmin: 14, ...more, step_s, recovery_s },
];
const ended = (tick: number, refusal = '') => told(tick, 'testDone', { lift: 'suction', lowest_m: 5, refusal });

const left: ItemCase = {
  kind: 'unfinished',
  says: 'left after the plan',
  view: leftAfterPlan(),
  share: 0,
  reason: 'none',
  data: {},
};

export const fit: HandMade = {
  polymerBreak: {
    bands: { full_mgL: 500, none_mgL: 100, full_s: 7200, none_s: 0 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: '500 mg/L for two hours (Y-10)',
        view: wellWith([go(20000, 500, 7200)]),
        share: 1,
        reason: 'full',
        data: { dose_mgL: 500, contact_h: 2 },
        evidence: dosed(20000, 500),
      },
      {
        kind: 'between',
        says: 'the best go counts, and of it the worse of dose and time: half of the hours',
        view: wellWith([go(20000, 200, 7200), go(30000, 1000, 3600)]),
        share: 3600 / 7200,
        reason: 'lost',
        data: { dose_mgL: 1000, contact_h: 1 },
        evidence: dosed(30000, 1000),
      },
      {
        kind: 'none',
        says: 'a dose for drinking water does not touch it',
        view: wellWith([go(20000, 50, 7200)]),
        share: 0,
        reason: 'lost',
        data: { dose_mgL: 50, contact_h: 2 },
        evidence: dosed(20000, 50),
      },
      left,
    ],
  },
  testRun: {
    bands: { test_s: 7200, recovery_s: 1800 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'three steps of 40 minutes (Y-19), half an hour of recovery',
        view: wellWith([test(40000, 2400, 1800, { rate2_Lmin: 16, rate3_Lmin: 18 })], [ended(50000)]),
        share: 0.7 + 0.3,
        reason: 'full',
        data: { test_h: 2, goal_h: 2 },
        evidence: [{ tick: 40000 }],
      },
      {
        kind: 'between',
        says: 'half the test, no recovery; a second that ran dry takes nothing away',
        view: wellWith([test(40000, 3600, 0), test(60000, 7200, 1800)], [ended(50000), ended(65000, 'ranDry')]),
        share: 0.7 * (3600 / 7200),
        reason: 'lost',
        data: { test_h: 1, goal_h: 2 },
        evidence: [{ tick: 40000 }, { tick: 60000 }],
      },
      {
        kind: 'none',
        says: 'it ran dry',
        view: wellWith([test(40000, 7200, 1800)], [ended(45000, 'ranDry')]),
        share: 0,
        reason: 'broken',
        data: {},
        evidence: [{ tick: 40000 }],
      },
      {
        kind: 'unfinished',
        says: 'begun and not ended',
        view: wellWith([test(40000, 7200, 1800)]),
        share: 0,
        reason: 'broken',
        data: {},
        evidence: [{ tick: 40000 }],
      },
    ],
  },
  chlorineGone: {
    bands: { full_mgL: 0.5, none_mgL: 5 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: '.5 mg/L (C-02)',
        view: cameTo({ disinfection: { left_mgL: 0.5 } }),
        share: 1,
        reason: 'full',
        data: { left_mgL: 0.5, limit_mgL: 0.5 },
        evidence: [{ value: 0.5, unit: 'mg/L' }],
      },
      {
        kind: 'between',
        says: '3.2 mg/L: two fifths',
        view: cameTo({ disinfection: { left_mgL: 3.2 } }),
        share: (5 - 3.2) / (5 - 0.5),
        reason: 'lost',
        data: { left_mgL: 3.2, limit_mgL: 0.5 },
        evidence: [{ value: 3.2, unit: 'mg/L' }],
      },
      {
        kind: 'none',
        says: 'not washed out',
        view: cameTo({ disinfection: { left_mgL: 80 } }),
        share: 0,
        reason: 'lost',
        data: { left_mgL: 80, limit_mgL: 0.5 },
        evidence: [{ value: 80, unit: 'mg/L' }],
      },
      {
        kind: 'none',
        says: 'none was put in: its being away is no merit',
        view: cameTo({ disinfection: { done: false, left_mgL: 0 } }),
        share: 0,
        reason: 'none',
        data: {},
      },
      { ...left, view: cleanWell({}, { verdict: null, handedOver: false }) },
    ],
  },
};
