// The heat of the drive: what warms it, what cools it, and how long a stall may last.
import { describe, expect, it, test } from 'vitest';
import { DRIVE_COOL_C, DRIVE_HOT_C, driveAfter_C, driveHeat_W } from '../../../sim/drilling/drive';
import { groundRefuses } from '../../../sim/drilling/bit';

test('worked values', () => {
  expect(driveHeat_W(700, 1)).toBe(700);
  expect(driveHeat_W(700, 0.5)).toBeCloseTo(201.25, 12);
  expect(driveAfter_C(25, 25, 700, false, 150)).toBeCloseTo(120.4, 1);
  expect(groundRefuses(80, 0.1, 62.9)).toBe(false);
  expect(groundRefuses(80, 0.1, 62.7)).toBe(true);
  expect(groundRefuses(null, 0.1, 1e6)).toBe(true);
});

/** Seconds until the limit is passed, -1 if it never is within an hour. */
function timeTo_s(from_C: number, limit_C: number, heat_W: number, fanRuns: boolean): number {
  let now_C = from_C;
  const up = limit_C > from_C;
  for (let s = 0; s < 3600; s++) {
    if (up ? now_C >= limit_C : now_C <= limit_C) return s;
    now_C = driveAfter_C(now_C, 25, heat_W, fanRuns, 1);
  }
  return -1;
}

describe('the drive', () => {
  it('many seconds make what one long step makes', () => {
    let now_C = 25;
    for (let s = 0; s < 300; s++) now_C = driveAfter_C(now_C, 25, 400, true, 1);
    expect(now_C).toBeCloseTo(driveAfter_C(25, 25, 400, true, 300), 9);
  });

  it('bears hard work at more than half of its torque for ever, and a stall for two to four minutes', () => {
    expect(timeTo_s(25, DRIVE_HOT_C, driveHeat_W(700, 0.7), true)).toBe(-1);
    const stall_s = timeTo_s(25, DRIVE_HOT_C, driveHeat_W(700, 1), false);
    expect(stall_s).toBeGreaterThan(120);
    expect(stall_s).toBeLessThan(240);
  });

  it('needs minutes to cool', () => {
    const cool_s = timeTo_s(DRIVE_HOT_C, DRIVE_COOL_C, 0, false);
    expect(cool_s).toBeGreaterThan(120);
    expect(cool_s).toBeLessThan(900);
  });
});
