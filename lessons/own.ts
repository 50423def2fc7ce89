// The learner's own part of a run: all of it, or what came after the crew before was relieved.

import { TRACE_COLUMNS, type LogEntry, type Run, type RunEvent, type Trace, type TraceColumn } from '$sim';

/** Second at which the learner took over. */
export const startTick = ({ state }: Pick<Run, 'state'>): number => state.relief?.tick ?? 0;

/** How many entries of the log are those of the crew before. */
export function entriesBefore(run: Pick<Run, 'state' | 'log'>): number {
  if (!run.state.relief) return 0;
  const { tick } = run.state.relief;
  return run.log.findIndex(([at, action]) => at === tick && action === 'relieveCrew') + 1;
}

export function ownEntries(run: Pick<Run, 'state' | 'log'>): readonly LogEntry[] {
  const before = entriesBefore(run);
  return before === 0 ? run.log : run.log.slice(before);
}

/** Events since then; of a record that begins later all of them. */
export function ownEvents({ record }: Pick<Run, 'record'>): readonly RunEvent[] {
  const relieved = record.events.findIndex(({ name }) => name === 'crewRelieved');
  return relieved < 0 ? record.events : record.events.slice(relieved + 1);
}

/** Rows of the trace since then, as views of the same columns. */
export function ownTrace(run: Pick<Run, 'state' | 'record'>): Trace {
  const { trace } = run.record;
  const from_s = startTick(run);
  let first = 0;
  while (first < trace.length && trace.columns.time_s[first]! < from_s) first++;
  if (first === 0) return trace;
  const columns = {} as Record<TraceColumn, Float64Array>;
  for (const name of TRACE_COLUMNS) columns[name] = trace.columns[name].subarray(first);
  return { length: trace.length - first, columns, mouth_frac: trace.mouth_frac.map((row) => row.subarray(first)) };
}
