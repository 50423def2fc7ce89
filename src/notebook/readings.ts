// The stick readings of the run so far, for the notebook and for looking back: only what was really read.
import type { Run } from '$sim';

export interface StickReading {
  readonly time_s: number;
  readonly level_m: number;
}

/** Stick readings, oldest first. The run keeps the last one; the level of earlier ones comes from the trace, read to the centimetre as a stick is. */
export function stickReadings(run: Run): StickReading[] {
  const readings: StickReading[] = [];
  const { stick } = run.state;
  for (const event of run.record.events) {
    if (event.name !== 'taskDone' || event.data['action'] !== 'readStick') continue;
    const last = stick?.tick === event.tick ? stick.level_m : null;
    const level_m = last ?? tracedLevel_m(run, event.tick);
    if (level_m !== null) readings.push({ time_s: event.tick, level_m: Math.max(0, level_m) });
  }
  return readings;
}

function tracedLevel_m(run: Run, tick: number): number | null {
  const { trace } = run.record;
  const row = rowAt(trace.columns.time_s, trace.length, tick);
  return row < 0 ? null : Math.round(trace.columns.suctionLevel_m[row]! * 100) / 100;
}

/** Index of the last row that is not later than a time, or -1. */
export function rowAt(times_s: ArrayLike<number>, length: number, time_s: number): number {
  let low = 0;
  let high = length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (times_s[middle]! <= time_s) low = middle + 1;
    else high = middle;
  }
  return low - 1;
}
