// Hand-made cases of lessons/rubric/lowering.ts: joints that had set, gentle goes, a pack that fell. Bands as in casing-down.

import type { RunEvent } from '$sim';
import { cleanWell } from '../handMadeWell';
import { leftAfterPlan, told, wellWith, type HandMade } from './cases';

/** The casing is run at 8100 s. */
const joined = (...ticks: number[]) =>
  wellWith(
    [],
    ticks.map((tick) => told(tick, 'casingJoined')),
  );
const had = (value: number) => [{ tick: 8100, value, unit: 's' }];

const worked = (go_s: readonly number[], ...more: RunEvent[]) =>
  wellWith(
    go_s.map((time_s, i) => [8300 + i, 'workCasing', { time_s }]),
    [told(8250, 'casingHung'), ...more],
  );

const pour = told(8800, 'packPoured', { pack: 'pack1', volume_L: 12 });
const jam = (tick: number, at_m: number, fill = 'pack1') => told(tick, 'packBridged', { fill, at_m });

export const lowering: HandMade = {
  jointsSet: {
    bands: { set_s: 300 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'five minutes (P-F9); the first piece is no joint',
        view: joined(7000, 7800),
        share: 1,
        reason: 'full',
        data: { had_s: 300, set_min: 5 },
        evidence: had(300),
      },
      {
        kind: 'full',
        says: 'joints of a crew before have set',
        view: cleanWell(),
        share: 1,
        reason: 'full',
        data: { had_s: 300, set_min: 5 },
        evidence: had(300),
      },
      {
        kind: 'between',
        says: 'the youngest had a minute and a half',
        view: joined(7000, 7600, 8010),
        share: 90 / 300,
        reason: 'lost',
        data: { had_s: 90, set_min: 5 },
        evidence: had(90),
      },
      {
        kind: 'none',
        says: 'loaded in the second in which it was glued',
        view: joined(7000, 8100),
        share: 0,
        reason: 'lost',
        data: { had_s: 0, set_min: 5 },
        evidence: had(0),
      },
      {
        kind: 'unfinished',
        says: 'never run: nothing shows',
        view: leftAfterPlan(),
        share: 0,
        reason: 'none',
        data: {},
      },
    ],
  },
  hungGently: {
    bands: { full_s: 60, none_s: 150 },
    nothing: { reason: 'none' },
    cases: [
      { kind: 'full', says: 'it never hung', view: cleanWell(), share: 1, reason: 'free', data: {} },
      {
        kind: 'full',
        says: 'three goes of a minute',
        view: worked([60, 60, 60]),
        share: 1,
        reason: 'full',
        data: { go_s: 60 },
        evidence: [{ tick: 8300 }, { tick: 8301 }, { tick: 8302 }],
      },
      {
        kind: 'between',
        says: 'the longest counts: 105 s are the middle of the band',
        view: worked([30, 105]),
        share: (150 - 105) / (150 - 60),
        reason: 'lost',
        data: { go_s: 105 },
        evidence: [{ tick: 8300 }, { tick: 8301 }],
      },
      {
        kind: 'none',
        says: 'ten minutes',
        view: worked([600]),
        share: 0,
        reason: 'lost',
        data: { go_s: 600 },
        evidence: [{ tick: 8300 }],
      },
      {
        kind: 'none',
        says: 'it parted',
        view: worked([60], told(8320, 'casingSnapped')),
        share: 0,
        reason: 'snapped',
        data: { go_s: 60 },
        evidence: [{ tick: 8300 }, { tick: 8320 }],
      },
      {
        kind: 'unfinished',
        says: 'never down: nothing shows',
        view: leftAfterPlan(),
        share: 0,
        reason: 'none',
        data: {},
      },
    ],
  },
  packFell: {
    bands: {},
    nothing: { reason: 'none' },
    cases: [
      { kind: 'full', says: 'one pour', view: wellWith([], [pour]), share: 1, reason: 'full', data: { pours: 1 } },
      {
        kind: 'full',
        says: 'a jam of cuttings is none of the pack, and what a crew jams to which the rest was left none of the learner',
        view: wellWith([], [pour, jam(8700, 5, 'cuttings'), told(8900, 'leftToCrew'), jam(9900, 6)]),
        share: 1,
        reason: 'full',
        data: { pours: 1 },
      },
      {
        kind: 'between',
        says: 'one jam costs half',
        view: wellWith([], [pour, jam(8700, 6.04)]),
        share: 1 - 1 / 2,
        reason: 'lost',
        data: { at_m: 6, jams: 1 },
        evidence: [{ tick: 8700, depth_m: 6 }],
      },
      {
        kind: 'none',
        says: 'three jams; the first is told',
        view: wellWith([], [pour, jam(8700, 6), jam(8710, 5), jam(8720, 4)]),
        share: 0,
        reason: 'lost',
        data: { at_m: 6, jams: 3 },
        evidence: [
          { tick: 8700, depth_m: 6 },
          { tick: 8710, depth_m: 5 },
          { tick: 8720, depth_m: 4 },
        ],
      },
      {
        kind: 'unfinished',
        says: 'nothing was poured: nothing shows',
        view: leftAfterPlan(),
        share: 0,
        reason: 'none',
        data: {},
      },
    ],
  },
};
