import { describe, expect, it } from 'vitest';
import { sinOf, tanOf } from '../../../sim/numeric/angle';

describe('sine and tangent by series', () => {
  it('agree with the built-in ones from -85 to 85 degrees', () => {
    for (let angle_deg = -85; angle_deg <= 85; angle_deg += 0.7) {
      const x = (angle_deg * Math.PI) / 180;
      expect(sinOf(angle_deg)).toBeCloseTo(Math.sin(x), 14);
      expect(tanOf(angle_deg) / Math.tan(x)).toBeCloseTo(1, 12);
    }
  });
  it('give 1/2 at 30 and 1 at 45 degrees', () => {
    expect(sinOf(30)).toBeCloseTo(0.5, 15);
    expect(tanOf(45)).toBeCloseTo(1, 15);
  });
});
