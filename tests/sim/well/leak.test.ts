// What gets in: slower through tighter, longer, drier ways; and chlorine, salt and their classes at the edges.
import fc from 'fast-check';
import { describe, expect, it, test } from 'vitest';
import { contact_mgminL, packWater_m3, product_kg } from '../../../sim/well/disinfect';
import { conductivity_uScm, saltClass } from '../../../sim/well/drinking';
import { safeDistance_m, travelRisk, travelTime_s } from '../../../sim/well/latrine';
import { latrinePath_s, TABLE_SLOPE, type LatrineLegs } from '../../../sim/well/latrinePath';
import { groundPath_s, OPEN_RING_MS, ringLeak, type RingCells } from '../../../sim/well/leak';

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const YEAR_s = 365.25 * 86400;

function ring(K_ms: readonly number[], area_m2 = 0.01, porosity_frac = 0.4): RingCells {
  return {
    count: K_ms.length,
    height_m: new Float64Array(K_ms.length).fill(0.25),
    area_m2: new Float64Array(K_ms.length).fill(area_m2),
    K_ms: Float64Array.from(K_ms),
    porosity_frac: new Float64Array(K_ms.length).fill(porosity_frac),
  };
}
const cells = (length_m: number, K_ms: number): number[] => new Array<number>(length_m / 0.25).fill(K_ms);

describe('down the ring', () => {
  test('open: minutes; loose sand: hours; three metres of sound bentonite over it: years', () => {
    expect(ringLeak(ring(cells(12, OPEN_RING_MS)), 0).time_s).toBeLessThan(600);
    const sand_s = ringLeak(ring(cells(12, 3e-4)), 0).time_s;
    expect(sand_s / 3600).toBeGreaterThan(1);
    expect(sand_s / 3600).toBeLessThan(24);
    const sealed_s = ringLeak(ring([...cells(3, 1e-10), ...cells(9, 3e-4)]), 0).time_s;
    expect(sealed_s / YEAR_s).toBeGreaterThan(5);
  });
  it('a pond hastens it, a tighter cell slows it, a longer way takes longer', () => {
    fc.assert(
      fc.property(fc.array(between(-9, -2), { minLength: 2, maxLength: 20 }), between(0.1, 3), (logs, pond_m) => {
        const K_ms = logs.map((log) => Math.pow(10, log));
        const { time_s, flow_m3s } = ringLeak(ring(K_ms), 0);
        expect(ringLeak(ring(K_ms), pond_m).time_s).toBeLessThan(time_s);
        expect(ringLeak(ring([K_ms[0] / 10, ...K_ms.slice(1)]), 0).time_s).toBeGreaterThan(time_s);
        expect(ringLeak(ring([...K_ms, 1e-2]), 0).time_s).toBeGreaterThan(time_s);
        expect(ringLeak(ring(K_ms, 0.02), 0).flow_m3s / flow_m3s).toBeCloseTo(2, 9);
        expect(ringLeak(ring(K_ms, 0.02), 0).time_s / time_s).toBeCloseTo(1, 9);
      }),
      { seed: 17 },
    );
  });
  test('a way that is shut lets nothing through; no way at all is no time', () => {
    expect(ringLeak(ring([1e-4, 0, 1e-4]), 0)).toEqual({ flow_m3s: 0, time_s: Infinity });
    expect(ringLeak(ring([1e-4, 1e-4], 0), 0)).toEqual({ flow_m3s: 0, time_s: Infinity });
    expect(ringLeak(ring([]), 0).time_s).toBe(0);
  });
  test('worked value', () => {
    const { flow_m3s, time_s } = ringLeak(ring(cells(3, 1e-9), 0.01455, 0.5), 0);
    expect(flow_m3s).toBeCloseTo(1.455e-11, 14);
    expect(time_s / 1.5e9).toBeCloseTo(1, 9);
  });
});

describe('down the ground', () => {
  const beds = [
    { top_m: 0, bottom_m: 2, K_ms: 1e-6, porosity_frac: 0.45 },
    { top_m: 2, bottom_m: 5, K_ms: 3e-4, porosity_frac: 0.39 },
  ];
  test('worked value; deeper takes longer; a pond hastens', () => {
    expect(groundPath_s(beds, 0, 5, 0)).toBeCloseTo(2.07e6, 0);
    expect(groundPath_s(beds, 0, 4, 0)).toBeLessThan(groundPath_s(beds, 0, 5, 0));
    expect(groundPath_s(beds, 0, 5, 0.5)).toBeLessThan(groundPath_s(beds, 0, 5, 0));
  });
  test('nowhere to go is no time; past the end of the beds is never', () => {
    expect(groundPath_s(beds, 3, 3, 0)).toBe(0);
    expect(groundPath_s(beds, 4, 3, 0)).toBe(0);
    expect(groundPath_s(beds, 0, 6, 0)).toBe(Infinity);
  });
  test('one bed: the ring of the same ground takes as long', () => {
    const sand = [{ top_m: 0, bottom_m: 12, K_ms: 3e-4, porosity_frac: 0.4 }];
    expect(groundPath_s(sand, 0, 12, 0.3)).toBeCloseTo(ringLeak(ring(cells(12, 3e-4)), 0.3).time_s, 6);
  });
});

describe('the latrine', () => {
  it('distance and time undo each other', () => {
    fc.assert(
      fc.property(between(0.1, 0.5), between(1e-6, 1e-2), between(1e-4, 0.05), between(1, 200), (n, K_ms, i, L_m) => {
        expect(safeDistance_m(n, K_ms, i, travelTime_s(n, L_m, K_ms, i))).toBeCloseTo(L_m, 6);
      }),
      { seed: 17 },
    );
  });
  const sand = [{ top_m: 0, bottom_m: 20, K_ms: 3e-4, porosity_frac: 0.39 }];
  const legs: LatrineLegs = {
    pitBottom_m: 2,
    level_m: 4,
    screenTop_m: 12,
    screenBottom_m: 15,
    distance_m: 30,
    drawdown_m: 1,
  };
  test('down, along, down: the sum of the legs, in one sand', () => {
    const i = TABLE_SLOPE + 1 / 30;
    const sum_s = (0.39 * 2) / 3e-4 + (0.39 * 30) / (3e-4 * i) + (0.39 * 8) / (3e-4 * i);
    expect(latrinePath_s(sand, legs)).toBeCloseTo(sum_s, 3);
  });
  test('clay over the sand, a longer way, a deeper screen, less pumping: each takes longer', () => {
    const base_s = latrinePath_s(sand, legs);
    const clay = [
      { top_m: 0, bottom_m: 6, K_ms: 1e-9, porosity_frac: 0.5 },
      { top_m: 6, bottom_m: 20, K_ms: 3e-4, porosity_frac: 0.39 },
    ];
    expect(latrinePath_s(clay, legs)).toBeGreaterThan(1000 * base_s);
    expect(latrinePath_s(sand, { ...legs, distance_m: 40 })).toBeGreaterThan(base_s);
    expect(latrinePath_s(sand, { ...legs, screenTop_m: 14, screenBottom_m: 17 })).toBeGreaterThan(base_s);
    expect(latrinePath_s(sand, { ...legs, drawdown_m: 0 })).toBeGreaterThan(base_s);
  });
  test('a pit in the water has no way down to it; a screen above the pit is never reached', () => {
    expect(latrinePath_s(sand, { ...legs, pitBottom_m: 5 })).toBeLessThan(latrinePath_s(sand, legs));
    expect(latrinePath_s(sand, { ...legs, pitBottom_m: 16 })).toBe(Infinity);
  });
  test('no slope, no travel: very low risk', () => {
    expect(travelTime_s(0.3, 10, 1e-4, 0)).toBe(Infinity);
    expect(travelRisk(Infinity)).toBe('veryLow');
    expect(travelRisk(0)).toBe('significant');
  });
});

describe('chlorine and salt', () => {
  test('worked values', () => {
    expect(product_kg(1, 0.1, 0.7)).toBeCloseTo(0.14286, 5);
    expect(packWater_m3(0.15, 0.063, 4, 0.35)).toBeCloseTo(0.02038, 5);
    expect(contact_mgminL(0.05, 43200)).toBeCloseTo(36000, 6);
    expect([saltClass(0.5), saltClass(1), saltClass(35), saltClass(120)]).toEqual([
      'fresh',
      'brackish',
      'saline',
      'brine',
    ]);
    expect(conductivity_uScm(1)).toBe(1562.5);
  });
});
