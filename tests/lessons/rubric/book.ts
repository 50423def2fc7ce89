// Hand-made cases of lessons/rubric/book.ts: the own layers against the own samples, and the record's fields.

import type { LogEntry } from '$sim';
import { cleanView, inTray } from '../handMade';
import { cleanWell } from '../handMadeWell';
import { halfway, leftAfterPlan, type HandMade } from './cases';

const layer = (from_m: number, to_m: number, kind: string): LogEntry => [2400, 'logLayer', { from_m, to_m, kind }];

/** Samples at 1.2 m of silt, 2.6 of fine sand, 4.2 of coarse. */
const booked = (...layers: LogEntry[]) => cleanView({ log: [...cleanView().log, ...layers] });
const RIGHT = [layer(0, 2, 'silt'), layer(2, 3.5, 'fineSand'), layer(3.5, 4.4, 'coarseSand')];
const from = (...layers: [from_m: number, to_m: number][]) =>
  layers.map(([depth_m, value]) => ({ depth_m, value, unit: 'm' }));
const RIGHT_LAYERS = from([0, 2], [2, 3.5], [3.5, 4.4]);

/** So many fields of the record, a second apart, from 90000 s on. */
const fields = (count: number, ...more: LogEntry[]) =>
  cleanWell({
    log: [
      ...Array.from({ length: count }, (_, i): LogEntry => [90000 + i, 'record', { field: `f${i}`, text: 'as seen' }]),
      ...more,
    ],
  });
const written = (count: number) => Array.from({ length: count }, (_, i) => ({ tick: 90000 + i }));

export const book: HandMade = {
  ownLogTrue: {
    bands: {},
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'each sample in a layer with its name',
        view: booked(...RIGHT),
        share: 1,
        reason: 'full',
        data: { layers: 3 },
        evidence: RIGHT_LAYERS,
      },
      {
        kind: 'full',
        says: 'the book of a well',
        view: cleanWell(),
        share: 1,
        reason: 'full',
        data: { layers: 3 },
        evidence: from([0, 4], [4, 7], [7, 12]),
      },
      {
        kind: 'between',
        says: 'a later entry replaces what it covers: now the sample at 2.6 m is wrong',
        view: booked(...RIGHT, layer(2.5, 3, 'gravel')),
        share: 2 / 3,
        reason: 'lost',
        data: { depth_m: 2.6 },
        evidence: from([0, 2], [2, 2.5], [2.5, 3], [3, 3.5], [3.5, 4.4]),
      },
      {
        kind: 'between',
        says: 'one sample, rightly booked, for 4.5 m: a third of one a rod of 1.5 m',
        view: { ...booked(...RIGHT), depth_m: 4.5, tray: [inTray(1, 1.2, [0.1, 0.8, 0.1, 0, 0, 0, 0, 0], 'silt')] },
        share: 1 / 3,
        reason: 'few',
        data: { have: 1, wanted: 3 },
        evidence: RIGHT_LAYERS,
      },
      {
        kind: 'none',
        says: 'gravel all the way, which none of the samples is',
        view: booked(layer(0, 4.4, 'gravel')),
        share: 0,
        reason: 'lost',
        data: { depth_m: 1.2 },
        evidence: from([0, 4.4]),
      },
      { kind: 'none', says: 'no layer in the book', view: cleanView(), share: 0, reason: 'none', data: {} },
      {
        kind: 'unfinished',
        says: 'it ends with what was drilled: 2.2 m want one sample',
        view: { ...halfway(), log: [layer(0, 2.2, 'silt')] },
        share: 1,
        reason: 'full',
        data: { layers: 1 },
        evidence: from([0, 2.2]),
      },
    ],
  },
  recordKept: {
    bands: { fields: 8 },
    nothing: { reason: 'lost', data: { have: 0, wanted: 8 } },
    cases: [
      {
        kind: 'full',
        says: 'eight of eight',
        view: fields(8),
        share: 1,
        reason: 'full',
        data: { have: 8, wanted: 8 },
        evidence: written(8),
      },
      {
        kind: 'full',
        says: 'ten earn no more than eight',
        view: fields(10),
        share: 1,
        reason: 'full',
        data: { have: 10, wanted: 8 },
        evidence: written(10),
      },
      {
        kind: 'between',
        says: 'the fifth was wiped out again: four',
        view: fields(5, [90010, 'record', { field: 'f4', text: ' ' }]),
        share: 4 / 8,
        reason: 'lost',
        data: { have: 4, wanted: 8 },
        evidence: written(4),
      },
      {
        kind: 'none',
        says: 'a blank is no entry',
        view: fields(0, [90010, 'record', { field: 'f4', text: '' }]),
        share: 0,
        reason: 'lost',
        data: { have: 0, wanted: 8 },
      },
      {
        kind: 'unfinished',
        says: 'left before anything was written',
        view: leftAfterPlan(),
        share: 0,
        reason: 'lost',
        data: { have: 0, wanted: 8 },
      },
    ],
  },
};
