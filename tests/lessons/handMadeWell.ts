// A whole well's record made by hand: a job without a fault to start from, and what a change to it costs by category.

import type { LogEntry, RunEvent, Verdict, WellPlan } from '$sim';
import { ITEMS, judge, lessonById, type ItemId, type Judged, type RunView } from '$lessons';
import { caught, inTray, stop, traceOf, type Row } from './handMade';

export const well = lessonById('open-well')!;

const FINE = [0, 0.15, 0.7, 0.15, 0, 0, 0, 0];
const MEDIUM = [0, 0.05, 0.5, 0.4, 0.05, 0, 0, 0];
const COARSE = [0, 0.05, 0.2, 0.3, 0.4, 0.05, 0, 0];

/** Samples every 1.2 m of a hole 12 m deep: fine sand to 4.5 m, medium to 7, coarse below. */
const SAMPLES = Array.from({ length: 10 }, (_, i) => {
  const label_m = Math.round((1 + 1.2 * i) * 10) / 10;
  const [shares, name] =
    label_m < 4.5
      ? ([FINE, 'fineSand'] as const)
      : label_m < 7
        ? ([MEDIUM, 'mediumSand'] as const)
        : ([COARSE, 'coarseSand'] as const);
  return { label_m, shares, name };
});

export const PLAN: WellPlan = {
  casing: 'pvc63',
  screenFrom_m: 8,
  screenTo_m: 11,
  sump_m: 0.5,
  slotWidth_mm: 1,
  slotRows: 2,
  slotArc_mm: 40,
  slotSpacing_mm: 20,
  cloth: 'none',
  cap: true,
  centralisers: 4,
  pack: 'pack1',
  packTop_m: 7,
  seal: 'cement',
  sealFrom_m: 0,
  sealTo_m: 4,
  stickUp_m: 0.5,
};

export const VERDICT: Verdict = {
  yield: { now_Lmin: 60, dry_Lmin: 40, whole_Lmin: 42, share_frac: 0.95, limitedBy: 'ground' },
  static_m: 3,
  dryStatic_m: 5,
  drawdown_m: 1,
  lifts: [],
  fitted: 'suction',
  fittedWorks: true,
  sand_mgL: 1,
  turbidity_NTU: 2,
  leak: {
    annulus_d: 15000,
    ground_d: 4000,
    latrine_d: 900,
    latrine_m: 40,
    latrineRisk: 'veryLow',
    safe_m: 20,
    sealFrom_m: 0,
    sealTo_m: 4,
    sealedLength_m: 4,
    minGap_mm: 18,
  },
  casing: { collapse_ratio: 5, section_frac: 0.6, snapped: false, depth_m: 11.5 },
  screen: {
    from_m: 8,
    to_m: 11,
    openShare_frac: 0.02,
    inAquifer_frac: 1,
    belowLowest_frac: 1,
    entrance_ms: 0.02,
  },
  water: { salt_gL: 0.2, class: 'fresh', meter_uScm: 312.5, laboratoryNeeded: true },
  disinfection: { done: true, ct_mgminL: 40000, enough: true, left_mgL: 0 },
  headWorks: { apron_m: 1.5, drain_m: 4, cap: true, stickUp_m: 0.5, aboveFlood: true },
  people: { served: 500, asked: 250 },
  test: null,
  neighbourFall_m: 0.01,
  hours_h: 36,
  cost_marks: 300,
};

const FIELDS = ['place', 'owner', 'driller', 'use', 'ground', 'water', 'casing', 'pack', 'seal', 'test'];

function rows(): Row[] {
  const list: Row[] = [];
  for (let i = 0; i <= 120; i++)
    list.push({ time_s: i * 60, bit_m: i / 10, depth_m: i / 10, sinking_ms: 0.0017, loading_frac: 0.02, soaked_gL: 1 });
  for (let i = 121; i <= 200; i++) list.push({ time_s: i * 60, depth_m: 12, holeLevel_m: 0.1, soaked_gL: 1 });
  return list;
}

const EVENTS: readonly RunEvent[] = [
  ...SAMPLES.map(({ label_m }, i) => caught(label_m * 600, i + 1, label_m, label_m - 0.1)),
  { tick: 5, name: 'siteChosen', data: { spot: 'B' } },
  { tick: 10, name: 'flowStarted', data: {} },
  stop(7200, 12),
  { tick: 3000, name: 'rodAdded', data: { rods: 4, buried_m: 0, bed_m: 0 } },
  { tick: 7300, name: 'drillingStopped', data: { depth_m: 12, rods: 8 } },
  { tick: 8000, name: 'stemPulled', data: { depth_m: 12 } },
  { tick: 8200, name: 'casingLanded', data: { shoe_m: 11.5, planned_m: 11.5 } },
  { tick: 9000, name: 'sounded', data: { top_m: 7.1 } },
  { tick: 12000, name: 'sounded', data: { top_m: 0.05 } },
];

/** A well without a fault. */
export function cleanWell(change: Partial<RunView> = {}, own: Partial<NonNullable<RunView['well']>> = {}): RunView {
  const log: LogEntry[] = [
    ...well.hazards.map((caution): LogEntry => [0, 'readCaution', { caution }]),
    [1, 'addAdditive', { additive: 'polymer', mass_g: 1200, manner: 'sprinkled' }],
    [20, 'setTurning', { on: true }],
    [7250, 'planWell', { ...PLAN }],
    [8100, 'runCasing', { fill: true, speed_ms: 0.1 }],
    ...FIELDS.map((field): LogEntry => [90000, 'record', { field, text: 'as seen' }]),
  ];
  return {
    start_tick: 0,
    startDepth_m: 0,
    powderBefore_kg: 0,
    ticks: 100000,
    log,
    events: EVENTS,
    trace: traceOf(rows()),
    tray: SAMPLES.map(({ label_m, shares, name }, i) => inTray(i + 1, label_m, [...shares], name)),
    powderUsed_kg: 1.2,
    waterUsed_L: 2000,
    cost_marks: 0,
    depth_m: 12,
    bitDiameter_m: 0.1,
    goal_m: 15,
    hazards: well.hazards,
    well: {
      handedOver: true,
      site: {
        width_m: 80,
        breadth_m: 60,
        spots: [
          { id: 'A', east_m: 10, north_m: 10, rise_m: 0 },
          { id: 'B', east_m: 60, north_m: 40, rise_m: 1 },
        ],
        wells: [{ hamlet: 'Reedbank', east_m: 300, north_m: 0, depth_m: 12, level_m: 3, dryLevel_m: 5 }],
        floodLine_m: 0.5,
        overheadLine: { from: { east_m: 0, north_m: 15 }, to: { east_m: 80, north_m: 15 }, height_m: 6 },
      },
      contamination: [{ source: 'latrine', east_m: 20, north_m: 10, bottom_m: 2 }],
      spot: 'B',
      plan: PLAN,
      ownLog: [
        { from_m: 0, to_m: 4, kind: 'fineSand' },
        { from_m: 4, to_m: 7, kind: 'mediumSand' },
        { from_m: 7, to_m: 12, kind: 'coarseSand' },
      ],
      verdict: VERDICT,
      ...own,
    },
    ...change,
  };
}

/** Another plan, carried out as it says. */
export function planned(change: Partial<WellPlan>): RunView {
  const plan = { ...PLAN, ...change };
  const casing = { ...VERDICT.casing, depth_m: plan.screenTo_m + plan.sump_m };
  return cleanWell({}, { plan, verdict: { ...VERDICT, casing } });
}

type Deep<T> = { readonly [K in keyof T]?: T[K] extends object ? Partial<T[K]> : T[K] };

/** The clean well with another outcome. */
export function cameTo(change: Deep<Verdict>): RunView {
  const verdict = { ...VERDICT } as Record<string, unknown>;
  for (const [key, value] of Object.entries(change))
    verdict[key] = typeof value === 'object' && value !== null ? { ...(verdict[key] as object), ...value } : value;
  return cleanWell({}, { verdict: verdict as unknown as Verdict });
}

export const withWellEvents = (drop: (event: RunEvent) => boolean, add: readonly RunEvent[] = []): RunView =>
  cleanWell({ events: [...EVENTS.filter((event) => !drop(event)), ...add] });

/** One item of open-well with the lesson's own bands. */
export function wellJudged(id: ItemId, view: RunView): Judged {
  const { bands } = well.rubric.find(({ item }) => item === id)!;
  return ITEMS[id](view, bands);
}

/** Points lost by category against a well without a fault. */
export function wellLost(view: RunView): Record<string, number> {
  const clean = judge(cleanWell(), well);
  const lost: Record<string, number> = {};
  judge(view, well).forEach((item, i) => {
    const points = clean[i]!.points - item.points;
    if (points > 0) lost[item.category] = Math.round(((lost[item.category] ?? 0) + points) * 10) / 10;
  });
  return lost;
}
