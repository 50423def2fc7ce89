// Hand-made cases of lessons/rubric/sealing.ts: the patience of a seal, and its length by the line. Bands as in the-seal.

import type { LogEntry } from '$sim';
import { leftAfterPlan, told, wellWith, type HandMade } from './cases';

/** Cement sets in a day, pellets of bentonite swell for two hours (A-12 has four as a minimum of other guides; the simulator's table says two). */
const CEMENT_s = 86400;
const PELLETS_s = 7200;

const placed = (tick: number, name: string) => told(tick, 'sealPlaced', { seal: name, volume_L: 20 });
const washed = (tick: number): LogEntry => [tick, 'develop', { method: 'surge', time_s: 3600 }];
const built = (tick: number): LogEntry => [tick, 'headWorks', { apron_m: 1.5, drain_m: 3, cap: true, lift: 'suction' }];

/** Soundings stand at 9000 s (7.1 m) and 12000 s (.05 m); with `on` one more, after the seal. */
const put = (tick: number, material = 'cement', action: 'placeSeal' | 'backfill' = 'placeSeal'): LogEntry =>
  action === 'placeSeal'
    ? [tick, 'placeSeal', { seal: material, volume_L: 20, rate_Lmin: 2 }]
    : [tick, 'backfill', { material, volume_L: 20 }];
const on = (top_m: number) => told(10900, 'sounded', { top_m });
const line = (to_m: number, tick: number, from_m: number) => [
  { tick: 9000, depth_m: to_m },
  { tick, depth_m: from_m },
];

export const sealing: HandMade = {
  sealWaited: {
    bands: {},
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'what a crew did to which the rest was left is not blamed on the learner',
        view: wellWith([washed(10600)], [placed(10000, 'cement'), told(10300, 'leftToCrew')]),
        share: 1,
        reason: 'full',
        data: {},
        evidence: [{ tick: 10000 }],
      },
      {
        kind: 'full',
        says: 'washed and built upon after a day',
        view: wellWith([washed(10000 + CEMENT_s), built(20000 + CEMENT_s)], [placed(10000, 'cement')]),
        share: 1,
        reason: 'full',
        data: {},
        evidence: [{ tick: 10000 }],
      },
      {
        kind: 'full',
        says: 'washed before, and clay needs no time',
        view: wellWith([washed(9500), built(10100)], [placed(10000, 'clay')]),
        share: 1,
        reason: 'full',
        data: {},
        evidence: [{ tick: 10000 }],
      },
      {
        kind: 'between',
        says: 'the worst counts: pellets had three quarters, cement a quarter',
        view: wellWith(
          [washed(10000 + (PELLETS_s * 3) / 4), built(20000 + CEMENT_s / 4)],
          [placed(10000, 'bentonitePellets'), placed(20000, 'cement')],
        ),
        share: 1 / 4,
        reason: 'lost',
        data: { had_pct: 25 },
        evidence: [{ tick: 20000 + CEMENT_s / 4 }],
      },
      {
        kind: 'none',
        says: 'built upon at once',
        view: wellWith([built(10000)], [placed(10000, 'cement')]),
        share: 0,
        reason: 'lost',
        data: { had_pct: 0 },
        evidence: [{ tick: 10000 }],
      },
      {
        kind: 'none',
        says: 'cuttings are no seal',
        view: wellWith([], [placed(10000, 'cuttings')]),
        share: 0,
        reason: 'none',
        data: {},
      },
      {
        kind: 'none',
        says: 'nor is what another crew places the learner\u2019s',
        view: wellWith([], [told(9500, 'leftToCrew'), placed(10000, 'cement')]),
        share: 0,
        reason: 'none',
        data: {},
      },
      { kind: 'unfinished', says: 'left after the plan', view: leftAfterPlan(), share: 0, reason: 'none', data: {} },
    ],
  },
  sealInterval: {
    bands: { full_m: 2.8, none_m: 1, from_m: 0.5 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: '7.05 m, up to the ground (A-08 wants three)',
        view: wellWith([put(10000)]),
        share: 1,
        reason: 'full',
        data: { from_m: 0.1, to_m: 7.1, length_m: 7.1 },
        evidence: line(7.1, 12000, 0.1),
      },
      {
        kind: 'full',
        says: 'clay filled in is a seal as well',
        view: wellWith([put(10000, 'clay', 'backfill')]),
        share: 1,
        reason: 'full',
        data: { from_m: 0.1, to_m: 7.1, length_m: 7.1 },
        evidence: line(7.1, 12000, 0.1),
      },
      {
        kind: 'between',
        says: '1.9 m, from 2 m to 3.9: half of the length, a quarter of the height; the worse counts',
        view: wellWith([put(10000)], [told(9900, 'sounded', { top_m: 3.9 }), on(2)]),
        share: (2.5 - 2) / 2,
        reason: 'deep',
        data: { from_m: 2, to_m: 3.9, length_m: 1.9 },
        evidence: [
          { tick: 9900, depth_m: 3.9 },
          { tick: 10900, depth_m: 2 },
        ],
      },
      {
        kind: 'between',
        says: '1.9 m at the ground are the middle of the band',
        view: wellWith([put(10000)], [told(9900, 'sounded', { top_m: 2 }), on(0.1)]),
        share: (1.9 - 1) / (2.8 - 1),
        reason: 'short',
        data: { from_m: 0.1, to_m: 2, length_m: 1.9 },
        evidence: [
          { tick: 9900, depth_m: 2 },
          { tick: 10900, depth_m: 0.1 },
        ],
      },
      {
        kind: 'none',
        says: 'half a metre',
        view: wellWith([put(10000)], [told(9900, 'sounded', { top_m: 0.9 }), on(0.4)]),
        share: 0,
        reason: 'short',
        data: { from_m: 0.4, to_m: 0.9, length_m: 0.5 },
        evidence: [
          { tick: 9900, depth_m: 0.9 },
          { tick: 10900, depth_m: 0.4 },
        ],
      },
      {
        kind: 'none',
        says: 'cuttings on top before the line came down: nobody knows where the seal ends',
        view: wellWith([put(10000), put(10500, 'cuttings', 'backfill')]),
        share: 0,
        reason: 'blind',
        data: {},
        evidence: [{ tick: 10000 }],
      },
      {
        kind: 'none',
        says: 'nobody sounded after it',
        view: wellWith([put(13000)]),
        share: 0,
        reason: 'blind',
        data: {},
        evidence: [{ tick: 13000 }],
      },
      {
        kind: 'none',
        says: 'cuttings, gravel, a seal that was refused, and one of another crew',
        view: wellWith(
          [put(10000, 'cuttings'), put(10010, 'pack1', 'backfill'), put(10020, 'cement'), put(10400, 'cement')],
          [told(10020, 'refused', { action: 'placeSeal', reason: 'handsBusy' }), told(10300, 'leftToCrew')],
        ),
        share: 0,
        reason: 'none',
        data: {},
      },
      { kind: 'unfinished', says: 'left after the plan', view: leftAfterPlan(), share: 0, reason: 'none', data: {} },
    ],
  },
};
