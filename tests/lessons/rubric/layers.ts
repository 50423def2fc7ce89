// Hand-made cases of lessons/rubric/layers.ts: changes of ground found by the book. Bands as in reading-the-tray.

import type { LogEntry } from '$sim';
import { cleanView } from '../handMade';
import { told, type HandMade } from './cases';

/** A hole of 5.9 m through silt from .4 m, fine sand from 2 m, coarse sand from 3.5 m; two kinds of coarse ground below look the same in the tray but for gravel at 5.6 m, too low to be seen. */
const MET = [
  told(10, 'layerChanged', { kind: 'silt', depth_m: 0.4 }),
  told(600, 'layerChanged', { kind: 'fineSand', depth_m: 2 }),
  told(1200, 'layerChanged', { kind: 'coarseSand', depth_m: 3.5 }),
  told(2000, 'layerChanged', { kind: 'coarseGravel', depth_m: 5.6 }),
];
const layer = (from_m: number, to_m: number, kind: string): LogEntry => [2400, 'logLayer', { from_m, to_m, kind }];

const booked = (layers: readonly LogEntry[], depth_m = 5.9, met = MET) =>
  cleanView({ depth_m, log: layers, events: met });

const FOUND = [{ depth_m: 2 }, { depth_m: 3.5 }];
const all = { have: 2, limit_m: 0.45 };

export const layers: HandMade = {
  changesFound: {
    bands: { from_m: 0.8, limit_m: 0.45, unseen_m: 0.5 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'both, four decimetres too low',
        view: booked([layer(0, 2.4, 'silt'), layer(2.4, 3.9, 'fineSand'), layer(3.9, 5.9, 'coarseSand')]),
        share: 1,
        reason: 'full',
        data: all,
        evidence: FOUND,
      },
      {
        kind: 'full',
        says: 'a change that the tray does not show is not asked for: firm clay under soft',
        view: booked([layer(0, 2, 'clay'), layer(2, 5.9, 'fineSand')], 5.9, [
          told(10, 'layerChanged', { kind: 'softClay', depth_m: 0.4 }),
          told(300, 'layerChanged', { kind: 'firmClay', depth_m: 1.2 }),
          told(600, 'layerChanged', { kind: 'fineSand', depth_m: 2 }),
        ]),
        share: 1,
        reason: 'full',
        data: { have: 1, limit_m: 0.45 },
        evidence: [{ depth_m: 2 }],
      },
      {
        kind: 'full',
        says: 'a true change that is not asked for may stand in the book: gravel at 5.6 m',
        view: booked([
          layer(0, 2, 'silt'),
          layer(2, 3.5, 'fineSand'),
          layer(3.5, 5.6, 'coarseSand'),
          layer(5.6, 5.9, 'gravel'),
        ]),
        share: 1,
        reason: 'full',
        data: all,
        evidence: FOUND,
      },
      {
        kind: 'full',
        says: 'each booked change is given to the one that it can serve: 2.6 to 3 m, 3.3 to 3.4 m',
        view: booked([layer(0, 2.6, 'silt'), layer(2.6, 3.3, 'fineSand'), layer(3.3, 5.9, 'coarseSand')], 5.9, [
          told(10, 'layerChanged', { kind: 'silt', depth_m: 0.4 }),
          told(600, 'layerChanged', { kind: 'fineSand', depth_m: 3 }),
          told(700, 'layerChanged', { kind: 'coarseSand', depth_m: 3.4 }),
        ]),
        share: 1,
        reason: 'full',
        data: all,
        evidence: [{ depth_m: 3 }, { depth_m: 3.4 }],
      },
      {
        kind: 'between',
        says: 'one of two; the first that is missed is told',
        view: booked([layer(0, 3.5, 'silt'), layer(3.5, 5.9, 'coarseSand')]),
        share: 1 / 2,
        reason: 'missed',
        data: { have: 1, all: 2, depth_m: 2 },
        evidence: FOUND,
      },
      {
        kind: 'between',
        says: 'half a metre off is not found, and stands in the book as one that is not there',
        view: booked([layer(0, 2.5, 'silt'), layer(2.5, 3.5, 'fineSand'), layer(3.5, 5.9, 'coarseSand')]),
        share: 1 / 2,
        reason: 'missed',
        data: { have: 1, all: 2, depth_m: 2 },
        evidence: FOUND,
      },
      {
        kind: 'between',
        says: 'both, and two that are not there',
        view: booked([
          layer(0, 1.3, 'silt'),
          layer(1.3, 1.4, 'clay'),
          layer(1.4, 2, 'silt'),
          layer(2, 3.5, 'fineSand'),
          layer(3.5, 5.9, 'coarseSand'),
        ]),
        share: 2 / (2 + 0.5 * 2),
        reason: 'many',
        data: { extra: 2 },
        evidence: FOUND,
      },
      {
        kind: 'none',
        says: 'one change, where none is',
        view: booked([layer(0, 2.8, 'silt'), layer(2.8, 5.9, 'coarseSand')]),
        share: 0,
        reason: 'missed',
        data: { have: 0, all: 2, depth_m: 2 },
        evidence: FOUND,
      },
      {
        kind: 'none',
        says: 'one word all the way',
        view: booked([layer(0, 3, 'silt'), layer(3, 5.9, 'silt')]),
        share: 0,
        reason: 'none',
        data: {},
      },
      {
        kind: 'unfinished',
        says: 'given up at 3 m: only what was met is asked for',
        view: booked([layer(0, 2, 'silt'), layer(2, 3, 'fineSand')], 3, MET.slice(0, 2)),
        share: 1,
        reason: 'full',
        data: { have: 1, limit_m: 0.45 },
        evidence: [{ depth_m: 2 }],
      },
    ],
  },
};
