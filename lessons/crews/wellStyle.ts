// The ways of making a well: what each crew takes care of, as plain figures.

import type { Senses, WellPlan } from '$sim';
import type { Deed } from './crew';
import { carefulPlan, greenPlan, otherPlan, steadyPlan } from './wellPlan';

export type StyleName = 'careful' | 'other' | 'steady' | 'green';

export interface WellStyle {
  readonly plan: (senses: Senses, lowest_m: number) => WellPlan;
  /** Chooses the spot by the site plan; writes its layers down. */
  readonly choosesSpot: boolean;
  readonly keepsBook: boolean;
  /** Glues the casing before the rods come out. */
  readonly joinsFirst: boolean;
  /** Keeps the open hole full with a bucket while it glues. */
  readonly tendsHole: boolean;
  /** Keeps the ring full with a bucket while pack and backfill go in: an open wall that the fluid leaves falls on them. */
  readonly tendsRing: boolean;
  readonly pull: { readonly speed_ms: number; readonly topUp: boolean };
  readonly run: { readonly fill: boolean; readonly speed_ms: number };
  /** A hung casing is worked so often, so long each time, s. */
  readonly works: number;
  readonly work_s: number;
  /** How fast it pours, L/min; how often it sounds and pours again. Without sounding it pours once, by the bucket. */
  readonly pour_Lmin: number;
  readonly soundings: number;
  /** Fills the ring between pack and seal; by and by, not by the barrow. */
  readonly backfills: boolean;
  readonly trickles: boolean;
  /** Washes the well before it is sealed; or seals first and lets that set before it washes. */
  readonly washesFirst: boolean;
  readonly setsFirst: boolean;
  readonly breaks: { readonly dose_mgL: number; readonly contact_s: number } | null;
  /** Rounds of washing, one after the other and over again, until jar and sand are clean; at most so many rounds. */
  readonly washes: readonly Deed['payload'][];
  readonly rounds: number;
  readonly test: { readonly step_s: number; readonly recovery_s: number } | null;
  readonly disinfect: { readonly dose_mgL: number; readonly contact_s: number } | null;
  readonly headWorks: { readonly apron_m: number; readonly drain_m: number; readonly cap: boolean };
  /** Fields of the record that it fills in. */
  readonly record: readonly string[];
}

const HOUR_s = 3600;
const ALL_FIELDS = [
  'well',
  'place',
  'coordinates',
  'owner',
  'driller',
  'use',
  'siting',
  'waterMet',
  'drilling',
  'waterLook',
  'laboratory',
  'remarks',
];

export const STYLES: Readonly<Record<StyleName, WellStyle>> = {
  careful: {
    plan: carefulPlan,
    choosesSpot: true,
    keepsBook: true,
    joinsFirst: true,
    tendsHole: false,
    tendsRing: true,
    pull: { speed_ms: 0.1, topUp: true },
    run: { fill: true, speed_ms: 0.1 },
    works: 10,
    work_s: 60,
    pour_Lmin: 2,
    soundings: 8,
    backfills: true,
    trickles: true,
    washesFirst: false,
    setsFirst: true,
    breaks: { dose_mgL: 1000, contact_s: 6 * HOUR_s },
    washes: [
      { method: 'surge', time_s: HOUR_s, strokes_min: 30 },
      { method: 'bail', time_s: HOUR_s / 4 },
      { method: 'backWash', time_s: HOUR_s / 2 },
      { method: 'overPump', time_s: HOUR_s / 2, rate_Lmin: 25 },
    ],
    rounds: 16,
    test: { step_s: 2 * HOUR_s, recovery_s: HOUR_s },
    disinfect: { dose_mgL: 100, contact_s: 8 * HOUR_s },
    headWorks: { apron_m: 1.5, drain_m: 4, cap: true },
    record: ALL_FIELDS,
  },
  other: {
    plan: otherPlan,
    choosesSpot: true,
    keepsBook: true,
    joinsFirst: false,
    tendsHole: true,
    tendsRing: true,
    pull: { speed_ms: 0.08, topUp: true },
    run: { fill: true, speed_ms: 0.15 },
    works: 6,
    work_s: 120,
    pour_Lmin: 1.5,
    soundings: 8,
    backfills: true,
    trickles: true,
    washesFirst: false,
    setsFirst: true,
    breaks: { dose_mgL: 800, contact_s: 4 * HOUR_s },
    washes: [
      { method: 'bail', time_s: HOUR_s / 2 },
      { method: 'backWash', time_s: 2 * HOUR_s },
      { method: 'surge', time_s: 4 * HOUR_s, strokes_min: 30 },
      { method: 'surge', time_s: 4 * HOUR_s, strokes_min: 30 },
      { method: 'surge', time_s: 4 * HOUR_s, strokes_min: 30 },
    ],
    rounds: 10,
    test: { step_s: HOUR_s, recovery_s: HOUR_s },
    disinfect: { dose_mgL: 200, contact_s: 6 * HOUR_s },
    headWorks: { apron_m: 2, drain_m: 3, cap: true },
    record: ALL_FIELDS,
  },
  steady: {
    plan: steadyPlan,
    choosesSpot: true,
    keepsBook: true,
    joinsFirst: true,
    tendsHole: false,
    tendsRing: false,
    pull: { speed_ms: 0.2, topUp: false },
    run: { fill: true, speed_ms: 0.2 },
    works: 3,
    work_s: 120,
    pour_Lmin: 3,
    soundings: 4,
    backfills: true,
    trickles: false,
    washesFirst: false,
    setsFirst: false,
    breaks: { dose_mgL: 500, contact_s: HOUR_s },
    washes: [
      { method: 'surge', time_s: HOUR_s / 2, strokes_min: 20 },
      { method: 'overPump', time_s: HOUR_s / 2, rate_Lmin: 20 },
    ],
    rounds: 4,
    test: { step_s: HOUR_s, recovery_s: HOUR_s / 2 },
    disinfect: { dose_mgL: 100, contact_s: 6 * HOUR_s },
    headWorks: { apron_m: 1, drain_m: 3, cap: true },
    record: ['well', 'place', 'driller', 'waterMet', 'drilling'],
  },
  green: {
    plan: greenPlan,
    choosesSpot: false,
    keepsBook: false,
    joinsFirst: false,
    tendsHole: false,
    tendsRing: false,
    pull: { speed_ms: 0.5, topUp: false },
    run: { fill: true, speed_ms: 0.5 },
    works: 2,
    work_s: 300,
    pour_Lmin: 40,
    soundings: 0,
    backfills: true,
    trickles: false,
    washesFirst: false,
    setsFirst: false,
    breaks: null,
    washes: [{ method: 'overPump', time_s: 600, rate_Lmin: 15 }],
    rounds: 1,
    test: null,
    disinfect: null,
    headWorks: { apron_m: 0.5, drain_m: 0, cap: false },
    record: ['place'],
  },
};
