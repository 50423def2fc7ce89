// Hand-made cases of lessons/rubric/seal.ts: sounded, placed, made, and the head works. Bands as in open-well.

import type { RunEvent } from '$sim';
import { cameTo, cleanWell, withWellEvents } from '../handMadeWell';
import { leftAfterPlan, told, type HandMade } from './cases';

/** In place of the clean well's two soundings. The screen begins at 8 m, the seal ends at 4 m. */
const sounded = (...tops_m: number[]) =>
  withWellEvents(
    ({ name }) => name === 'sounded',
    tops_m.map((top_m, i): RunEvent => told(9000 + i, 'sounded', { top_m })),
  );
const line = (...tops_m: number[]) => tops_m.map((depth_m, i) => ({ tick: 9000 + i, depth_m }));

const sealed = (sealFrom_m: number, sealTo_m: number) =>
  cameTo({ leak: { sealFrom_m, sealTo_m, sealedLength_m: sealTo_m - sealFrom_m } });
const lies = (from_m: number, to_m: number) => [
  { depth_m: from_m },
  { depth_m: to_m, value: to_m - from_m, unit: 'm' },
];
const interval = (from_m: number, to_m: number) => ({ from_m, to_m, length_m: to_m - from_m });

const leaks = (annulus_d: number) => cameTo({ leak: { annulus_d } });
const days = (leak_d: number) => [
  { value: leak_d, unit: 'd' },
  { value: 4000, unit: 'd' },
  { value: 18, unit: 'mm' },
];

const head = (apron_m: number, drain_m: number, cap: boolean, stickUp_m: number) =>
  cameTo({ headWorks: { apron_m, drain_m, cap, stickUp_m } });
const built = (apron_m: number, drain_m: number) => [
  { value: apron_m, unit: 'm' },
  { value: drain_m, unit: 'm' },
];

export const seal: HandMade = {
  packDone: {
    bands: { above_m: 0.5, sound_frac: 0.5 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'half a metre over the screen, to a line that is read to five centimetres',
        view: sounded(7.55, 0.05),
        share: 1,
        reason: 'full',
        data: { top_m: 7.6 },
        evidence: line(7.55, 0.05),
      },
      {
        kind: 'between',
        says: 'too low, but sounded it was; the line on top of the seal is not what is told',
        view: sounded(7.9, 0.05),
        share: 0.5,
        reason: 'lost',
        data: { top_m: 7.9, wanted_m: 7.5 },
        evidence: line(7.9, 0.05),
      },
      {
        kind: 'between',
        says: 'once the seal lies on it, a sounding tells nothing of what is under it',
        view: sounded(0.05),
        share: 0.5,
        reason: 'lost',
        data: { top_m: 0.1, wanted_m: 7.5 },
        evidence: line(0.05),
      },
      { kind: 'none', says: 'nobody sounded', view: sounded(), share: 0, reason: 'none', data: {} },
      {
        kind: 'unfinished',
        says: 'left after the plan',
        view: leftAfterPlan(),
        share: 0,
        reason: 'none',
        data: {},
      },
    ],
  },
  sealPlace: {
    bands: { full_m: 3, none_m: 1, from_m: 0.5 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'three metres (A-08) from half a metre down',
        view: sealed(0.5, 3.5),
        share: 1,
        reason: 'full',
        data: interval(0.5, 3.5),
        evidence: lies(0.5, 3.5),
      },
      {
        kind: 'between',
        says: 'two metres are the middle of the band',
        view: sealed(0, 2),
        share: (2 - 1) / (3 - 1),
        reason: 'short',
        data: interval(0, 2),
        evidence: lies(0, 2),
      },
      {
        kind: 'between',
        says: 'a metre and a half down: half of the two metres that lose all',
        view: sealed(1.5, 5.5),
        share: (2.5 - 1.5) / (2.5 - 0.5),
        reason: 'deep',
        data: interval(1.5, 5.5),
        evidence: lies(1.5, 5.5),
      },
      {
        kind: 'none',
        says: 'on the screen',
        view: sealed(0, 9),
        share: 0,
        reason: 'screen',
        data: interval(0, 9),
        evidence: lies(0, 9),
      },
      {
        kind: 'none',
        says: 'one metre',
        view: sealed(0, 1),
        share: 0,
        reason: 'short',
        data: interval(0, 1),
        evidence: lies(0, 1),
      },
      { kind: 'none', says: 'none', view: sealed(0, 0), share: 0, reason: 'none', data: {} },
      { kind: 'unfinished', says: 'left after the plan', view: leftAfterPlan(), share: 0, reason: 'none', data: {} },
    ],
  },
  sealMade: {
    bands: { full_d: 3650, none_d: 50 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'ten years',
        view: leaks(3650),
        share: 1,
        reason: 'full',
        data: { leak_y: 10 },
        evidence: days(3650),
      },
      {
        kind: 'between',
        says: 'five years, about the middle of the band',
        view: leaks(1850),
        share: (1850 - 50) / (3650 - 50),
        reason: 'lost',
        data: { leak_d: 1850, ground_d: 4000 },
        evidence: days(1850),
      },
      {
        kind: 'none',
        says: 'three days and a quarter',
        view: leaks(3.25),
        share: 0,
        reason: 'lost',
        data: { leak_d: 3.3, ground_d: 4000 },
        evidence: days(3.3),
      },
      {
        kind: 'none',
        says: 'no seal, however long the water takes',
        view: cameTo({ leak: { sealedLength_m: 0 } }),
        share: 0,
        reason: 'none',
        data: {},
      },
      { kind: 'unfinished', says: 'left after the plan', view: leftAfterPlan(), share: 0, reason: 'none', data: {} },
    ],
  },
  headWorks: {
    bands: { apron_m: 1.5, drain_m: 3, stickUp_m: 0.3 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'apron (Q-10), drain, cap, casing over the ground (Q-08)',
        view: head(1.5, 3, true, 0.3),
        share: 1,
        reason: 'full',
        data: { apron_m: 1.5, drain_m: 3, stickUp_cm: 30 },
        evidence: built(1.5, 3),
      },
      {
        kind: 'between',
        says: 'a quarter each: half of apron, a third of drain, half of stick-up, and the cap',
        view: head(1, 1, true, 0.15),
        share: ((1 - 0.5) / (1.5 - 0.5) + 1 / 3 + 0.15 / 0.3 + 1) / 4,
        reason: 'lost',
        data: { apron_m: 1, drain_m: 1, stickUp_cm: 15 },
        evidence: built(1, 1),
      },
      {
        kind: 'between',
        says: 'all but the cap',
        view: head(1.5, 3, false, 0.3),
        share: 3 / 4,
        reason: 'cap',
        data: { apron_m: 1.5, drain_m: 3, stickUp_cm: 30 },
        evidence: built(1.5, 3),
      },
      {
        kind: 'none',
        says: 'half a metre of apron and no more',
        view: head(0.5, 0, false, 0),
        share: 0,
        reason: 'cap',
        data: { apron_m: 0.5, drain_m: 0, stickUp_cm: 0 },
        evidence: built(0.5, 0),
      },
      { kind: 'none', says: 'no apron', view: head(0, 3, true, 0.3), share: 0, reason: 'none', data: {} },
      {
        kind: 'unfinished',
        says: 'cased, but nothing built',
        view: cleanWell({}, { verdict: head(0, 0, false, 0.5).well!.verdict, handedOver: false }),
        share: 0,
        reason: 'none',
        data: {},
      },
    ],
  },
};
