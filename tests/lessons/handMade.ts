// A run's record made by hand: a clean three-rod job to start from, and changes to it, so that an item is tested without the physics.

import { createRecord, TRACE_COLUMNS, type LogEntry, type RunEvent, type Trace, type TraceColumn } from '$sim';
import { openRow } from '../../sim/run/record';
import { ITEMS, judge, lessonById, type ItemId, type Judged, type RunView } from '$lessons';

export type Row = Partial<Record<TraceColumn, number>>;

export function traceOf(rows: readonly Row[]): Trace {
  const { trace } = createRecord();
  for (const row of rows) {
    const index = openRow(trace);
    for (const name of TRACE_COLUMNS) trace.columns[name][index] = row[name] ?? 0;
  }
  return trace;
}

/** A row every 60 s, drilling 0.1 m a row down to the depth, with fluid that soaks as it goes. */
export function steadyRows(depth_m: number, more: Row = {}): Row[] {
  const rows: Row[] = [];
  for (let i = 0; i * 0.1 <= depth_m + 1e-9; i++) {
    const reached_m = i * 0.1;
    rows.push({
      time_s: i * 60,
      bit_m: reached_m,
      depth_m: reached_m,
      sinking_ms: 0.0017,
      loading_frac: 0.02,
      soaked_gL: Math.min(0.8, reached_m * 0.3),
      ...more,
    });
  }
  return rows;
}

export function stop(tick: number, depth_m: number, more: Record<string, number> = {}): RunEvent {
  return {
    tick,
    name: 'flowStopped',
    data: { bit_m: depth_m - 0.2, depth_m, suspended_m3: 0, coarse_m3: 0, bed_m: 0, ...more },
  };
}

export function caught(tick: number, sample: number, label_m: number, origin_m: number): RunEvent {
  return { tick, name: 'sampleCaught', data: { sample, label_m, origin_m } };
}

export function inTray(
  sample: number,
  label_m: number,
  shares: number[],
  main: string | null,
): RunView['tray'][number] {
  const named = main === null ? null : { main, secondary: null, colour: null, feel: null };
  return { sample, time_s: sample * 600, label_m, shares, colour: 'grey', named } as RunView['tray'][number];
}

const SILT = [0.1, 0.8, 0.1, 0, 0, 0, 0, 0];
const FINE = [0, 0.05, 0.8, 0.15, 0, 0, 0, 0];
const COARSE = [0, 0, 0.05, 0.25, 0.6, 0.1, 0, 0];

export const HAZARDS = ['turningStem', 'rods'];

/** A job without a fault. */
export function cleanView(change: Partial<RunView> = {}): RunView {
  const log: LogEntry[] = [
    ...HAZARDS.map((caution): LogEntry => [0, 'readCaution', { caution }]),
    [1, 'addAdditive', { additive: 'polymer', mass_g: 700, manner: 'sprinkled' }],
    [200, 'setTurning', { on: true }],
  ];
  return {
    start_tick: 0,
    startDepth_m: 0,
    powderBefore_kg: 0,
    ticks: 2510,
    log,
    events: [
      caught(600, 1, 1.2, 1.1),
      stop(700, 1.48),
      { tick: 750, name: 'flowStarted', data: {} },
      { tick: 800, name: 'rodAdded', data: { rods: 2, buried_m: 0, bed_m: 0 } },
      caught(1200, 2, 2.6, 2.5),
      stop(1300, 2.98),
      { tick: 1350, name: 'flowStarted', data: {} },
      { tick: 1400, name: 'rodAdded', data: { rods: 3, buried_m: 0, bed_m: 0 } },
      caught(2000, 3, 4.2, 4.1),
      stop(2500, 4.45),
      { tick: 2510, name: 'drillingStopped', data: { depth_m: 4.45, rods: 3 } },
    ],
    trace: traceOf(steadyRows(4.45)),
    tray: [inTray(1, 1.2, SILT, 'silt'), inTray(2, 2.6, FINE, 'fineSand'), inTray(3, 4.2, COARSE, 'coarseSand')],
    powderUsed_kg: 0.7,
    waterUsed_L: 100,
    cost_marks: 0,
    depth_m: 4.45,
    bitDiameter_m: 0.1,
    goal_m: 4.4,
    hazards: HAZARDS,
    well: null,
    ...change,
  };
}

/** The clean record with some events in place of, or beside, its own. */
export function withEvents(drop: (event: RunEvent) => boolean, add: readonly RunEvent[]): RunView {
  const clean = cleanView();
  return cleanView({ events: [...clean.events.filter((event) => !drop(event)), ...add] });
}

export const lesson = lessonById('first-rods')!;

/** One item of first-rods with the lesson's own bands. */
export function judged(id: ItemId, view: RunView): Judged {
  const { bands } = lesson.rubric.find(({ item }) => item === id)!;
  return ITEMS[id](view, bands);
}

/** Points lost by category against a job without a fault. */
export function lostBy(view: RunView): Record<string, number> {
  const clean = judge(cleanView(), lesson);
  const lost: Record<string, number> = {};
  judge(view, lesson).forEach((item, i) => {
    const points = clean[i]!.points - item.points;
    if (points > 0) lost[item.category] = (lost[item.category] ?? 0) + points;
  });
  return lost;
}
