// Hand-made cases of lessons/rubric/stop.ts: room for a screen, and no metre more. Bands as in deep-enough.
// Coarse by the samples from 4 m on, lowest water 5 m: the stretch begins there. Drilling stopped at 7300 s.

import { cleanWell, withWellEvents } from '../handMadeWell';
import { leftAfterPlan, type HandMade } from './cases';

const stopped = (depth_m: number, length_m: number) => [
  { tick: 7300, depth_m },
  { depth_m: 5, value: length_m, unit: 'm' },
];
const data = (length_m: number) => ({ length_m, lowest_m: 5, goal_m: 4.6 });
const over = (depth_m: number, value: number) => [{ tick: 7300, depth_m, value, unit: 'm' }];

/** Enough is reached 4.6 m below the lowest water. */
const ENOUGH_m = 5 + 4.6;

const going = withWellEvents(({ name }) => name === 'drillingStopped');

export const stop: HandMade = {
  stretchEnough: {
    bands: { full_m: 4.6, none_m: 2 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'seven metres',
        view: cleanWell(),
        share: 1,
        reason: 'full',
        data: data(7),
        evidence: stopped(12, 7),
      },
      {
        kind: 'between',
        says: '3.3 m are the middle of the band',
        view: cleanWell({ depth_m: 8.3 }),
        share: (3.3 - 2) / (4.6 - 2),
        reason: 'lost',
        data: data(3.3),
        evidence: stopped(8.3, 3.3),
      },
      {
        kind: 'none',
        says: 'one metre',
        view: cleanWell({ depth_m: 6 }),
        share: 0,
        reason: 'lost',
        data: data(1),
        evidence: stopped(6, 1),
      },
      {
        kind: 'none',
        says: 'stopped above the water',
        view: cleanWell({ depth_m: 4 }),
        share: 0,
        reason: 'lost',
        data: data(0),
        evidence: stopped(4, 0),
      },
      { kind: 'unfinished', says: 'never stopped: nothing shows', view: going, share: 0, reason: 'none', data: {} },
      {
        kind: 'unfinished',
        says: 'stopped deep enough, and left after the plan',
        view: leftAfterPlan(),
        share: 1,
        reason: 'full',
        data: data(7),
        evidence: stopped(12, 7),
      },
    ],
  },
  noDeeper: {
    bands: { want_m: 4.6, full_m: 0.8, none_m: 3, told_m: 15 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'seven decimetres over',
        view: cleanWell({ depth_m: 10.3 }),
        share: 1,
        reason: 'full',
        data: { over_m: 0.7, depth_m: 10.3 },
        evidence: over(10.3, 0.7),
      },
      {
        kind: 'full',
        says: 'the good sand ended at 8 m by the samples: one metre on shows it',
        view: cleanWell({
          depth_m: 9,
          tray: cleanWell().tray.map((sample) =>
            sample.label_m > 8 ? { ...sample, shares: [0.9, 0.1, 0, 0, 0, 0, 0, 0] } : sample,
          ),
        }),
        share: 1,
        reason: 'full',
        data: { over_m: 0.4, depth_m: 9 },
        evidence: over(9, 0.4),
      },
      {
        kind: 'between',
        says: '2.4 m over',
        view: cleanWell(),
        share: (3 - (12 - ENOUGH_m)) / (3 - 0.8),
        reason: 'lost',
        data: { over_m: 2.4, depth_m: 12 },
        evidence: over(12, 2.4),
      },
      {
        kind: 'none',
        says: 'three metres over',
        view: cleanWell({ depth_m: 12.7 }),
        share: 0,
        reason: 'lost',
        data: { over_m: 3.1, depth_m: 12.7 },
        evidence: over(12.7, 3.1),
      },
      {
        kind: 'none',
        says: 'into what the neighbours warned of',
        view: cleanWell({ depth_m: 10 }),
        bands: { want_m: 4.6, full_m: 0.8, none_m: 3, told_m: 9.8 },
        share: 0,
        reason: 'told',
        data: { told_m: 9.8 },
        evidence: over(10, 0.4),
      },
      {
        kind: 'none',
        says: 'stopped at one metre, where no water is: not too deep, but no merit',
        view: cleanWell({ depth_m: 1 }),
        share: 0,
        reason: 'short',
        data: {},
        evidence: over(1, 0),
      },
      { kind: 'unfinished', says: 'never stopped: nothing shows', view: going, share: 0, reason: 'none', data: {} },
      {
        kind: 'unfinished',
        says: 'with three metres of good sand there was not enough yet: none was too much',
        view: cleanWell({ depth_m: 8 }),
        share: 1,
        reason: 'full',
        data: { over_m: 0, depth_m: 8 },
        evidence: over(8, 0),
      },
    ],
  },
};
