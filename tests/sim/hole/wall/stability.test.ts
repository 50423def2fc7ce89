// Need, support and what they make of a wall: prototype figures, limits, and how each side moves the answer.
import { describe, expect, it } from 'vitest';
import { createNeedTable, readNeed } from '../../../../sim/hole/wall/need';
import {
  createWallPath,
  readPath,
  stability_ratio,
  supportShare_frac,
  wallGradient_ratio,
  type PathInput,
} from '../../../../sim/hole/wall/support';
import { createWallGround } from '../../../../sim/hole/wallGround';
import { groundOf } from './site';

const deepSand = createWallGround(groundOf([['fineSand', 40]], 0), 0.25, 160);
const LAST = 159;

const bare: PathInput = {
  radius_m: 0.05,
  logRadius: Math.log(0.05),
  K_ms: 6.4e-5,
  porosity_frac: 0.42,
  room_frac: 0,
  saturated: true,
  lost_m2: 0,
  cakeResistance_s: 0,
  conductance_ms: 0,
};
const shareOf = (change: Partial<PathInput>): number => {
  const path = createWallPath();
  readPath(path, { ...bare, ...change });
  return supportShare_frac(path);
};

describe('need', () => {
  it('of clean fine sand at 100 mm is about .27 kPa: .18 m of head on bare ground, .03 m behind a cake', () => {
    const table = createNeedTable(deepSand, 0.25);
    readNeed(table, LAST, 0.05);
    expect(table.friction_Pa[LAST] / 1000).toBeCloseTo(0.27, 2);
    const head_m = (share: number): number => table.friction_Pa[LAST] / 9810 / share;
    expect(head_m(shareOf({}))).toBeCloseTo(0.18, 2);
    expect(head_m(shareOf({ cakeResistance_s: (20 * Math.log(100) * 0.05) / 6.4e-5 }))).toBeCloseTo(0.03, 2);
  });

  it('grows with the radius, less than in proportion, and is spared by cohesion', () => {
    const table = createNeedTable(deepSand, 0.25);
    let before = 0;
    for (let radius_m = 0.03; radius_m < 0.3; radius_m += 0.01) {
      readNeed(table, LAST, radius_m);
      expect(table.friction_Pa[LAST]).toBeGreaterThan(before);
      expect(table.friction_Pa[LAST] / radius_m).toBeLessThan(0.28e3 / 0.05);
      expect(table.cohesionShare_ratio[LAST]).toBeGreaterThan(0);
      before = table.friction_Pa[LAST];
    }
  });

  it('has a limit at m = 1, where the law itself would divide by nothing', () => {
    const table = createNeedTable(deepSand, 0.25);
    const at = (power: number): number => {
      table.power[LAST] = power;
      table.radius_m[LAST] = 0;
      readNeed(table, LAST, 0.05);
      return table.friction_Pa[LAST];
    };
    const limit = at(0);
    expect(at(1e-9) / limit).toBeCloseTo(1, 7);
    expect(at(-1e-9) / limit).toBeCloseTo(1, 7);
    expect(at(1e-3)).toBeLessThan(limit);
    expect(at(-1e-3)).toBeGreaterThan(limit);
  });

  it('is nothing where undrained strength rules', () => {
    const clay = createWallGround(groundOf([['softClay', 10]], 0), 0.25, 40);
    const table = createNeedTable(clay, 0.25);
    readNeed(table, 20, 0.05);
    expect(table.friction_Pa[20]).toBeCloseTo(0, 15);
    expect(stability_ratio(0, table.friction_Pa[20], 0)).toBe(9);
  });
});

describe('support', () => {
  it('of bare ground is ln 2/ln(R/r), and nears 1 as the cake resists', () => {
    expect(shareOf({})).toBeCloseTo(Math.log(2) / Math.log(100), 12);
    let before = 0;
    for (const times of [0, 1, 3, 10, 100, 1e6]) {
      const share = shareOf({ cakeResistance_s: (times * 0.05) / 6.4e-5 });
      expect(share).toBeGreaterThan(before);
      expect(share).toBeLessThanOrEqual(1);
      before = share;
    }
    expect(before).toBeCloseTo(1, 5);
  });

  it('reads the thickness of the fluid in the pores off the loss of the same cell', () => {
    const lost_m2 = Math.PI * 0.42 * (0.1 * 0.1 - 0.05 * 0.05);
    const path = createWallPath();
    const ring = Math.log(2);
    const total = 12 * ring + Math.log(50);
    readPath(path, { ...bare, lost_m2, conductance_ms: (2 * Math.PI * 6.4e-5) / total });
    expect(path.thick_ratio).toBeCloseTo(12, 9);
    expect(path.total).toBeCloseTo(total, 9);
    expect(supportShare_frac(path)).toBeCloseTo((12 * ring) / total, 9);
    expect(wallGradient_ratio(path, 1, 0.05)).toBeCloseTo(12 / (0.05 * total), 9);
  });

  it('of ground without water is whole while only the first ring is wet, and falls as the front goes on', () => {
    const dry = { saturated: false, room_frac: 0.21 };
    expect(shareOf(dry)).toBeCloseTo(1, 12);
    expect(shareOf({ ...dry, lost_m2: 0.05 })).toBeLessThan(0.7);
  });

  it('stays finite and within 0 to 1 whatever the loss says', () => {
    for (const conductance_ms of [1e-12, 1e-6, 1e-3, 1, 1e6])
      for (const lost_m2 of [0, 1e-9, 1e-3, 100])
        for (const cakeResistance_s of [0, 1e3, 1e7]) {
          const share = shareOf({ conductance_ms, lost_m2, cakeResistance_s });
          expect(share).toBeGreaterThanOrEqual(0);
          expect(share).toBeLessThanOrEqual(1);
        }
  });
});

describe('stability', () => {
  it('is support over need without cohesion, 1 at the limit with it, and kept from -2 to 9', () => {
    expect(stability_ratio(542, 271, 0)).toBeCloseTo(2, 12);
    expect(stability_ratio(171, 271, 100)).toBeCloseTo(1, 12);
    expect(stability_ratio(-1e6, 271, 0)).toBe(-2);
    expect(stability_ratio(1e6, 271, 0)).toBe(9);
    expect(stability_ratio(0, 0, 0)).toBe(9);
  });
});
