// The wall in time: what stands, what falls and how fast, what it does to the hole, and that nothing is lost on the way.
import { describe, expect, it } from 'vitest';
import { holeVolume_m3 } from '../../../../sim/hole/hole';
import { holeCapacity_m3 } from '../holds';
import { ROOF_ratio } from '../../../../sim/hole/wall/slough';
import { CLASS_COUNT } from '../../../../sim/materials/sizes';
import { TABLE_m, allSolids_m3, groundOf, plaster, sandSite, siteOf, stand, sum, widest_m } from './site';

/** Cells well below the table, and above the bottom. */
const WET = [12, 20, 30];

describe('a wall of clean fine sand', () => {
  it('caves within minutes in still clean water at the level of the ground water', () => {
    const site = sandSite(0);
    stand(site, 180);
    expect(widest_m(site)).toBeGreaterThan(0.15);
    expect(allSolids_m3(site)).toBeGreaterThan(0.02);
    expect(site.begun.level).toBeGreaterThan(15);
    for (const i of WET) expect(site.hole.wall.sloughing[i]).toBe(1);
  });

  it('stands half an hour with half a metre of head, and with .1 m behind a membrane but not without', () => {
    const high = sandSite(0.5);
    stand(high, 1800);
    for (const i of WET) expect(high.hole.radius_m[i]).toBe(0.05);
    const bare = sandSite(0.1);
    stand(bare, 300);
    expect(bare.begun.noCake).toBeGreaterThan(15);
    expect(bare.begun.level).toBe(0);
    const sealed = sandSite(0.1);
    plaster(sealed, 20);
    stand(sealed, 1800);
    for (const i of WET) expect(sealed.hole.radius_m[i]).toBe(0.05);
  });

  it('falls faster with less head, and fastest when water runs in, never faster than the law', () => {
    let before = 0.05;
    for (const head_m of [0.15, 0.1, 0.05, 0, -0.2, -2]) {
      const site = sandSite(head_m);
      stand(site, 60);
      const radius_m = site.hole.radius_m[20];
      expect(radius_m).toBeGreaterThan(before);
      expect(radius_m).toBeLessThanOrEqual(0.05 + 3 * 2e-4 * 60);
      if (head_m < 0) expect(site.begun.inflow).toBeGreaterThan(0);
      before = radius_m;
    }
  });

  it('keeps its capillary cohesion above the table until the hole has wetted it for ten minutes', () => {
    const dry = siteOf(groundOf([['fineSand', 30]], 20), 4, 4);
    stand(dry, 1800);
    expect(widest_m(dry)).toBe(0.1);
    const wetted = siteOf(groundOf([['fineSand', 30]], 20), 4, 0);
    stand(wetted, 700);
    expect(widest_m(wetted)).toBe(0.1);
    wetted.level_m = 4;
    stand(wetted, 300);
    expect(wetted.begun.level).toBeGreaterThan(5);
    expect(widest_m(wetted)).toBeGreaterThan(0.12);
  });

  it('falls slower where it is silty', () => {
    const clean = sandSite(0);
    const silty = sandSite(0, 'siltySand');
    stand(clean, 120);
    stand(silty, 120);
    expect(silty.hole.radius_m[20] - 0.05).toBeLessThan((clean.hole.radius_m[20] - 0.05) / 2);
    expect(silty.hole.radius_m[20]).toBeGreaterThan(0.05);
  });
});

describe('gaps and grounds', () => {
  it('open gravel with head but nothing on its wall falls for want of a cake that it cannot have', () => {
    const site = siteOf(
      groundOf(
        [
          ['firmClay', 2.5],
          ['fineGravel', 30],
        ],
        TABLE_m,
      ),
      8,
      TABLE_m - 0.08,
    );
    stand(site, 60);
    expect(site.begun.gap).toBe(22);
    expect(site.begun.noCake + site.begun.level).toBe(0);
  });

  it('crust and rock stand by themselves, silt by its cohesion', () => {
    for (const kind of ['lateriticCrust', 'weatheredRock', 'silt'] as const) {
      const site = sandSite(0, kind);
      stand(site, 1800);
      expect(widest_m(site), kind).toBe(0.1);
    }
  });
});

describe('what falls', () => {
  it('brings its grains and pore water to the last drop, and the hole grows by what left the ground', () => {
    for (const kind of ['fineSand', 'coarseGravel', 'siltySand', 'cobbles'] as const) {
      const site = siteOf(groundOf([[kind, 30]], 3), 8, 3.5);
      const { hole, ground, came } = site;
      let grains_m3 = allSolids_m3(site);
      let water_m3 = hole.water_m3;
      let volume_m3 = holeVolume_m3(hole);
      const caused = () => Object.values(site.volume_m3).reduce((total, value) => total + value, 0);
      let told_m3 = 0;
      stand(site, 400, () => {
        const grown_m3 = holeVolume_m3(hole) - volume_m3;
        expect(Math.abs(allSolids_m3(site) - grains_m3 - sum(came.solids_m3))).toBeLessThanOrEqual(1e-14);
        expect(Math.abs(hole.water_m3 - water_m3 - came.water_m3)).toBeLessThanOrEqual(1e-14);
        expect(Math.abs(caused() - told_m3 - grown_m3)).toBeLessThanOrEqual(1e-12);
        const n = ground.porosity_frac[20];
        expect(Math.abs(sum(came.solids_m3) - (1 - n) * grown_m3)).toBeLessThanOrEqual(1e-12);
        for (let k = 0; k < CLASS_COUNT; k++)
          if (came.solids_m3[k] > 0) expect(came.moment_m4[k] / came.solids_m3[k]).toBeLessThan(8);
        grains_m3 = allSolids_m3(site);
        water_m3 = hole.water_m3;
        volume_m3 = holeVolume_m3(hole);
        told_m3 = caused();
      });
      expect(allSolids_m3(site), kind).toBeGreaterThan(0.001);
    }
  });

  it('leaves no room of its own below the table: what the hole gains it is filled with; above it the air in the pores is missing', () => {
    const wet = sandSite(0);
    const before_m3 = holeCapacity_m3(wet.hole, wet.input.stem) - wet.hole.water_m3;
    stand(wet, 120);
    const gap_m3 = holeCapacity_m3(wet.hole, wet.input.stem) - wet.hole.water_m3 - allSolids_m3(wet);
    expect(gap_m3 - before_m3).toBeCloseTo(0, 12);
    const dry = siteOf(groundOf([['coarseSand', 30]], 20), 4, 4);
    for (let i = 0; i < 16; i++) dry.hole.wall.wetted_s[i] = 1e4;
    stand(dry, 60);
    const air = dry.ground.porosity_frac[8] * (1 - dry.ground.saturation_frac[8]);
    const grown_m3 = holeVolume_m3(dry.hole) - Math.PI * 0.0025 * 4;
    expect(holeVolume_m3(dry.hole) - sum(dry.hole.solids_m3) - dry.hole.water_m3).toBeCloseTo(
      Math.PI * 0.0025 * 4 + air * grown_m3,
      12,
    );
  });

  it('falls into the top wet cell from a wall that stands dry, with the depth it came from', () => {
    const site = siteOf(groundOf([['coarseSand', 30]], 6), 8, 5);
    for (let i = 0; i < 32; i++) site.hole.wall.wetted_s[i] = 1e4;
    plaster(site, 1e3);
    stand(site, 8);
    const top = 20;
    for (let i = 0; i < top; i++)
      for (let k = 0; k < CLASS_COUNT; k++) expect(site.hole.solids_m3[k * site.hole.cells + i]).toBe(0);
    const k = 4;
    const at = k * site.hole.cells + top;
    expect(site.hole.solids_m3[at]).toBeGreaterThan(0);
    expect(site.hole.moment_m4[at] / site.hole.solids_m3[at]).toBeLessThan(5);
  });

  it('takes its cake and its wetted pores along', () => {
    const site = sandSite(0.02);
    plaster(site, 20);
    site.hole.wall.lost_m2.fill(1e-3);
    stand(site, 200);
    expect(site.hole.wall.cake_m[20]).toBeLessThan(1e-4);
    expect(site.hole.wall.lost_m2[20]).toBeLessThan(1e-3);
  });

  it('below the top of the bed the wall leans on it and stands', () => {
    const site = sandSite(0);
    site.hole.bed_m3[3] = Math.PI * 0.0025 * 3 * 0.55;
    stand(site, 120);
    expect(site.hole.radius_m[30]).toBe(0.05);
    expect(site.hole.radius_m[12]).toBeGreaterThan(0.06);
  });
});

describe('a void', () => {
  it('gets no wider than four times the bit: its roof falls instead, up to a clay that bridges', () => {
    const site = siteOf(
      groundOf(
        [
          ['fineSand', 3],
          ['softClay', 4],
          ['fineSand', 30],
        ],
        1,
      ),
      8,
      2.6,
    );
    const { hole } = site;
    plaster(site, 1e4);
    for (let i = 24; i < 32; i++) hole.wall.cakeResistance_s[i] = 0;
    stand(site, 6000);
    const most_m = (ROOF_ratio * 0.1) / 2;
    expect(Math.max(...hole.radius_m)).toBe(most_m);
    for (let i = 16; i < 32; i++) expect(hole.radius_m[i]).toBe(most_m);
    for (let i = 12; i < 16; i++) expect(hole.radius_m[i]).toBeLessThan(0.06);
  });

  it('never makes a radius that is no number, negative or beyond the roof, whatever the level does', () => {
    const site = siteOf(
      groundOf(
        [
          ['topsoil', 1],
          ['softClay', 4],
          ['peat', 6],
          ['mediumSand', 9],
          ['silt', 10],
          ['coarseGravel', 30],
        ],
        1.5,
      ),
      14,
      0,
    );
    const levels = [0, 14, 3, 0.5, 9, 1.5, 2, 0.1];
    levels.forEach((level_m, n) => {
      site.level_m = level_m;
      site.input.stem.bit_m = n % 2 === 0 ? 14 : 3;
      site.moving.lift_ms = n % 3 === 0 ? 0.3 : 0;
      site.input.flow_m3s = n % 2 === 0 ? 0.002 : 0;
      stand(site, 900, () => {
        for (let i = 0; i < 56; i++) {
          const r = site.hole.radius_m[i];
          if (!(r >= 0 && r <= 0.2)) throw new Error(`cell ${i}: ${r}`);
          const F = site.hole.wall.stability_ratio[i];
          if (!(F >= -2 && F <= 9)) throw new Error(`cell ${i}: F ${F}`);
        }
      });
    });
    expect(Number.isFinite(site.hole.water_m3 + allSolids_m3(site))).toBe(true);
  });
});

describe('the turn of each cell', () => {
  it('leaves the same wall after a whole number of turns whatever tick it began at', () => {
    const walls = [0, 3, 6].map((tick) => {
      const site = sandSite(0.05);
      site.input.tick = tick;
      stand(site, 161);
      return Array.from(site.hole.radius_m.slice(12, 30));
    });
    for (const wall of walls.slice(1)) wall.forEach((r, n) => expect(Math.abs(r - walls[0][n])).toBeLessThan(0.0015));
  });
});
