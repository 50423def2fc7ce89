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
] as const;
export type TraceColumn = (typeof TRACE_COLUMNS)[number];

/** Columns of equal length; mouth holds one column of volume fractions per size class. */
export interface Trace {
  length: number;
  readonly columns: Record<TraceColumn, Float64Array>;
  readonly mouth_frac: Float64Array[];
}

export interface RunRecord {
  readonly events: RunEvent[];
  readonly trace: Trace;
}

const FIRST_ROOM = 512;

function emptyColumns(room: number): Record<TraceColumn, Float64Array> {
  const columns = {} as Record<TraceColumn, Float64Array>;
  for (const name of TRACE_COLUMNS) columns[name] = new Float64Array(room);
  return columns;
}

export function createRecord(): RunRecord {
  const mouth_frac: Float64Array[] = [];
  for (let k = 0; k < CLASS_COUNT; k++) mouth_frac.push(new Float64Array(FIRST_ROOM));
  return { events: [], trace: { length: 0, columns: emptyColumns(FIRST_ROOM), mouth_frac } };
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
