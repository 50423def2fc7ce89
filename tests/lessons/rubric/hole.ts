// Hand-made cases of lessons/rubric/hole.ts: stops cleared, never buried, a fair feed, the depth. Bands as in first-rods.

import { cleanView, stop, withEvents } from '../handMade';
import { cleanWell } from '../handMadeWell';
import { drilled, halfway, told, type HandMade } from './cases';
import type { RunView } from '$lessons';

/** The clean job's three stops, each leaving so much bed. They last 50 s and 10 s: too short to show what would fall, so what hangs counts. */
const leaving = (...left_m: number[]): RunView =>
  withEvents(
    ({ name }) => name === 'flowStopped',
    [
      stop(700, 1.48, { bed_m: left_m[0]! }),
      stop(1300, 2.98, { bed_m: left_m[1]! }),
      stop(2500, 4.45, { bed_m: left_m[2]! }),
    ],
  );
const stops = (...left_m: number[]) => [
  { tick: 700, depth_m: 1.48, value: left_m[0]!, unit: 'm' },
  { tick: 1300, depth_m: 2.98, value: left_m[1]!, unit: 'm' },
  { tick: 2500, depth_m: 4.45, value: left_m[2]!, unit: 'm' },
];

const buried = (tick: number, buried_m: number) => told(tick, 'buried', { buried_m });

/** So many of the 44 rows of drilling are overloaded, from minute 1 on. */
const overloaded = (rows: number) => drilled((_row, i) => ({ loading_frac: i >= 1 && i <= rows ? 0.09 : 0.02 }));
/** The row of the heaviest stream: of equals the first. */
const worst = (value: number) => ({ tick: 60, depth_m: 0.1, value, unit: '' });

export const hole: HandMade = {
  clearedStops: {
    bands: { full_m: 0.02, none_m: 0.05 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'two centimetres at each',
        view: leaving(0.02, 0.02, 0.02),
        share: 1,
        reason: 'full',
        data: { stops: 3 },
        evidence: stops(0.02, 0.02, 0.02),
      },
      {
        kind: 'between',
        says: 'the mean of all, a half and nothing; the worst is told',
        view: leaving(0, 0.035, 0.2),
        share: (1 + (0.05 - 0.035) / (0.05 - 0.02) + 0) / 3,
        reason: 'lost',
        data: { left_cm: 20 },
        evidence: stops(0, 0.035, 0.2),
      },
      {
        kind: 'full',
        says: 'after a rest of a minute the bed that was measured counts, not what was feared',
        view: {
          ...drilled((row) => ({ bed_m: row.time_s! >= 1300 && row.time_s! <= 1380 ? 0.01 : 0 })),
          events: leaving(0, 0.2, 0).events.map((event) => (event.tick === 1350 ? { ...event, tick: 1380 } : event)),
        },
        share: 1,
        reason: 'full',
        data: { stops: 3 },
        evidence: stops(0, 0.01, 0),
      },
      {
        kind: 'none',
        says: 'five centimetres at each',
        view: leaving(0.05, 0.05, 0.05),
        share: 0,
        reason: 'lost',
        data: { left_cm: 5 },
        evidence: stops(0.05, 0.05, 0.05),
      },
      {
        kind: 'unfinished',
        says: 'half the depth earns half',
        view: halfway(),
        share: 2.2 / 4.4,
        reason: 'short',
        data: { depth_m: 2.2, goal_m: 4.4 },
        evidence: [
          { tick: 700, depth_m: 1.48, value: 0, unit: 'm' },
          { tick: 1330, depth_m: 2.2, value: 0, unit: 'm' },
        ],
      },
      {
        kind: 'unfinished',
        says: 'the crew of a well decides its depth itself',
        view: cleanWell({ depth_m: 8 }, { handedOver: false }),
        share: 1,
        reason: 'full',
        data: { stops: 1 },
        evidence: [{ tick: 7200, depth_m: 12, value: 0, unit: 'm' }],
      },
    ],
  },
  notBuried: {
    bands: { full_m: 0.02, none_m: 0.1 },
    nothing: { reason: 'none' },
    cases: [
      { kind: 'full', says: 'never', view: cleanView(), share: 1, reason: 'full', data: {} },
      {
        kind: 'between',
        says: 'the deepest of two counts: 6 cm is the middle of the band',
        view: withEvents(() => false, [buried(760, 0.03), buried(1360, 0.06)]),
        share: (0.1 - 0.06) / (0.1 - 0.02),
        reason: 'lost',
        data: { buried_cm: 6 },
        evidence: [
          { tick: 760, value: 0.03, unit: 'm' },
          { tick: 1360, value: 0.06, unit: 'm' },
        ],
      },
      {
        kind: 'none',
        says: 'half a metre when the rod was on',
        view: withEvents(() => false, [told(1400, 'rodAdded', { rods: 3, buried_m: 0.5 })]),
        share: 0,
        reason: 'lost',
        data: { buried_cm: 50 },
        evidence: [{ tick: 1400, value: 0.5, unit: 'm' }],
      },
      {
        kind: 'unfinished',
        says: 'one stop shows it, however deep the hole',
        view: halfway(),
        share: 1,
        reason: 'full',
        data: {},
      },
    ],
  },
  fairFeed: {
    bands: { loading_frac: 0.05, full_frac: 0.05, none_frac: 0.4 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'two rows of 44 are less than a twentieth',
        view: overloaded(2),
        share: 1,
        reason: 'full',
        data: {},
        evidence: [worst(0.09)],
      },
      {
        kind: 'between',
        says: 'a quarter of the drilling',
        view: overloaded(11),
        share: (0.4 - 11 / 44) / (0.4 - 0.05),
        reason: 'loaded',
        data: { share_pct: 25 },
        evidence: [worst(0.09)],
      },
      {
        kind: 'between',
        says: 'a jam costs a third',
        view: withEvents(() => false, [told(900, 'tight')]),
        share: 1 - 0.34,
        reason: 'jammed',
        data: { times: 1 },
        evidence: [worst(0.02), { tick: 900 }],
      },
      {
        kind: 'none',
        says: 'half of the drilling',
        view: overloaded(22),
        share: 0,
        reason: 'loaded',
        data: { share_pct: 50 },
        evidence: [worst(0.09)],
      },
      {
        kind: 'none',
        says: 'balled, stalled and stuck',
        view: withEvents(() => false, [told(900, 'balled'), told(950, 'stalled'), told(990, 'stuck')]),
        share: 0,
        reason: 'jammed',
        data: { times: 3 },
        evidence: [worst(0.02), { tick: 900 }, { tick: 950 }, { tick: 990 }],
      },
      {
        kind: 'unfinished',
        says: 'half the depth earns half',
        view: halfway(),
        share: 2.2 / 4.4,
        reason: 'short',
        data: { depth_m: 2.2, goal_m: 4.4 },
        evidence: [worst(0.02)],
      },
    ],
  },
  depthReached: {
    bands: { from_m: 1.5, goal_m: 4.4 },
    nothing: { reason: 'lost', data: { depth_m: 0, goal_m: 4.4 } },
    cases: [
      {
        kind: 'full',
        says: '4.45 m',
        view: cleanView(),
        share: 1,
        reason: 'full',
        data: { depth_m: 4.45 },
        evidence: [{ tick: 2510, depth_m: 4.45 }],
      },
      {
        kind: 'between',
        says: '2.95 m is the middle of the way',
        view: cleanView({ depth_m: 2.95 }),
        share: (2.95 - 1.5) / (4.4 - 1.5),
        reason: 'lost',
        data: { depth_m: 2.95, goal_m: 4.4 },
        evidence: [{ tick: 2510, depth_m: 2.95 }],
      },
      {
        kind: 'none',
        says: 'the first rod earns nothing',
        view: cleanView({ depth_m: 1.5 }),
        share: 0,
        reason: 'lost',
        data: { depth_m: 1.5, goal_m: 4.4 },
        evidence: [{ tick: 2510, depth_m: 1.5 }],
      },
      {
        kind: 'unfinished',
        says: 'it was never stopped: the last second counts',
        view: halfway(),
        share: (2.2 - 1.5) / (4.4 - 1.5),
        reason: 'lost',
        data: { depth_m: 2.2, goal_m: 4.4 },
        evidence: [{ tick: 1340, depth_m: 2.2 }],
      },
    ],
  },
};
