// The trace of a run as columns for the charts, in people's units, and the events worth a mark.

import type { EventName, RunEvent, Run } from '$sim';

export interface TraceColumns {
  time_min: Float64Array;
  bit_m: Float64Array;
  hole_m: Float64Array;
  holeLevel_m: Float64Array;
  settling_cm: Float64Array;
  suction_cm: Float64Array;
  returns_percent: Float64Array;
  flow_Lmin: Float64Array;
  bed_cm: Float64Array;
}

/** Events that get a mark, by name; the others would crowd the charts. */
const MARKED: readonly EventName[] = [
  'rodAdded',
  'flowStopped',
  'sampleCaught',
  'buried',
  'tight',
  'stuck',
  'primeLost',
  'strainerBlocked',
  'returnsLost',
  'wallFails',
  'newHole',
  'nightfall',
  'morning',
  'drillingStopped',
];

export interface TraceMark {
  time_min: number;
  name: EventName;
}

function scaled(column: Float64Array, length: number, factor: number): Float64Array {
  const out = new Float64Array(length);
  for (let i = 0; i < length; i++) out[i] = column[i] * factor;
  return out;
}

export function tracesOf({ record }: Run): TraceColumns {
  const { columns, length } = record.trace;
  return {
    time_min: scaled(columns.time_s, length, 1 / 60),
    bit_m: scaled(columns.bit_m, length, 1),
    hole_m: scaled(columns.depth_m, length, 1),
    holeLevel_m: scaled(columns.holeLevel_m, length, 1),
    settling_cm: scaled(columns.settlingLevel_m, length, 100),
    suction_cm: scaled(columns.suctionLevel_m, length, 100),
    returns_percent: scaled(columns.returns_frac, length, 100),
    flow_Lmin: scaled(columns.flow_m3s, length, 60000),
    bed_cm: scaled(columns.bed_m, length, 100),
  };
}

export function marksOf(events: readonly RunEvent[]): TraceMark[] {
  return events.filter(({ name }) => MARKED.includes(name)).map(({ name, tick }) => ({ name, time_min: tick / 60 }));
}

/** Index of the row nearest to a time; the times rise. */
export function rowAt(time_min: Float64Array, wanted_min: number): number {
  let low = 0;
  let high = time_min.length - 1;
  while (low < high) {
    const middle = (low + high) >> 1;
    if ((time_min[middle] ?? 0) < wanted_min) low = middle + 1;
    else high = middle;
  }
  const before = Math.max(0, low - 1);
  return wanted_min - (time_min[before] ?? 0) < (time_min[low] ?? 0) - wanted_min ? before : low;
}
