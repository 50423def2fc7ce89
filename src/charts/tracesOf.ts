// The trace of a run as columns for the charts, in people's units, the events worth a mark, and what the crew did.

import type { ActionName, EventName, Run, RunEvent } from '$sim';

/** Columns of equal length over the same times. */
export type Columns<Name extends string> = { time_min: Float64Array } & Record<Name, Float64Array>;

export type TraceColumns = Columns<
  | 'bit_m'
  | 'hole_m'
  | 'holeLevel_m'
  | 'settling_cm'
  | 'suction_cm'
  | 'returns_percent'
  | 'flow_Lmin'
  | 'bed_cm'
  | 'soaked_gL'
  | 'fallen_L'
>;

export type WellColumns = Columns<'level_m' | 'drawn_Lmin' | 'cloudy_NTU' | 'sand_mgL'>;

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
  'sealSet',
  'wellClear',
  'dipped',
  'testDone',
  'disinfected',
  'headWorksDone',
];

export interface TraceMark {
  time_min: number;
  name: EventName;
}

/** Something done, and when. */
export interface Done {
  time_min: number;
  action: ActionName;
}

function scaled(column: Float64Array, length: number, factor: number): Float64Array {
  const out = new Float64Array(length);
  for (let i = 0; i < length; i++) out[i] = column[i] * factor;
  return out;
}

export function tracesOf({ record }: Pick<Run, 'record'>): TraceColumns {
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
    soaked_gL: scaled(columns.soaked_gL, length, 1),
    fallen_L: scaled(columns.fallen_m3, length, 1000),
  };
}

export function wellTracesOf({ record }: Pick<Run, 'record'>): WellColumns {
  const { columns, length } = record.wellTrace;
  return {
    time_min: scaled(columns.time_s, length, 1 / 60),
    level_m: scaled(columns.level_m, length, 1),
    drawn_Lmin: scaled(columns.drawn_m3s, length, 60000),
    cloudy_NTU: scaled(columns.turbidity_NTU, length, 1),
    sand_mgL: scaled(columns.sand_gL, length, 1000),
  };
}

export function marksOf(events: readonly RunEvent[]): TraceMark[] {
  return events.filter(({ name }) => MARKED.includes(name)).map(({ name, tick }) => ({ name, time_min: tick / 60 }));
}

/** What is done to the work itself; the book would crowd it. */
const UNMARKED: readonly ActionName[] = [
  'readCaution',
  'useHint',
  'goBack',
  'note',
  'record',
  'nameSample',
  'waitFor',
  'takeSeat',
];

/** The acts of a run that were carried out. */
export function doneIn({ log, record }: Pick<Run, 'log' | 'record'>): Done[] {
  const refused = new Set(
    record.events.filter(({ name }) => name === 'refused').map(({ tick, data }) => `${tick} ${data.action}`),
  );
  return log
    .filter(([tick, action]) => !UNMARKED.includes(action) && !refused.has(`${tick} ${action}`))
    .map(([tick, action]) => ({ time_min: tick / 60, action }));
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
