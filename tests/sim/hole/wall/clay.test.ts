// Clay comes in, by squeeze and by swelling, and closes the hole.
import { describe, expect, it } from 'vitest';
import { holeVolume_m3 } from '../../../../sim/hole/hole';
import { passableTo_m } from '../../../../sim/hole/wall/passage';
import { DZ_m, allSolids_m3, groundOf, siteOf, stand, sum } from './site';

describe('clay', () => {
  it('soft, squeezes from about 5 m down when the hole stands empty, and can still be drilled at 15 m when it is full', () => {
    const full = siteOf(groundOf([['softClay', 30]], 2), 16, 0);
    stand(full, 1800);
    expect(2 * full.hole.radius_m[58]).toBeGreaterThan(0.09);
    expect(2 * full.hole.radius_m[4]).toBeGreaterThan(0.099);
    const empty = siteOf(groundOf([['softClay', 30]], 2), 16, 16);
    stand(empty, 1800);
    expect(2 * empty.hole.radius_m[8]).toBeGreaterThan(0.09);
    expect(2 * empty.hole.radius_m[24]).toBeLessThan(0.08);
    expect(empty.begun.squeeze).toBeGreaterThan(30);
  });

  it('closes when overloaded seven times, but not on rods with a flow between', () => {
    const open = siteOf(groundOf([['softClay', 30]], 2), 16, 16);
    open.hole.radius_m.fill(0.05, 0, 64);
    open.ground.su_kPa.fill(20, 40, 64);
    stand(open, 7200);
    expect(open.hole.radius_m[60]).toBe(0);
    expect(passableTo_m(open.hole, 5, 15.5, 0.03)).toBeLessThan(15.25);
    const rods = siteOf(groundOf([['softClay', 30]], 2), 16, 16);
    rods.ground.su_kPa.fill(20, 40, 64);
    rods.input.stem.bit_m = 16;
    rods.input.flow_m3s = 0.002;
    stand(rods, 7200);
    expect(rods.hole.radius_m[60]).toBeGreaterThan(0.0337 / 2);
    expect(rods.hole.radius_m[60]).toBeLessThan(0.025);
  });

  it('swells 2 mm in the first hour where it swells most, less in polymer and bentonite, as the root of time', () => {
    const swollen_mm = (hours: number, soaked_gL = 0, bentonite_gL = 0): number => {
      const site = siteOf(groundOf([['swellingClay', 30]], 1), 4, 0);
      site.input.soaked_gL = soaked_gL;
      site.input.bentonite_gL = bentonite_gL;
      stand(site, hours * 3600);
      return 1000 * site.hole.wall.swollen_m[8];
    };
    const water = swollen_mm(1);
    expect(water).toBeGreaterThan(1.99);
    expect(water).toBeLessThan(2.01);
    expect(swollen_mm(4) / water).toBeCloseTo(2, 2);
    expect(swollen_mm(1, 1.3) / water).toBeCloseTo(0.35, 6);
    expect(swollen_mm(1, 0, 40) / water).toBeCloseTo(0.5, 6);
  });

  it('shrinks the hole without bringing grains or water', () => {
    const site = siteOf(groundOf([['softClay', 30]], 2), 16, 10);
    const before_m3 = holeVolume_m3(site.hole);
    stand(site, 1800);
    expect(holeVolume_m3(site.hole)).toBeLessThan(before_m3);
    expect(allSolids_m3(site) + sum(site.came.solids_m3)).toBe(0);
    for (let i = 0; i < 64; i++)
      expect(site.hole.radius_m[i] + site.hole.wall.squeezed_m[i] + site.hole.wall.swollen_m[i]).toBeCloseTo(0.05, 12);
  });

  it('lets a body down to the first cell that is too tight for it', () => {
    const site = siteOf(groundOf([['softClay', 30]], 2), 16, 0);
    site.hole.radius_m[20] = 0.03;
    site.hole.radius_m[30] = 0;
    expect(passableTo_m(site.hole, 1, 12, 0.048)).toBe(20 * DZ_m);
    expect(passableTo_m(site.hole, 20 * DZ_m, 12, 0.048)).toBe(20 * DZ_m);
    expect(passableTo_m(site.hole, 1, 12, 0.02)).toBe(30 * DZ_m);
    expect(passableTo_m(site.hole, 1, 4, 0.048)).toBe(4);
  });
});
