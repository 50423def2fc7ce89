// What wears a pump and what that costs.
import { describe, expect, it, test } from 'vitest';
import { AIR_BREAKS_frac, headLeft_ratio, wearAfter } from '../../../sim/hydraulics/wear';
import { SIZE_CLASSES } from '../../../sim/materials/sizes';
import { createPit, type PitState } from '../../../sim/pit/pit';
import { airDrawn_frac } from '../../../sim/pit/strainer';

const of = (id: string, volume_m3: number): number[] => SIZE_CLASSES.map((c) => (c.id === id ? volume_m3 : 0));

function pitWith(cover_m: number): PitState {
  const size = { area_m2: 0.6, depth_m: 0.8 };
  const pit = createPit({ settling: size, suction: size, notch_m: 0.15, strainer_m: 0.2 });
  pit.suction.water_m3 = 0.6 * (0.2 + cover_m);
  return pit;
}

test('worked values', () => {
  expect(wearAfter(0, of('fineSand', 1e-5), false, 1)).toBeCloseTo(2e-6, 15);
  expect(headLeft_ratio(0.1, 0.02)).toBeCloseTo(0.72, 12);
  expect(airDrawn_frac(pitWith(0.025), 0.002, 0.002)).toBeCloseTo(0.05, 12);
});

describe('wear', () => {
  it('is small where the pit keeps its sand, and felt where it all goes round', () => {
    // A hole of 20 m holds some 90 L of grains. A good pit lets 5 % of them pass once; a bad one sends all of them round eight times.
    expect(wearAfter(0, of('fineSand', 0.0045), false, 1)).toBeLessThan(0.005);
    const bad = wearAfter(0, of('fineSand', 8 * 0.09), false, 1);
    expect(bad).toBeGreaterThan(0.05);
    expect(bad).toBeLessThan(0.3);
  });

  it('is none by clay, more by coarse sand, and ends at half of the head', () => {
    expect(wearAfter(0.03, of('clay', 1), false, 1)).toBe(0.03);
    expect(wearAfter(0, of('coarseSand', 0.01), false, 1)).toBeGreaterThan(
      wearAfter(0, of('fineSand', 0.01), false, 1),
    );
    expect(wearAfter(0.4, of('coarseSand', 100), true, 1)).toBe(0.5);
  });

  it('goes on while the suction side is starved', () =>
    expect(wearAfter(0, of('clay', 0), true, 3600)).toBeCloseTo(0.018, 12));
});

describe('air at the strainer', () => {
  it('comes only with little fluid over it, and breaks the prime before it lies bare', () => {
    expect(airDrawn_frac(pitWith(0.051), 0.002, 0.002)).toBe(0);
    expect(airDrawn_frac(pitWith(0.04), 0.002, 0.002)).toBeLessThan(AIR_BREAKS_frac);
    expect(airDrawn_frac(pitWith(0.01), 0.002, 0.002)).toBeGreaterThan(AIR_BREAKS_frac);
  });
  it('is less at less flow', () => {
    expect(airDrawn_frac(pitWith(0.02), 0.001, 0.002)).toBeLessThan(airDrawn_frac(pitWith(0.02), 0.002, 0.002));
  });
});
