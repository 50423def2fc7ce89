import { describe, expect, it } from 'vitest';
import { tanOf } from '../../../sim/numeric/angle';

describe('the tangent by series', () => {
  it('agrees with the built-in one from -85 to 85 degrees', () => {
    for (let angle_deg = -85; angle_deg <= 85; angle_deg += 0.7) {
      const x = (angle_deg * Math.PI) / 180;
      expect(tanOf(angle_deg) / Math.tan(x)).toBeCloseTo(1, 12);
    }
  });
  it('gives 1 at 45 degrees', () => {
    expect(tanOf(45)).toBeCloseTo(1, 15);
  });
});
