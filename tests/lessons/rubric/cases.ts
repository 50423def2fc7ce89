// The form of a hand-made case: a record of which points, reason and evidence can be said in advance; and records to start from.

import type { LogEntry, RunEvent } from '$sim';
import type { Evidence, ItemId, RunView, WordData } from '$lessons';
import { cleanView, HAZARDS, inTray, steadyRows, stop, traceOf, type Row } from '../handMade';
import { cleanWell } from '../handMadeWell';

/** `unfinished`: the work ended before. Its view is a record that breaks off, whatever the item gives for it. */
export type Kind = 'full' | 'between' | 'none' | 'unfinished';

export interface ItemCase {
  readonly kind: Kind;
  readonly says: string;
  readonly view: RunView;
  /** Share of the weight, reckoned from the item's own comment or the source it names. */
  readonly share: number;
  /** Last part of the reason's key, and the figures that the sentence is filled with. */
  readonly reason: string;
  readonly data: WordData;
  /** Left out: none. */
  readonly evidence?: readonly Evidence[];
  /** In place of the item's own. */
  readonly bands?: Readonly<Record<string, number>>;
}

export interface HandMadeItem {
  /** As the lessons have them. */
  readonly bands: Readonly<Record<string, number>>;
  /** What is said of a record in which nothing happened; it earns nothing. */
  readonly nothing: { readonly reason: string; readonly data?: WordData };
  readonly cases: readonly ItemCase[];
}

export type HandMade = Readonly<Partial<Record<ItemId, HandMadeItem>>>;

export const told = (tick: number, name: RunEvent['name'], data: RunEvent['data'] = {}): RunEvent => ({
  tick,
  name,
  data,
});

const byTick = (a: RunEvent, b: RunEvent): number => a.tick - b.tick;

/** The clean job of three rods, 4.45 m of 4.4 m, with rows of its own: a row a minute, .1 m each. */
export const drilled = (change: (row: Row, i: number) => Row, events: readonly RunEvent[] = []): RunView =>
  cleanView({
    trace: traceOf(steadyRows(4.45, { flow_m3s: 0.002 }).map((row, i) => ({ ...row, ...change(row, i) }))),
    events: [...cleanView().events, ...events].sort(byTick),
  });

/** The same with more acts, their refusals among the events. */
export const withActs = (log: readonly LogEntry[], events: readonly RunEvent[] = []): RunView =>
  cleanView({ log: [...cleanView().log, ...log], events: [...cleanView().events, ...events].sort(byTick) });

/** Half of the way down, 2.2 m of 4.4 m, and given up there: one sample, one rod, two stops. */
export function halfway(change: (row: Row, i: number) => Row = () => ({}), events: readonly RunEvent[] = []): RunView {
  const clean = cleanView();
  return cleanView({
    ticks: 1340,
    depth_m: 2.2,
    trace: traceOf(steadyRows(2.2, { flow_m3s: 0.002 }).map((row, i) => ({ ...row, ...change(row, i) }))),
    events: [...clean.events.filter(({ tick }) => tick < 1000), stop(1330, 2.2), ...events].sort(byTick),
    tray: clean.tray.slice(0, 1),
  });
}

/** Nothing was done at all: of a hole, and of a well. */
const NOTHING = {
  ticks: 600,
  hazards: HAZARDS,
  log: [],
  events: [],
  trace: traceOf([]),
  tray: [],
  depth_m: 0,
  powderUsed_kg: 0,
  waterUsed_L: 0,
  cost_marks: 0,
};
export const noHole = (): RunView => cleanView(NOTHING);
export const noWell = (): RunView =>
  cleanWell(NOTHING, { handedOver: false, spot: '', plan: null, ownLog: [], verdict: null });

/** The clean well with more acts and events. */
export const wellWith = (log: readonly LogEntry[], events: readonly RunEvent[] = []): RunView => {
  const clean = cleanWell();
  return cleanWell({ log: [...clean.log, ...log], events: [...clean.events, ...events].sort(byTick) });
};

/** The well was drilled and planned, and then left: no casing, no verdict. */
export function leftAfterPlan(): RunView {
  const clean = cleanWell();
  return cleanWell(
    {
      ticks: 7400,
      events: clean.events.filter(({ tick }) => tick <= 7300),
      log: clean.log.filter(([tick]) => tick <= 7300),
    },
    { handedOver: false, verdict: null },
  );
}

export { inTray };
