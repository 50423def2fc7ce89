// Loss, level and cake on whole holes have the sizes that the trade and the design of this model count with.
import { describe, expect, it } from 'vitest';
import {
  CLAY,
  COARSE,
  FINE,
  GRAVEL,
  keptFull,
  L_PER_MIN,
  oneMetre,
  sandHole,
  tick,
  type Sand,
  type SandHole,
} from './sandHole';

describe('sizes', () => {
  it('clean coarse sand drinks 74 L/min a metre at a metre of head', () => {
    const loss = keptFull(oneMetre(COARSE), 60);
    expect(loss).toBeGreaterThan(72);
    expect(loss).toBeLessThan(75);
  });
  it('soaked polymer cuts that fivefold and more within 5 minutes, by the ring alone', () => {
    const water = keptFull(oneMetre(COARSE), 300);
    const open = { ...COARSE, d15_mm: 9 };
    const ring = keptFull(oneMetre(open, 1.3), 300);
    expect(water / ring).toBeGreaterThan(5);
    expect(water / ring).toBeLessThan(12);
  });
  it('with its membrane 10 to 40 times', () => {
    for (const [d15_mm, least] of [
      [0.357, 20],
      [0.6, 10],
    ]) {
      const ratio = keptFull(oneMetre(COARSE), 300) / keptFull(oneMetre({ ...COARSE, d15_mm }, 1.3), 300);
      expect(ratio).toBeGreaterThan(least);
      expect(ratio).toBeLessThan(40);
    }
  });
  it('more K loses more, more powder less, at any time', () => {
    for (const ticks of [1, 8, 60, 300]) {
      const loss = (sand: Sand, gL: number): number => keptFull(oneMetre(sand, gL), ticks);
      expect(loss(COARSE, 1.3)).toBeLessThan(loss({ ...COARSE, K_ms: 2e-3 }, 1.3));
      expect(loss(COARSE, 1.3)).toBeLessThan(loss(COARSE, 0.6));
      expect(loss(COARSE, 2.5)).toBeLessThan(loss(COARSE, 1.3));
      expect(loss(COARSE, 0.3)).toBeLessThan(loss(COARSE, 0));
    }
  });
  it('three metres of clean coarse sand and a metre of head leave no returns of 120 L/min; with polymer they come back', () => {
    const hole = (soaked_gL: number): SandHole =>
      sandHole({ depth_m: 9, table_m: 1, sand: (z) => (z < 6 ? CLAY : COARSE), soaked_gL });
    const thirsty = hole(0);
    for (let t = 0; t < 120; t++) tick(thirsty, 0.002);
    expect(thirsty.work.returns_m3).toBe(0);
    expect(thirsty.work.level_m).toBeGreaterThan(0.2);
    const sealed = hole(1.3);
    for (let t = 0; t < 300; t++) tick(sealed, 0.002);
    expect(sealed.work.returns_m3 * L_PER_MIN).toBeGreaterThan(105);
  });
  it.each([
    ['7.3 m of fine sand', FINE, 7.3, 11],
    ['2.5 m of coarse gravel', GRAVEL, 2.5, 0.05],
  ])('a level off the water table comes back with the time constant of %s', (_what, sand, open_m, tau_s) => {
    const bench = sandHole({ depth_m: 20, table_m: 4, sand: (z) => (z < 20 - open_m ? CLAY : sand) });
    for (let t = 0; t < 400; t++) tick(bench);
    bench.hole.water_m3 += 0.001;
    bench.hole.shortfall_m3 -= 0.001;
    const rest_m = bench.work.level_m;
    tick(bench);
    const risen_m = 0.001 / (bench.work.room_m3 / 20);
    // Backward Euler leaves 1/(1 + dt/tau) of it.
    const left = (rest_m - bench.work.level_m) / risen_m;
    expect(left / (1 - left) / tau_s).toBeGreaterThan(0.9);
    expect(left / (1 - left) / tau_s).toBeLessThan(1.1);
  });
  it('a still hole in fine sand falls to the water table within a minute, from above', () => {
    const bench = sandHole({ depth_m: 20, table_m: 4, sand: FINE });
    let before = 0;
    for (let t = 0; t < 60; t++) {
      tick(bench);
      expect(bench.work.level_m).toBeGreaterThanOrEqual(before - 1e-12);
      before = bench.work.level_m;
    }
    expect(before).toBeGreaterThan(3.9);
    expect(before).toBeLessThan(4.01);
  });
});

describe('the cake on the wall', () => {
  it('comes off when ground water pushes, and when clean water stands there', () => {
    const bench = oneMetre(COARSE, 1.3);
    keptFull(bench, 600);
    const { hole, ground } = bench;
    const built_m = hole.wall.cake_m[17];
    expect(built_m).toBeGreaterThan(0.0005);
    hole.dissolved_kg.fill(0);
    keptFull(bench, 600);
    const washed_m = hole.wall.cake_m[17];
    expect(washed_m / built_m).toBeGreaterThan(0.4);
    expect(washed_m / built_m).toBeLessThan(0.6);
    for (let i = 0; i < hole.cells; i++) ground.pore_Pa[i] += 9810 * 2;
    keptFull(bench, 40);
    expect(hole.wall.cake_m[17] / washed_m).toBeLessThan(0.07);
  });
  it('wets ground above the table as far as the fluid stands, and no further', () => {
    const bench = sandHole({ depth_m: 6, table_m: 5, sand: { ...FINE, K_ms: 1e-7 }, full_frac: 0.5 });
    for (let t = 0; t < 10; t++) tick(bench);
    const { wetted_s } = bench.hole.wall;
    expect(wetted_s[8]).toBe(0);
    expect(wetted_s[16]).toBe(10);
    expect(wetted_s[22]).toBe(0);
  });
});
