// Two traces on one scale, job time or depth: the columns of both for the charts, and the moment of each run at a place of the scale.
import type { Run, Trace, WellTrace } from '$sim';

/** By job time of the hole, by the depth of the hole, by job time of the finished well. */
export type Scale = 'time' | 'depth' | 'well';

export interface Alongside {
  /** Places of the scale: minutes, metres or hours, rising. */
  readonly at: Float64Array;
  /** Job second of each run at each place; after its end, or below its deepest, that of its last row. */
  readonly time_s: readonly [Float64Array, Float64Array];
  /** Columns by name; null where a run has not come so far. */
  readonly columns: Readonly<Record<string, (number | null)[]>>;
}

/** A column of the charts: which of the trace, and people's unit. */
const OF_HOLE = [
  { name: 'hole_m', column: 'depth_m', times: 1 },
  { name: 'level_m', column: 'holeLevel_m', times: 1 },
  { name: 'returns_percent', column: 'returns_frac', times: 100 },
  { name: 'soaked_gL', column: 'soaked_gL', times: 1 },
  { name: 'fallen_L', column: 'fallen_m3', times: 1000 },
  { name: 'bed_cm', column: 'bed_m', times: 100 },
  { name: 'time_min', column: 'time_s', times: 1 / 60 },
] as const;
const OF_WELL = [
  { name: 'well_m', column: 'level_m', times: 1 },
  { name: 'drawn_Lmin', column: 'drawn_m3s', times: 60000 },
  { name: 'cloudy_NTU', column: 'turbidity_NTU', times: 1 },
  { name: 'sand_mgL', column: 'sand_gL', times: 1000 },
] as const;

/** No more places than can be told apart on a screen. */
const MOST_PLACES = 600;
const STEP_s = 5;
const STEP_m = 0.05;

type AnyTrace = Pick<Trace | WellTrace, 'length'> & { readonly columns: Readonly<Record<string, Float64Array>> };

/** The last row no later than a value of a rising column; -1 where there is none. */
function rowUpTo(column: Float64Array, length: number, value: number): number {
  let low = -1;
  let high = length - 1;
  while (low < high) {
    const middle = Math.ceil((low + high) / 2);
    if (column[middle]! <= value) low = middle;
    else high = middle - 1;
  }
  return low;
}

/** How deep the hole had ever been by each row: it may fill up again. */
function deepestSoFar({ length, columns }: AnyTrace): Float64Array {
  const deepest = new Float64Array(length);
  for (let row = 0; row < length; row++)
    deepest[row] = Math.max(row > 0 ? deepest[row - 1]! : 0, columns['depth_m']![row]!);
  return deepest;
}

/** The first row in which a rising column has reached a value; -1 where it never does. */
function firstRow(column: Float64Array, length: number, value: number): number {
  const before = rowUpTo(column, length, value - 1e-9);
  return before + 1 < length ? before + 1 : -1;
}

/** Of one run: the row at each place, -1 where it has not come so far. */
function rowsOf(trace: AnyTrace, at: Float64Array, scale: Scale): Int32Array {
  const rows = new Int32Array(at.length);
  const times = trace.columns['time_s']!;
  const last_s = trace.length > 0 ? times[trace.length - 1]! : -1;
  const depths = scale === 'depth' ? deepestSoFar(trace) : null;
  for (let i = 0; i < at.length; i++) {
    if (depths) rows[i] = firstRow(depths, trace.length, at[i]!);
    else {
      const wanted_s = at[i]! * (scale === 'time' ? 60 : 3600);
      rows[i] = wanted_s > last_s + STEP_s ? -1 : rowUpTo(times, trace.length, wanted_s);
    }
  }
  return rows;
}

function placesOf(traces: readonly AnyTrace[], scale: Scale): Float64Array {
  const ends = traces.map((trace) => {
    if (trace.length === 0) return 0;
    return scale === 'depth' ? deepestSoFar(trace)[trace.length - 1]! : trace.columns['time_s']![trace.length - 1]!;
  });
  const starts = traces.filter(({ length }) => length > 0).map(({ columns }) => columns['time_s']![0]!);
  const from = scale === 'well' ? Math.min(...starts) : 0;
  const end = Math.max(...ends);
  const least = scale === 'depth' ? STEP_m : STEP_s;
  const step = Math.max(least, Math.ceil((end - from) / MOST_PLACES / least) * least);
  const count = Math.floor((end - from) / step + 1e-6) + 1;
  const unit = scale === 'depth' ? 1 : scale === 'time' ? 60 : 3600;
  return Float64Array.from({ length: count }, (_, i) => (from + i * step) / unit);
}

/** Which scales two runs have in common with the reader: a well only where one of them has come to it. */
export const scalesOf = (runs: readonly Pick<Run, 'record'>[]): Scale[] =>
  runs.some(({ record }) => record.wellTrace.length > 1) ? ['time', 'depth', 'well'] : ['time', 'depth'];

/** Two runs alongside each other. Columns are named 0.hole_m and 1.hole_m, and so on. */
export function alongside(runs: readonly [Pick<Run, 'record'>, Pick<Run, 'record'>], scale: Scale): Alongside {
  const traces = runs.map(({ record }) => (scale === 'well' ? record.wellTrace : record.trace) as AnyTrace);
  const at = placesOf(traces, scale);
  const columns: Record<string, (number | null)[]> = {};
  const times = traces.map((trace, run) => {
    const rows = rowsOf(trace, at, scale);
    for (const { name, column, times } of scale === 'well' ? OF_WELL : OF_HOLE)
      columns[`${run}.${name}`] = Array.from(rows, (row) => (row < 0 ? null : trace.columns[column]![row]! * times));
    const own_s = trace.columns['time_s']!;
    const end_s = trace.length > 0 ? own_s[trace.length - 1]! : 0;
    return Float64Array.from(at, (place, i) => {
      if (scale !== 'depth') return Math.min(end_s, secondsAt(place, scale));
      return rows[i]! < 0 ? end_s : own_s[rows[i]!]!;
    });
  });
  return { at, time_s: [times[0]!, times[1]!], columns };
}

const secondsAt = (at: number, scale: Scale): number => Math.round(at * (scale === 'time' ? 60 : 3600));
