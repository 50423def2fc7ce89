// What happened, kept beside the state for the debrief and the score: events with their figures, and a trace sampled every few seconds.

import { CLASS_COUNT } from '../materials/sizes';
import type { EventName } from './names';

export interface RunEvent {
  readonly tick: number;
  readonly name: EventName;
  readonly data: Readonly<Record<string, number | string>>;
}

/** Seconds of job time between two rows of the trace. */
export const TRACE_STEP_s = 5;

export const TRACE_COLUMNS = [
  'time_s',
  'bit_m',
  'depth_m',
  'holeLevel_m',
  'flow_m3s',
  'settlingLevel_m',
  'suctionLevel_m',
  'returns_frac',
  'bed_m',
  'suspended_m3',
  'loading_frac',
  'torque_Nm',
  'pull_N',
  'sinking_ms',
  'K_Pasn',
  'n_ratio',
  'soaked_gL',
  'turning',
  'feed_frac',
  'strainerBlocked_frac',
  'balling_frac',
  'lost_m3',
  'came_m3',
  'fallen_m3',
  'stability_ratio',
  'heap_frac',
  'pumpWorn_frac',
] as const;
export type TraceColumn = (typeof TRACE_COLUMNS)[number];

/** Columns of equal length; mouth holds one column of volume fractions per size class. */
export interface Trace {
  length: number;
  readonly columns: Record<TraceColumn, Float64Array>;
  readonly mouth_frac: Float64Array[];
}

/** Seconds of job time between two rows of a well's own trace: its water moves slowly. */
export const WELL_TRACE_STEP_s = 60;

/** Level in the casing, rate drawn (negative: poured in), cloudiness and sand of the water that came out last. */
export const WELL_TRACE_COLUMNS = ['time_s', 'level_m', 'drawn_m3s', 'turbidity_NTU', 'sand_gL'] as const;
export type WellTraceColumn = (typeof WELL_TRACE_COLUMNS)[number];

/** The trace goes on with these rows once the casing is set. */
export interface WellTrace {
  length: number;
  readonly columns: Record<WellTraceColumn, Float64Array>;
}

export interface RunRecord {
  readonly events: RunEvent[];
  readonly trace: Trace;
  readonly wellTrace: WellTrace;
}

const FIRST_ROOM = 512;

function emptyColumns<Name extends string>(names: readonly Name[]): Record<Name, Float64Array> {
  const columns = {} as Record<Name, Float64Array>;
  for (const name of names) columns[name] = new Float64Array(FIRST_ROOM);
  return columns;
}

export function createRecord(): RunRecord {
  const mouth_frac: Float64Array[] = [];
  for (let k = 0; k < CLASS_COUNT; k++) mouth_frac.push(new Float64Array(FIRST_ROOM));
  return {
    events: [],
    trace: { length: 0, columns: emptyColumns(TRACE_COLUMNS), mouth_frac },
    wellTrace: { length: 0, columns: emptyColumns(WELL_TRACE_COLUMNS) },
  };
}

function doubled(column: Float64Array): Float64Array {
  const wider = new Float64Array(column.length * 2);
  wider.set(column);
  return wider;
}

/** Opens one more row and returns its index; all columns keep the same room. */
export function openRow(trace: Trace): number {
  if (trace.length === trace.columns.time_s.length) {
    for (const name of TRACE_COLUMNS) trace.columns[name] = doubled(trace.columns[name]);
    for (let k = 0; k < trace.mouth_frac.length; k++) trace.mouth_frac[k] = doubled(trace.mouth_frac[k]);
  }
  return trace.length++;
}

/** The same for a well's own trace. */
export function openWellRow(trace: WellTrace): number {
  if (trace.length === trace.columns.time_s.length)
    for (const name of WELL_TRACE_COLUMNS) trace.columns[name] = doubled(trace.columns[name]);
  return trace.length++;
}

/** How long a record was at a moment. */
export interface RecordLength {
  readonly events: number;
  readonly rows: number;
  readonly wellRows: number;
}

export const lengthOf = ({ events, trace, wellTrace }: RunRecord): RecordLength => ({
  events: events.length,
  rows: trace.length,
  wellRows: wellTrace.length,
});

/** Room for the rows and as many more, so that a record that goes on need not grow at once. */
const beginning = (column: Float64Array, rows: number): Float64Array => {
  const room = new Float64Array(Math.max(FIRST_ROOM, 2 * rows));
  room.set(column.subarray(0, rows));
  return room;
};

/** The record as it was when it had that length: a copy of its own, to go on from. */
export function recordUpTo(record: RunRecord, { events, rows, wellRows }: RecordLength): RunRecord {
  const copy = createRecord();
  copy.events.push(...record.events.slice(0, events));
  copy.trace.length = rows;
  for (const name of TRACE_COLUMNS) copy.trace.columns[name] = beginning(record.trace.columns[name], rows);
  for (let k = 0; k < copy.trace.mouth_frac.length; k++)
    copy.trace.mouth_frac[k] = beginning(record.trace.mouth_frac[k], rows);
  copy.wellTrace.length = wellRows;
  for (const name of WELL_TRACE_COLUMNS)
    copy.wellTrace.columns[name] = beginning(record.wellTrace.columns[name], wellRows);
  return copy;
}
