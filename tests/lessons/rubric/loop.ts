// Hand-made cases of lessons/rubric/loop.ts: the pump's water, the strainer, the pit, the heap, the wear. Bands as in round-the-loop and full-pit.

import { drilled, halfway, told, type HandMade } from './cases';
import type { Row } from '../handMade';

/** A column at one figure in the row of minute 10, at another in all others. */
const peak =
  (column: keyof Row, most: number, else_: number) =>
  (_row: Row, i: number): Row => ({ [column]: i === 10 ? most : else_ });

/** The flow ends with minute 9: minute 10 shows what ended it, minute 11 what nobody drew through any more. */
const shutAfter =
  (column: keyof Row, at10: number, at11: number) =>
  (_row: Row, i: number): Row => ({ flow_m3s: i < 10 ? 0.002 : 0, [column]: i === 10 ? at10 : i === 11 ? at11 : 0 });

/** Head lost from the first row to the last, over what was lost before. */
const worn =
  (from_frac: number, to_frac: number, last: number) =>
  (_row: Row, i: number): Row => ({ pumpWorn_frac: i === last ? to_frac : from_frac });

const at = (value: number, unit: string) => [{ tick: 600, value, unit }];

export const loop: HandMade = {
  pumpKeptWater: {
    bands: { none: 2 },
    nothing: { reason: 'none' },
    cases: [
      { kind: 'full', says: 'no fault', view: drilled(() => ({})), share: 1, reason: 'full', data: {} },
      {
        kind: 'between',
        says: 'one fault of the two that cost it',
        view: drilled(() => ({}), [told(900, 'primeLost')]),
        share: 1 - 1 / 2,
        reason: 'lost',
        data: { times: 1 },
        evidence: [{ tick: 900 }],
      },
      {
        kind: 'none',
        says: 'three faults are no worse than two',
        view: drilled(() => ({}), [told(900, 'primeLost'), told(950, 'primeFailed'), told(980, 'primeFailed')]),
        share: 0,
        reason: 'lost',
        data: { times: 3 },
        evidence: [{ tick: 900 }, { tick: 950 }, { tick: 980 }],
      },
      {
        kind: 'between',
        says: 'a burnt seal is named first',
        view: drilled(() => ({}), [told(900, 'sealBurnt')]),
        share: 1 / 2,
        reason: 'burnt',
        data: {},
        evidence: [{ tick: 900 }],
      },
      {
        kind: 'unfinished',
        says: 'half the depth earns half',
        view: halfway(),
        share: 2.2 / 4.4,
        reason: 'unfinished',
        data: {},
      },
      {
        kind: 'unfinished',
        says: 'one fault and half the depth earn a quarter, and the fault is named',
        view: halfway(() => ({}), [told(900, 'primeLost')]),
        share: (1 / 2) * (2.2 / 4.4),
        reason: 'lost',
        data: { times: 1 },
        evidence: [{ tick: 900 }],
      },
    ],
  },
  strainerOpen: {
    bands: { full_frac: 0.25, none_frac: 0.7 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'a quarter shut is open enough',
        view: drilled(peak('strainerBlocked_frac', 0.25, 0.1)),
        share: 1,
        reason: 'full',
        data: { shut_pct: 25 },
        evidence: at(0.25, ''),
      },
      {
        kind: 'between',
        says: '34 % is .36 of the way from .7 to .25',
        view: drilled(peak('strainerBlocked_frac', 0.34, 0.1)),
        share: (0.7 - 0.34) / (0.7 - 0.25),
        reason: 'lost',
        data: { shut_pct: 34 },
        evidence: at(0.34, ''),
      },
      {
        kind: 'none',
        says: 'shut until the flow ended: the row after it tells',
        view: drilled(shutAfter('strainerBlocked_frac', 0.9, 0)),
        share: 0,
        reason: 'lost',
        data: { shut_pct: 90 },
        evidence: at(0.9, ''),
      },
      {
        kind: 'full',
        says: 'what blocks it while nothing is drawn does not count',
        view: drilled(shutAfter('strainerBlocked_frac', 0.2, 0.9)),
        share: 1,
        reason: 'full',
        data: { shut_pct: 20 },
        evidence: at(0.2, ''),
      },
      {
        kind: 'unfinished',
        says: 'half the depth earns half',
        view: halfway(peak('strainerBlocked_frac', 0.2, 0.1)),
        share: 2.2 / 4.4,
        reason: 'unfinished',
        data: { shut_pct: 20 },
        evidence: at(0.2, ''),
      },
    ],
  },
  pitStood: {
    bands: { full_m: 0.35, none_m: 0.75 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: '35 cm below the rim is full enough',
        view: drilled(peak('suctionLevel_m', 0.35, 0.1)),
        share: 1,
        reason: 'full',
        data: { low_cm: 35 },
        evidence: at(0.35, 'm'),
      },
      {
        kind: 'between',
        says: '65 cm leaves a quarter',
        view: drilled(peak('suctionLevel_m', 0.65, 0.1)),
        share: (0.75 - 0.65) / (0.75 - 0.35),
        reason: 'lost',
        data: { low_cm: 65 },
        evidence: at(0.65, 'm'),
      },
      {
        kind: 'none',
        says: '80 cm',
        view: drilled(peak('suctionLevel_m', 0.8, 0.1)),
        share: 0,
        reason: 'lost',
        data: { low_cm: 80 },
        evidence: at(0.8, 'm'),
      },
      {
        kind: 'unfinished',
        says: 'half the depth earns half',
        view: halfway(peak('suctionLevel_m', 0.3, 0.1)),
        share: 2.2 / 4.4,
        reason: 'unfinished',
        data: { low_cm: 30 },
        evidence: at(0.3, 'm'),
      },
    ],
  },
  heapDug: {
    bands: { full_frac: 0.46, none_frac: 0.54 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'a heap of 40 %',
        view: drilled(peak('heap_frac', 0.4, 0.1)),
        share: 1,
        reason: 'full',
        data: { heap_pct: 40 },
        evidence: at(0.4, ''),
      },
      {
        kind: 'between',
        says: 'half the chamber is the middle of the band',
        view: drilled(peak('heap_frac', 0.5, 0.1)),
        share: (0.54 - 0.5) / (0.54 - 0.46),
        reason: 'lost',
        data: { heap_pct: 50 },
        evidence: at(0.5, ''),
      },
      {
        kind: 'none',
        says: 'a heap of 60 %',
        view: drilled(peak('heap_frac', 0.6, 0.1)),
        share: 0,
        reason: 'lost',
        data: { heap_pct: 60 },
        evidence: at(0.6, ''),
      },
      {
        kind: 'unfinished',
        says: 'half the depth earns half',
        view: halfway(peak('heap_frac', 0.3, 0.1)),
        share: 2.2 / 4.4,
        reason: 'unfinished',
        data: { heap_pct: 30 },
        evidence: at(0.3, ''),
      },
    ],
  },
  pumpSpared: {
    bands: { full_frac: 0.04, none_frac: 0.2, least_m: 1.5 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: '3 % lost; what was worn before is not the crew\u2019s',
        view: drilled(worn(0.1, 0.13, 44)),
        share: 1,
        reason: 'full',
        data: { worn_pct: 3 },
        evidence: [{ value: 0.03, unit: '' }],
      },
      {
        kind: 'between',
        says: '12 % is the middle of the band',
        view: drilled(worn(0, 0.12, 44)),
        share: (0.2 - 0.12) / (0.2 - 0.04),
        reason: 'lost',
        data: { worn_pct: 12 },
        evidence: [{ value: 0.12, unit: '' }],
      },
      {
        kind: 'none',
        says: 'a quarter of its head',
        view: drilled(worn(0, 0.25, 44)),
        share: 0,
        reason: 'lost',
        data: { worn_pct: 25 },
        evidence: [{ value: 0.25, unit: '' }],
      },
      {
        kind: 'unfinished',
        says: 'half the depth earns half',
        view: halfway(worn(0, 0.02, 22)),
        share: 2.2 / 4.4,
        reason: 'unfinished',
        data: { worn_pct: 2 },
        evidence: [{ value: 0.02, unit: '' }],
      },
      {
        kind: 'none',
        says: 'less than 1.5 m drilled shows nothing',
        view: { ...halfway(worn(0, 0, 22)), depth_m: 1.4 },
        share: 0,
        reason: 'none',
        data: {},
      },
    ],
  },
};
