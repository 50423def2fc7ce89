// Reads a run's record into what the items speak of: stops of the flow in the hole, accepted acts, moments at a depth.

import type { ActionName, LogEntry, RunEvent } from '$sim';
import type { RunView } from './item';

/** Share of a settled bed that is grains: loose sand, ASSUMED. */
const BED_PACKING_FRAC = 0.6;

/** A stop nearer the surface than this teaches nothing about a hole, m. */
export const SHORT_HOLE_m = 0.4;

/** A rest this long has shown what would fall, s: the time of a rod change. */
const REST_s = 60;

export interface Stop {
  readonly tick: number;
  readonly bit_m: number;
  readonly depth_m: number;
  /**
   * The bed that the stop let lie, m: what lay there and what the grains still hanging would make; after a rest no more
   * than the bed that was measured, for slick fluid holds fine sand up.
   */
  readonly left_m: number;
}

export function figure(event: RunEvent, name: string): number {
  const value = event.data[name];
  return typeof value === 'number' ? value : 0;
}

export function eventsNamed(view: Pick<RunView, 'events'>, name: RunEvent['name']): RunEvent[] {
  return view.events.filter((event) => event.name === name);
}

/** When the rest was left to a crew; Infinity: never. What is read, tried or poured after that is that crew's. */
export const leftAt = (view: Pick<RunView, 'events'>): number => eventsNamed(view, 'leftToCrew')[0]?.tick ?? Infinity;

/** Highest bed between two moments, m. */
function highestBed_m(view: RunView, from_s: number, to_s: number): number {
  const { time_s, bed_m } = view.trace.columns;
  let highest_m = 0;
  for (let row = 0; row < view.trace.length; row++) {
    if (time_s[row]! >= from_s && time_s[row]! <= to_s) highest_m = Math.max(highest_m, bed_m[row]!);
  }
  return highest_m;
}

/** The stops of the flow in a hole of some depth, in order. */
export function stopsOf(view: RunView): Stop[] {
  const area_m2 = (Math.PI / 4) * view.bitDiameter_m * view.bitDiameter_m;
  const starts = eventsNamed(view, 'flowStarted');
  return eventsNamed(view, 'flowStopped')
    .filter((event) => figure(event, 'depth_m') >= SHORT_HOLE_m)
    .map((event) => {
      const { tick } = event;
      const end_s = starts.find((start) => start.tick > tick)?.tick ?? view.ticks;
      const feared_m = figure(event, 'bed_m') + figure(event, 'coarse_m3') / (BED_PACKING_FRAC * area_m2);
      return {
        tick,
        bit_m: figure(event, 'bit_m'),
        depth_m: figure(event, 'depth_m'),
        left_m: end_s - tick < REST_s ? feared_m : Math.min(feared_m, highestBed_m(view, tick, end_s)),
      };
    });
}

/** Entries of the log that were carried out: a refused act is in the log too, and its refusal among the events. */
export function acceptedActs(view: Pick<RunView, 'log' | 'events'>, action: ActionName): LogEntry[] {
  const refusals = eventsNamed(view, 'refused').filter((event) => event.data.action === action);
  const left = new Map<number, number>();
  for (const event of refusals) left.set(event.tick, (left.get(event.tick) ?? 0) + 1);
  return view.log.filter(([tick, name]) => {
    if (name !== action) return false;
    const refused = left.get(tick) ?? 0;
    if (refused === 0) return true;
    left.set(tick, refused - 1);
    return false;
  });
}

/** First row of the trace in which the hole is at least so deep, or -1. */
export function rowAtDepth(view: RunView, depth_m: number): number {
  const depths = view.trace.columns.depth_m;
  for (let row = 0; row < view.trace.length; row++) if (depths[row]! >= depth_m) return row;
  return -1;
}
