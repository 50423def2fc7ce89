// A yield test as a curve: depth of the water against time, pumping and recovery apart, in minutes or on a logarithm of them.
import type { TestReading } from '$sim';

export type TimeScale = 'linear' | 'log';

export interface TestCurve {
  /** Minutes since pumping began. */
  time_min: number[];
  /** Depth of the water, m below ground: while pumped, and while it rose again; null where the other one is. */
  pumped_m: (number | null)[];
  rising_m: (number | null)[];
  /** Where a rate began: minutes and litres a minute. */
  steps: { time_min: number; rate_Lmin: number }[];
}

/** On a scale of logarithms there is no time nought: the first minute or reading is where it begins. */
const LEAST_min = 0.1;

export function testCurve({ rows }: Pick<TestReading, 'rows'>, scale: TimeScale): TestCurve {
  const curve: TestCurve = { time_min: [], pumped_m: [], rising_m: [], steps: [] };
  let last_Lmin: number | null = null;
  let stoppedAt = -1;
  rows.forEach(({ time_s, rate_Lmin, level_m }, i) => {
    if (rate_Lmin !== last_Lmin && rate_Lmin > 0) curve.steps.push({ time_min: time_s / 60, rate_Lmin });
    if (rate_Lmin === 0 && last_Lmin !== null && last_Lmin > 0) stoppedAt = i;
    last_Lmin = rate_Lmin;
    const time_min = time_s / 60;
    if (scale === 'log' && time_min < LEAST_min) return;
    curve.time_min.push(time_min);
    const rises = rate_Lmin === 0 && stoppedAt >= 0;
    curve.pumped_m.push(rises ? null : level_m);
    curve.rising_m.push(rises ? level_m : null);
  });
  return joinUp(curve);
}

/** The recovery begins at the last reading under pumping, so that the two lines meet. */
function joinUp(curve: TestCurve): TestCurve {
  const first = curve.rising_m.findIndex((level_m) => level_m !== null);
  if (first > 0) curve.rising_m[first - 1] = curve.pumped_m[first - 1]!;
  return curve;
}

/** Range of the depth axis, m: from a little above the rest level down past the lowest, never less than half a metre. */
export function levelRange_m({ rows, static_m }: Pick<TestReading, 'rows' | 'static_m'>): [number, number] {
  let low_m = static_m;
  let high_m = static_m;
  for (const { level_m } of rows) {
    low_m = Math.max(low_m, level_m);
    high_m = Math.min(high_m, level_m);
  }
  const room_m = Math.max(0.5, low_m - high_m);
  return [Math.max(0, high_m - 0.12 * room_m), high_m + 1.12 * room_m];
}
