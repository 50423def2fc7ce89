// Hand-made cases of lessons/rubric/safety.ts: cautions in time, rods at rest, the bit free. Bands as in first-rods.

import type { LogEntry } from '$sim';
import { cleanView, stop, withEvents } from '../handMade';
import { halfway, told, type HandMade } from './cases';
import type { RunView } from '$lessons';

const read = (tick: number, caution: string): LogEntry => [tick, 'readCaution', { caution }];
const TURNS: LogEntry = [200, 'setTurning', { on: true }];
const cautions = (...log: LogEntry[]): RunView =>
  cleanView({ log, hazards: ['turningStem', 'rods', 'cement', 'glue'] });

const grab = (tick: number, reason: string, action = 'addRod') => told(tick, 'refused', { action, reason });

/** The clean job's three stops with the bit so far off the bottom. */
const lifted = (...lift_m: number[]): RunView =>
  withEvents(
    ({ name }) => name === 'flowStopped',
    [
      stop(700, 1.48, { bit_m: 1.48 - lift_m[0]! }),
      stop(1300, 2.98, { bit_m: 2.98 - lift_m[1]! }),
      stop(2500, 4.45, { bit_m: 4.45 - lift_m[2]! }),
    ],
  );
const stops = (...lift_m: number[]) => [
  { tick: 700, depth_m: 1.48, value: lift_m[0]!, unit: 'm' },
  { tick: 1300, depth_m: 2.98, value: lift_m[1]!, unit: 'm' },
  { tick: 2500, depth_m: 4.45, value: lift_m[2]!, unit: 'm' },
];

export const safety: HandMade = {
  cautionsRead: {
    bands: {},
    nothing: { reason: 'lost', data: { have: 0, all: 2 } },
    cases: [
      {
        kind: 'full',
        says: 'each before its own act, or never wanted; in any order',
        view: cautions(
          read(0, 'rods'),
          read(10, 'turningStem'),
          TURNS,
          read(8000, 'cement'),
          [9000, 'placeSeal', { seal: 'cement' }],
          read(9500, 'glue'),
        ),
        share: 1,
        reason: 'full',
        data: { have: 4, all: 4 },
        evidence: [0, 10, 8000, 9500, 200, 9000].map((tick) => ({ tick })),
      },
      {
        kind: 'between',
        says: 'two of four: one too late, one twice, one unknown, one not at all',
        view: cautions(
          read(0, 'turningStem'),
          read(1, 'turningStem'),
          read(2, 'elsewhere'),
          TURNS,
          read(300, 'rods'),
          read(400, 'cement'),
        ),
        share: 2 / 4,
        reason: 'lost',
        data: { have: 2, all: 4 },
        evidence: [0, 400, 200].map((tick) => ({ tick })),
      },
      {
        kind: 'between',
        says: 'what is read once the rest was left to a crew comes too late',
        view: {
          ...cautions(read(0, 'turningStem'), TURNS, read(400, 'cement'), read(600, 'glue')),
          events: [told(500, 'leftToCrew')],
        },
        share: 2 / 4,
        reason: 'lost',
        data: { have: 2, all: 4 },
        evidence: [0, 400, 200].map((tick) => ({ tick })),
      },
      {
        kind: 'none',
        says: 'all after the stem turned',
        view: cleanView({ log: [TURNS, read(300, 'turningStem'), read(300, 'rods')] }),
        share: 0,
        reason: 'lost',
        data: { have: 0, all: 2 },
        evidence: [{ tick: 200 }],
      },
      {
        kind: 'unfinished',
        says: 'read is read, however deep the hole',
        view: halfway(),
        share: 1,
        reason: 'full',
        data: { have: 2, all: 2 },
        evidence: [0, 0, 200].map((tick) => ({ tick })),
      },
    ],
  },
  rodsHandledStill: {
    bands: { none: 2 },
    nothing: { reason: 'none' },
    cases: [
      { kind: 'full', says: 'two rods at rest', view: cleanView(), share: 1, reason: 'full', data: {} },
      {
        kind: 'between',
        says: 'one grab of two; a rod that was not down is none',
        view: withEvents(
          () => false,
          [grab(780, 'flowOn'), grab(790, 'rodNotDown'), grab(795, 'flowOn', 'catchSample')],
        ),
        share: 1 / 2,
        reason: 'lost',
        data: { times: 1 },
        evidence: [{ tick: 780 }],
      },
      {
        kind: 'none',
        says: 'three grabs',
        view: withEvents(
          () => false,
          [grab(780, 'flowOn'), grab(785, 'turningOn'), grab(790, 'turningOn', 'removeRod')],
        ),
        share: 0,
        reason: 'lost',
        data: { times: 3 },
        evidence: [{ tick: 780 }, { tick: 785 }, { tick: 790 }],
      },
      {
        kind: 'none',
        says: 'who never touched a rod has shown nothing',
        view: withEvents(({ name }) => name === 'rodAdded', []),
        share: 0,
        reason: 'none',
        data: {},
      },
      { kind: 'unfinished', says: 'one rod at rest shows it', view: halfway(), share: 1, reason: 'full', data: {} },
    ],
  },
  liftedBeforeStop: {
    bands: { lift_m: 0.1 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'two decimetres at each',
        view: lifted(0.2, 0.2, 0.2),
        share: 1,
        reason: 'full',
        data: { stops: 3 },
        evidence: stops(0.2, 0.2, 0.2),
      },
      {
        kind: 'between',
        says: 'on the bottom once, five centimetres off it once',
        view: lifted(0.2, 0, 0.05),
        share: 1 / 3,
        reason: 'lost',
        data: { times: 2, stops: 3 },
        evidence: stops(0.2, 0, 0.05),
      },
      {
        kind: 'none',
        says: 'on the bottom each time',
        view: lifted(0, 0, 0),
        share: 0,
        reason: 'lost',
        data: { times: 3, stops: 3 },
        evidence: stops(0, 0, 0),
      },
      {
        kind: 'unfinished',
        says: 'two stops show it',
        view: halfway(),
        share: 1,
        reason: 'full',
        data: { stops: 2 },
        evidence: [
          { tick: 700, depth_m: 1.48, value: 0.2, unit: 'm' },
          { tick: 1330, depth_m: 2.2, value: 0.2, unit: 'm' },
        ],
      },
    ],
  },
};
