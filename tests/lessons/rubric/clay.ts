// Hand-made cases of lessons/rubric/clay.ts: the pace in hard going, and a clean bit. Bands as in stiff-clay.

import { cleanView, traceOf, type Row } from '../handMade';
import type { RunView } from '$lessons';
import { drilled, halfway, told, type HandMade } from './cases';

/** Easy to 1 m in ten minutes, then an hour and more of hard going, a row a minute, at one pace. */
function hard(pace_mh: number, minutes: number, more: Row = {}): RunView {
  const rows: Row[] = [];
  for (let i = 0; i <= 10; i++)
    rows.push({ time_s: i * 60, depth_m: i / 10, sinking_ms: 0.0017, turning: 1, feed_frac: 0.5 });
  for (let i = 1; i <= minutes; i++)
    rows.push({
      time_s: 600 + i * 60,
      depth_m: 1 + (i * pace_mh) / 60,
      sinking_ms: 0.0005,
      turning: 1,
      feed_frac: 0.5,
      ...more,
    });
  return cleanView({ trace: traceOf(rows), depth_m: 1 + (minutes * pace_mh) / 60, goal_m: 2.9 });
}
const from = (pace_mh: number, value = pace_mh) => [
  { tick: 660, depth_m: Math.round((1 + pace_mh / 60) * 100) / 100, value, unit: 'm/h' },
];

const packed =
  (most: number) =>
  (_row: Row, i: number): Row => ({ balling_frac: i === 10 ? most : 0.1 });
const worst = (value: number) => ({ tick: 600, depth_m: 1, value, unit: '' });

export const clay: HandMade = {
  clayPace: {
    bands: { slow_mh: 4.5, full_mh: 1.6, none_mh: 0.95, least_m: 0.3 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: '1.8 m an hour where it hardly gets on; the easy metre above does not count',
        view: hard(1.8, 60),
        share: 1,
        reason: 'full',
        data: { pace_mh: 1.8 },
        evidence: from(1.8),
      },
      {
        kind: 'between',
        says: '1.2 m an hour',
        view: hard(1.2, 60),
        share: (1.2 - 0.95) / (1.6 - 0.95),
        reason: 'lost',
        data: { pace_mh: 1.2 },
        evidence: from(1.2),
      },
      {
        kind: 'none',
        says: '.6 m an hour',
        view: hard(0.6, 60),
        share: 0,
        reason: 'lost',
        data: { pace_mh: 0.6 },
        evidence: from(0.6),
      },
      {
        kind: 'none',
        says: 'easy ground all the way shows nothing',
        view: drilled(() => ({ turning: 1, feed_frac: 0.5 })),
        share: 0,
        reason: 'none',
        data: {},
      },
      {
        kind: 'none',
        says: 'what sinks while nothing turns is no drilling',
        view: hard(1.8, 60, { turning: 0 }),
        share: 0,
        reason: 'none',
        data: {},
      },
      {
        kind: 'unfinished',
        says: 'half a metre of it is enough to show the pace',
        view: hard(1.8, 20),
        share: 1,
        reason: 'full',
        data: { pace_mh: 1.8 },
        evidence: from(1.8),
      },
      {
        kind: 'unfinished',
        says: 'a decimetre and a half is not',
        view: hard(1.8, 5),
        share: 0,
        reason: 'none',
        data: {},
      },
    ],
  },
  bitClean: {
    bands: { full_frac: 0.2, none_frac: 0.9, least_m: 1 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'a fifth packed',
        view: drilled(packed(0.2)),
        share: 1,
        reason: 'full',
        data: { packed_pct: 20 },
        evidence: [worst(0.2)],
      },
      {
        kind: 'between',
        says: '.55 is the middle of the band; when it balled is told',
        view: drilled(packed(0.55), [told(610, 'balled')]),
        share: (0.9 - 0.55) / (0.9 - 0.2),
        reason: 'lost',
        data: { packed_pct: 55 },
        evidence: [worst(0.55), { tick: 610 }],
      },
      {
        kind: 'none',
        says: 'packed whole',
        view: drilled(packed(1)),
        share: 0,
        reason: 'lost',
        data: { packed_pct: 100 },
        evidence: [worst(1)],
      },
      {
        kind: 'unfinished',
        says: 'two metres are enough to show it',
        view: halfway(packed(0.15)),
        share: 1,
        reason: 'full',
        data: { packed_pct: 15 },
        evidence: [worst(0.15)],
      },
      {
        kind: 'unfinished',
        says: 'less than a metre is not',
        view: { ...halfway(packed(0.15)), depth_m: 0.9 },
        share: 0,
        reason: 'none',
        data: {},
      },
    ],
  },
};
