// Hand-made cases of lessons/rubric/wall.ts: what fell, the level, the stops, the pulls. Bands as in standing-sand.

import type { RunEvent } from '$sim';
import { stop, withEvents, type Row } from '../handMade';
import { drilled, halfway, told, withActs, type HandMade } from './cases';

/** So many litres fallen by the last row, over what lay there at the first. */
const fallen =
  (litres: number, last = 44) =>
  (_row: Row, i: number): Row => ({ fallen_m3: i === last ? (litres + 2) / 1000 : 0.002 });

const fall = (tick: number, cause: string, from_m: number): RunEvent => told(tick, 'wallFails', { cause, from_m });

/** Returns from minute 5 on; the level stands at one depth in minute 3, at another in minute 20. */
const level =
  (early_m: number, late_m: number) =>
  (_row: Row, i: number): Row => ({
    returns_frac: i < 5 ? 0 : 0.9,
    holeLevel_m: i === 3 ? early_m : i === 20 ? late_m : 0.1,
  });

/** Nine litres of a band from 3 to 15. */
const NINE = (15 - 9) / (15 - 3);
const nineBy = (reason: string, ...falls: RunEvent[]) =>
  ({
    kind: 'between',
    says: `9 L because of ${falls.map(({ data }) => data.cause).join(', ')}`,
    view: drilled(fallen(9), falls),
    share: NINE,
    reason,
    data: { fallen_L: 9 },
    evidence: falls
      .filter(({ data }) => data.cause !== 'squeeze')
      .map(({ tick, data }) => ({ tick, depth_m: data.from_m as number })),
  }) as const;

export const wall: HandMade = {
  wallStood: {
    bands: { full_L: 3, none_L: 15 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'two litres; what had fallen before is not the crew\u2019s',
        view: drilled(fallen(2)),
        share: 1,
        reason: 'full',
        data: { fallen_L: 2 },
      },
      nineBy('level', fall(900, 'level', 2)),
      nineBy('inflow', fall(900, 'inflow', 2)),
      nineBy('noCake', fall(900, 'noCake', 2)),
      nineBy('noCake', fall(900, 'gap', 2)),
      nineBy('swab', fall(900, 'swab', 2)),
      nineBy('washout', fall(900, 'washout', 2)),
      nineBy('swab', fall(900, 'level', 2), fall(950, 'swab', 3), fall(990, 'swab', 3.5)),
      nineBy('lost', fall(900, 'squeeze', 2)),
      {
        kind: 'none',
        says: 'twenty litres',
        view: drilled(fallen(20), [fall(900, 'level', 2)]),
        share: 0,
        reason: 'level',
        data: { fallen_L: 20 },
        evidence: [{ tick: 900, depth_m: 2 }],
      },
      {
        kind: 'unfinished',
        says: 'half the depth earns half',
        view: halfway(fallen(2, 22)),
        share: 2.2 / 4.4,
        reason: 'unfinished',
        data: { fallen_L: 2 },
      },
    ],
  },
  levelHeld: {
    bands: { full_m: 0.6, none_m: 1.2 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'how low it stood before the hole first ran over does not count',
        view: drilled(level(3, 0.5)),
        share: 1,
        reason: 'full',
        data: { level_m: 0.5 },
        evidence: [{ tick: 1200, depth_m: 0.5 }],
      },
      {
        kind: 'between',
        says: '.9 m is the middle of the band',
        view: drilled(level(0, 0.9)),
        share: (1.2 - 0.9) / (1.2 - 0.6),
        reason: 'lost',
        data: { level_m: 0.9 },
        evidence: [{ tick: 1200, depth_m: 0.9 }],
      },
      {
        kind: 'none',
        says: 'two metres',
        view: drilled(level(0, 2)),
        share: 0,
        reason: 'lost',
        data: { level_m: 2 },
        evidence: [{ tick: 1200, depth_m: 2 }],
      },
      {
        kind: 'none',
        says: 'a hole that never ran over shows nothing',
        view: drilled(() => ({ returns_frac: 0.4 })),
        share: 0,
        reason: 'none',
        data: {},
      },
      {
        kind: 'unfinished',
        says: 'half the depth earns half',
        view: halfway(level(0, 0.5)),
        share: 2.2 / 4.4,
        reason: 'unfinished',
        data: { level_m: 0.5 },
        evidence: [{ tick: 1200, depth_m: 0.5 }],
      },
    ],
  },
  shortStops: {
    bands: { full_s: 130, none_s: 300 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'two stops of 50 s; the last was the end of the job',
        view: withEvents(() => false, []),
        share: 1,
        reason: 'full',
        data: { stood_s: 50 },
        evidence: [
          { tick: 700, value: 50, unit: 's' },
          { tick: 1300, value: 50, unit: 's' },
        ],
      },
      {
        kind: 'between',
        says: 'the longest counts: 215 s is the middle of the band',
        view: withEvents(({ tick }) => tick === 1350 || tick === 1400, [told(1515, 'flowStarted')]),
        share: (300 - 215) / (300 - 130),
        reason: 'lost',
        data: { stood_s: 215 },
        evidence: [
          { tick: 700, value: 50, unit: 's' },
          { tick: 1300, value: 215, unit: 's' },
        ],
      },
      {
        kind: 'none',
        says: 'ten minutes',
        view: withEvents(({ tick }) => tick === 1350 || tick === 1400, [told(1900, 'flowStarted')]),
        share: 0,
        reason: 'lost',
        data: { stood_s: 600 },
        evidence: [
          { tick: 700, value: 50, unit: 's' },
          { tick: 1300, value: 600, unit: 's' },
        ],
      },
      {
        kind: 'none',
        says: 'a stop above .4 m is none of a hole',
        view: withEvents(
          ({ name }) => name === 'flowStopped' || name === 'flowStarted',
          [stop(100, 0.2), told(900, 'flowStarted')],
        ),
        share: 0,
        reason: 'none',
        data: {},
      },
      {
        kind: 'unfinished',
        says: 'what was stopped and never went on is not a long stop',
        view: halfway(),
        share: 1,
        reason: 'full',
        data: { stood_s: 50 },
        evidence: [{ tick: 700, value: 50, unit: 's' }],
      },
    ],
  },
  slowPulls: {
    bands: { full_ms: 0.1, none_ms: 0.3 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'a decimetre a second',
        view: withActs([[690, 'lift', { distance_m: 0.2, speed_ms: 0.1 }]]),
        share: 1,
        reason: 'full',
        data: { speed_ms: 0.1 },
        evidence: [{ tick: 690, value: 0.1, unit: 'm/s' }],
      },
      {
        kind: 'between',
        says: 'the fastest counts, of rods drawn too; one refused does not',
        view: withActs(
          [
            [690, 'lift', { distance_m: 0.2, speed_ms: 0.1 }],
            [695, 'lift', { distance_m: 0.2, speed_ms: 0.5 }],
            [720, 'removeRod', { speed_ms: 0.2 }],
          ],
          [told(695, 'refused', { action: 'lift', reason: 'handsBusy' })],
        ),
        share: (0.3 - 0.2) / (0.3 - 0.1),
        reason: 'lost',
        data: { speed_ms: 0.2 },
        evidence: [{ tick: 720, value: 0.2, unit: 'm/s' }],
      },
      {
        kind: 'none',
        says: 'half a metre a second',
        view: withActs([[690, 'lift', { distance_m: 0.2, speed_ms: 0.5 }]]),
        share: 0,
        reason: 'lost',
        data: { speed_ms: 0.5 },
        evidence: [{ tick: 690, value: 0.5, unit: 'm/s' }],
      },
      {
        kind: 'none',
        says: 'who never draws the stem shows nothing',
        view: withActs([]),
        share: 0,
        reason: 'never',
        data: {},
      },
      {
        kind: 'unfinished',
        says: 'a pull is a pull, however deep the hole',
        view: { ...halfway(), log: [[690, 'lift', { distance_m: 0.2, speed_ms: 0.1 }]] },
        share: 1,
        reason: 'full',
        data: { speed_ms: 0.1 },
        evidence: [{ tick: 690, value: 0.1, unit: 'm/s' }],
      },
    ],
  },
};
