import { describe, expect, it } from 'vitest';
import { cosOf, tanOf } from '../../../sim/numeric/angle';

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

describe('the cosine by series', () => {
  it('agrees with the built-in one from -90 to 90 degrees', () => {
    for (let angle_deg = -90; angle_deg <= 90; angle_deg += 0.7)
      expect(Math.abs(cosOf(angle_deg) - Math.cos((angle_deg * Math.PI) / 180))).toBeLessThan(1e-15);
  });
  it('gives a half at 60 degrees and nothing at 90', () => {
    expect(cosOf(60)).toBeCloseTo(0.5, 15);
    expect(Math.abs(cosOf(90))).toBeLessThan(1e-15);
  });
});
