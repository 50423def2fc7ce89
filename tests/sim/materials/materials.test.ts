// The tables of constants hold together: sizes in order, soils sane, water's properties smooth, the kit as the trade has it.
import { expect, test } from 'vitest';
import { DURATION_s } from '../../../sim/materials/durations';
import { DEFAULT_KIT } from '../../../sim/materials/kit';
import { POLYMER } from '../../../sim/materials/polymer';
import { CLASS_COUNT, FINE_CLASS_COUNT, SIZE_CLASSES } from '../../../sim/materials/sizes';
import { SOILS, SOIL_KINDS } from '../../../sim/materials/soils';
import { vapourPressure_Pa, waterDensity_kgm3, waterViscosity_Pas } from '../../../sim/materials/water';

test('size classes join without a gap and hold their own diameter, near the geometric mean of their limits', () => {
  expect(SIZE_CLASSES).toHaveLength(CLASS_COUNT);
  SIZE_CLASSES.forEach((c, i) => {
    expect(c.lower_mm).toBe(i === 0 ? 0 : SIZE_CLASSES[i - 1].upper_mm);
    if (i > 0) expect(Math.abs(c.d_mm / Math.sqrt(c.lower_mm * c.upper_mm) - 1)).toBeLessThan(0.025);
  });
  expect(FINE_CLASS_COUNT).toBe(2);
});

test('every kind of ground has rising diameters and physical numbers', () => {
  expect(SOIL_KINDS).toHaveLength(16);
  for (const kind of SOIL_KINDS) {
    const s = SOILS[kind];
    expect(s.kind).toBe(kind);
    const sizes = [s.d10_mm, s.d30_mm, s.d50_mm, s.d60_mm, s.d85_mm];
    sizes.forEach((d, i) => expect(d).toBeGreaterThan(i === 0 ? 0 : sizes[i - 1]));
    expect(s.porosity_frac).toBeGreaterThan(0.05);
    expect(s.porosity_frac).toBeLessThan(0.9);
    expect(s.Sy_frac).toBeGreaterThan(0);
    expect(s.Sy_frac).toBeLessThan(s.porosity_frac);
    expect(s.K_ms).toBeGreaterThan(0);
    expect(s.su_kPa === null).toBe(s.phi_deg !== null);
    expect(s.oxidised.length).toBeGreaterThan(0);
    expect(s.reduced.length).toBeGreaterThan(0);
  }
});

test('coarser clean ground conducts better', () => {
  const order = ['siltySand', 'fineSand', 'mediumSand', 'coarseSand', 'fineGravel', 'coarseGravel', 'cobbles'] as const;
  order.forEach((kind, i) => {
    if (i > 0) expect(SOILS[kind].K_ms).toBeGreaterThan(SOILS[order[i - 1]].K_ms);
  });
});

test('warmer water is thinner and nearer to boiling, with no jump', () => {
  for (let t = 0; t < 40; t += 0.25) {
    expect(waterViscosity_Pas(t + 0.25)).toBeLessThan(waterViscosity_Pas(t));
    expect(waterViscosity_Pas(t) / waterViscosity_Pas(t + 0.25)).toBeLessThan(1.01);
    expect(vapourPressure_Pa(t + 0.25)).toBeGreaterThan(vapourPressure_Pa(t));
    expect(Math.abs(waterDensity_kgm3(t + 0.25) - waterDensity_kgm3(t))).toBeLessThan(0.15);
  }
});

test('rods are 1.5 m long (common practice, no source)', () => {
  expect(DEFAULT_KIT.rodLength_m).toBe(1.5);
});

test('the strainer starts clear of the pit floor (common practice, no source)', () => {
  expect(DEFAULT_KIT.strainer_m).toBeGreaterThan(0.1);
  expect(DEFAULT_KIT.strainer_m).toBeLessThan(DEFAULT_KIT.suction.depth_m / 2);
});

test('the pit holds .8-1.5 m3 and 2-3 times a hole of 20 m (common practice, no source)', () => {
  const { settling, suction, bit_m } = DEFAULT_KIT;
  const pit_m3 = settling.area_m2 * settling.depth_m + suction.area_m2 * suction.depth_m;
  expect(pit_m3).toBeGreaterThanOrEqual(0.8);
  expect(pit_m3).toBeLessThanOrEqual(1.5);
  expect(pit_m3).toBeGreaterThan((2 * Math.PI * bit_m * bit_m * 20) / 4);
});

test('polymer is given a quarter of an hour to soak (common practice, no source)', () => {
  expect(POLYMER.soaked95_s).toBe(15 * 60);
});

test('all times are above nothing', () => {
  for (const time_s of Object.values(DURATION_s)) expect(time_s).toBeGreaterThan(0);
});
