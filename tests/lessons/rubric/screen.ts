// Hand-made cases of lessons/rubric/screen.ts: the plan by the crew's own samples. Bands as in open-well.
// Samples lie at 1, 2.2, 3.4 m (fine sand), 4.6, 5.8 (medium), 7 to 11.8 m (coarse); each speaks for what lies nearest: coarse from 4 m on. Lowest water: 5 m.

import { cleanWell, planned } from '../handMadeWell';
import { leftAfterPlan, type HandMade } from './cases';

const place = (from_m: number, coarse: number, below: number) => [
  { depth_m: from_m, value: coarse, unit: '' },
  { depth_m: 5, value: below, unit: '' },
];

/**
 * The coarse samples without what goes round: .3 medium, .4 coarse, .05 gravel of .75. The middle grain lies .075 of .4 into coarse sand, .63 to 2 mm.
 */
const MEDIAN_mm = Math.round((0.63 + (2 - 0.63) * (0.075 / 0.4)) * 100) / 100;
const size_mm = (finer: number): number => 0.63 + (2 - 0.63) * ((finer - 0.4) / (0.4 / 0.75));
/** Slot that lets three quarters by, on a curve straight in the logarithm of the size from d60 to d85: half goes on coming for ever (row S-28). */
const HALF_LOOSE_mm = size_mm(0.6) * Math.pow(size_mm(0.85) / size_mm(0.6), (0.75 - 0.6) / (0.85 - 0.6));

const slot = (slot_mm: number) => [
  { value: slot_mm, unit: 'mm' },
  { value: MEDIAN_mm, unit: 'mm' },
];
const slotData = (slot_mm: number) => ({ slot_mm, median_mm: MEDIAN_mm });

/** Two rows of slots 40 mm long and 1 mm wide, one every so many millimetres, 3 m long: how fast 17 L/min (Y-12) enter. */
const enters_ms = (spacing_mm: number): number => 17 / 60000 / (((2 * 40 * 1) / spacing_mm / 1000) * 3);
const entering = (spacing_mm: number) => [{ value: Math.round(enters_ms(spacing_mm) * 1e4) / 1e4, unit: 'm/s' }];

export const screen: HandMade = {
  screenPlace: {
    bands: {},
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: '8 to 11 m',
        view: cleanWell(),
        share: 1,
        reason: 'full',
        data: { from_m: 8, to_m: 11 },
        evidence: place(8, 1, 1),
      },
      {
        kind: 'between',
        says: '4 to 7 m: all coarse, a third above the lowest water (T-08)',
        view: planned({ screenFrom_m: 4, screenTo_m: 7 }),
        share: 2 / 3,
        reason: 'dry',
        data: { lowest_m: 5 },
        evidence: place(4, 1, 0.67),
      },
      {
        kind: 'between',
        says: '3 to 6 m: two thirds coarse, a third below the lowest water; the fine sand is told',
        view: planned({ screenFrom_m: 3, screenTo_m: 6 }),
        share: (2 / 3) * (1 / 3),
        reason: 'fine',
        data: { share_pct: 33 },
        evidence: place(3, 0.67, 0.33),
      },
      {
        kind: 'between',
        says: '4 to 7 m where four tenths earn nothing: (2/3 - .4)/.6',
        view: planned({ screenFrom_m: 4, screenTo_m: 7 }),
        bands: { none_frac: 0.4 },
        share: (2 / 3 - 0.4) / 0.6,
        reason: 'dry',
        data: { lowest_m: 5 },
        evidence: place(4, 1, 0.67),
      },
      {
        kind: 'none',
        says: '1 to 4 m',
        view: planned({ screenFrom_m: 1, screenTo_m: 4 }),
        share: 0,
        reason: 'fine',
        data: { share_pct: 100 },
        evidence: place(1, 0, 0),
      },
      {
        kind: 'none',
        says: 'a screen of no length',
        view: planned({ screenFrom_m: 8, screenTo_m: 8 }),
        share: 0,
        reason: 'none',
        data: {},
      },
      {
        kind: 'unfinished',
        says: 'a good plan is one, whether or not the casing was run',
        view: leftAfterPlan(),
        share: 1,
        reason: 'full',
        data: { from_m: 8, to_m: 11 },
        evidence: place(8, 1, 1),
      },
    ],
  },
  slotFits: {
    bands: {},
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: '1 mm and a pack that it holds',
        view: cleanWell(),
        share: 1,
        reason: 'full',
        data: slotData(1),
        evidence: slot(1),
      },
      {
        kind: 'between',
        says: 'no pack, and three quarters of the sand finer than the slot: half of it stays loose',
        view: planned({ pack: 'none', slotWidth_mm: HALF_LOOSE_mm }),
        share: 1 / 2,
        reason: 'wide',
        data: slotData(Math.round(HALF_LOOSE_mm * 100) / 100),
        evidence: slot(Math.round(HALF_LOOSE_mm * 100) / 100),
      },
      {
        kind: 'between',
        says: 'the pack holds the sand, but more than 15 % of it is finer than 1.2 mm (S-06): half',
        view: planned({ slotWidth_mm: 1.2 }),
        share: 1 / 2,
        reason: 'pack',
        data: slotData(1.2),
        evidence: slot(1.2),
      },
      {
        kind: 'none',
        says: '3 mm and no pack',
        view: planned({ pack: 'none', slotWidth_mm: 3 }),
        share: 0,
        reason: 'wide',
        data: slotData(3),
        evidence: slot(3),
      },
      {
        kind: 'none',
        says: 'no slots at all',
        view: planned({ slotWidth_mm: 0 }),
        share: 0,
        reason: 'shut',
        data: {},
        evidence: slot(0),
      },
      {
        kind: 'none',
        says: 'no sample within a rod\u2019s length',
        view: { ...cleanWell(), tray: cleanWell().tray.filter(({ label_m }) => label_m < 6) },
        share: 0,
        reason: 'none',
        data: {},
      },
      {
        kind: 'unfinished',
        says: 'a good plan is one, whether or not the casing was run',
        view: leftAfterPlan(),
        share: 1,
        reason: 'full',
        data: slotData(1),
        evidence: slot(1),
      },
    ],
  },
  openAreaEnough: {
    bands: { full_ms: 0.03, none_ms: 0.042 },
    nothing: { reason: 'none' },
    cases: [
      {
        kind: 'full',
        says: 'a slot every 20 mm: 2.4 cm/s, less than 3 (S-01)',
        view: cleanWell(),
        share: 1,
        reason: 'full',
        data: { speed_cms: 2.4, limit_cms: 3 },
        evidence: entering(20),
      },
      {
        kind: 'between',
        says: 'one every 30 mm: 3.5 cm/s',
        view: planned({ slotSpacing_mm: 30 }),
        share: (0.042 - enters_ms(30)) / (0.042 - 0.03),
        reason: 'lost',
        data: { speed_cms: 3.5, limit_cms: 3 },
        evidence: entering(30),
      },
      {
        kind: 'none',
        says: 'one every 40 mm: 4.7 cm/s',
        view: planned({ slotSpacing_mm: 40 }),
        share: 0,
        reason: 'lost',
        data: { speed_cms: 4.7, limit_cms: 3 },
        evidence: entering(40),
      },
      { kind: 'none', says: 'no slots', view: planned({ slotRows: 0 }), share: 0, reason: 'none', data: {} },
      {
        kind: 'unfinished',
        says: 'a good plan is one, whether or not the casing was run',
        view: leftAfterPlan(),
        share: 1,
        reason: 'full',
        data: { speed_cms: 2.4, limit_cms: 3 },
        evidence: entering(20),
      },
    ],
  },
};
