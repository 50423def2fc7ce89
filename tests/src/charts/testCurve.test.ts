// The curve of a yield test: pumping and recovery apart but joined, steps at their times, nothing at nought on a scale by tens.
import { describe, expect, it } from 'vitest';
import { levelRange_m, testCurve } from '../../../src/charts/testCurve';

const rows = [
  { time_s: 0, rate_Lmin: 10, level_m: 3 },
  { time_s: 60, rate_Lmin: 10, level_m: 3.4 },
  { time_s: 600, rate_Lmin: 10, level_m: 3.6 },
  { time_s: 660, rate_Lmin: 20, level_m: 4.1 },
  { time_s: 1200, rate_Lmin: 20, level_m: 4.4 },
  { time_s: 1260, rate_Lmin: 0, level_m: 3.5 },
  { time_s: 1800, rate_Lmin: 0, level_m: 3.05 },
];

describe('the curve of a yield test', () => {
  it('gives each reading to pumping or to recovery, and the lines meet', () => {
    const { time_min, pumped_m, rising_m } = testCurve({ rows }, 'linear');
    expect(time_min).toEqual([0, 1, 10, 11, 20, 21, 30]);
    expect(pumped_m).toEqual([3, 3.4, 3.6, 4.1, 4.4, null, null]);
    expect(rising_m).toEqual([null, null, null, null, 4.4, 3.5, 3.05]);
  });

  it('marks where each rate began', () => {
    expect(testCurve({ rows }, 'linear').steps).toEqual([
      { time_min: 0, rate_Lmin: 10 },
      { time_min: 11, rate_Lmin: 20 },
    ]);
  });

  it('leaves out time nought on the scale by tens', () => {
    expect(testCurve({ rows }, 'log').time_min[0]).toBe(1);
  });

  it('is empty without readings, and shows at least half a metre', () => {
    expect(testCurve({ rows: [] }, 'linear').time_min).toEqual([]);
    const [top_m, low_m] = levelRange_m({ rows: rows.slice(0, 1), static_m: 3 });
    expect(low_m - top_m).toBeGreaterThanOrEqual(0.5);
    expect(levelRange_m({ rows, static_m: 3 })[1]).toBeGreaterThan(4.4);
  });
});
