// What a pulled stem and a stream do to the wall.
import { describe, expect, it } from 'vitest';
import { allSolids_m3, groundOf, plaster, sandSite, siteOf, stand, type Site } from './site';

describe('a pulled stem', () => {
  const pulled = (speed_ms: number, change: (site: Site) => void = () => undefined): Site => {
    const site = sandSite(0.2);
    stand(site, 16);
    site.input.stem.bit_m = 4;
    site.moving.lift_ms = speed_ms;
    change(site);
    stand(site, 10);
    return site;
  };

  it('caves a bare hole .2 m above the table when pulled quick, not when pulled slowly', () => {
    const quick = pulled(0.3);
    expect(quick.begun.swab).toBeGreaterThan(3);
    expect(allSolids_m3(quick)).toBeGreaterThan(0);
    const slow = pulled(0.1);
    expect(slow.begun.swab).toBe(0);
    expect(allSolids_m3(slow)).toBe(0);
  });

  it('does more harm balled, in a bed, in thick fluid; and none while the pump fills its room', () => {
    const fell_m3 = (change: (site: Site) => void): number => pulled(0.3, change).volume_m3.swab;
    const plain_m3 = fell_m3(() => undefined);
    expect(fell_m3(({ moving }) => (moving.balling_frac = 1))).toBeGreaterThan(plain_m3);
    const thick = { density_kgm3: 1000, K_Pasn: 0.3, n_ratio: 0.6 };
    expect(fell_m3(({ input }) => (input.fluid = thick))).toBeGreaterThan(plain_m3);
    expect(fell_m3(({ input }) => (input.flow_m3s = 0.003))).toBe(0);
    // A bed up to 5 m round a bit that stands at 6 m; the walls in it lean on it.
    const deep = (change: (site: Site) => void): Site =>
      pulled(0.3, (site) => {
        site.input.stem.bit_m = 6;
        change(site);
      });
    const inBed = deep(({ hole }) => (hole.bed_m3[3] = Math.PI * 0.0025 * 3 * 0.55));
    expect(inBed.work.swab.bit_Pa).toBeCloseTo(3 * deep(() => undefined).work.swab.bit_Pa, 9);
    expect(inBed.hole.radius_m[26]).toBe(0.05);
  });

  it('does none to a wall that is well held', () => {
    const site = sandSite(1);
    site.input.stem.bit_m = 8;
    site.moving.lift_ms = 0.3;
    stand(site, 60);
    expect(allSolids_m3(site)).toBe(0);
  });
});

describe('a stream of water', () => {
  const washed = (head_m: number, flow_m3s: number, change: (site: Site) => void = () => undefined): Site => {
    const site = sandSite(head_m);
    site.input.stem.bit_m = 8;
    site.input.flow_m3s = flow_m3s;
    change(site);
    stand(site, 900);
    return site;
  };
  const BIT_CELL = 31;

  it('widens clean sand round the bit and stops by itself between 110 and 150 mm', () => {
    const site = washed(0.6, 0.002);
    const width_m = 2 * site.hole.radius_m[BIT_CELL];
    expect(width_m).toBeGreaterThan(0.11);
    expect(width_m).toBeLessThan(0.15);
    expect(site.begun.washout).toBe(1);
    stand(site, 3600);
    const later_m = 2 * site.hole.radius_m[BIT_CELL];
    stand(site, 1800);
    expect(2 * site.hole.radius_m[BIT_CELL] - later_m).toBeLessThan(0.002);
    expect(site.hole.radius_m[20]).toBe(0.05);
  });

  it('takes less the more the hole presses outwards, nothing behind a cake', () => {
    let before = 1;
    for (const head_m of [0.3, 0.6, 1, 2]) {
      const radius_m = washed(head_m, 0.002).hole.radius_m[BIT_CELL];
      expect(radius_m).toBeLessThan(before);
      before = radius_m;
    }
    const caked = washed(0.3, 0.002, (site) => plaster(site, 20));
    expect(caked.hole.radius_m[BIT_CELL]).toBe(0.05);
  });

  it('wears stiff clay by excess shear only where it is squeezed tight', () => {
    const site = siteOf(groundOf([['softClay', 30]], 2), 8, 0);
    site.input.stem.bit_m = 8;
    site.input.flow_m3s = 0.002;
    site.hole.radius_m[20] = 0.022;
    stand(site, 300);
    expect(site.hole.radius_m[20]).toBeGreaterThan(0.0222);
    expect(site.hole.radius_m[16]).toBeLessThanOrEqual(0.05);
  });
});
