// Loss and wall together: what the fluid in the ring of ground and the skin on it do for the wall.
import { describe, expect, it } from 'vitest';
import { coupledOf, together, type Coupled } from './coupled';
import { groundOf, TABLE_m } from './site';

const DOSE_gL = 1.3;
/** Fine sand under a metre of clay, 8 m deep, the bit at the bottom. */
function drilled(head_m: number, soaked_gL: number, flow_m3s: number): Coupled {
  const site = coupledOf(
    groundOf(
      [
        ['firmClay', 1],
        ['fineSand', 30],
      ],
      TABLE_m,
    ),
    8,
    TABLE_m - head_m,
    soaked_gL,
  );
  site.input.stem.bit_m = 8;
  site.input.flow_m3s = flow_m3s;
  return site;
}
const WET = [12, 16, 20, 24, 28];
const BIT_CELL = 31;

describe('fine sand, its water at 2.5 m', () => {
  it('topped up with soaked polymer stands half an hour, pump on; clean still water let down to the table lets it cave within minutes', () => {
    const held = drilled(2.5, DOSE_gL, 0.002);
    together(held, 1800);
    for (const i of WET) expect(held.hole.radius_m[i]).toBe(0.05);
    for (const i of WET) expect(held.hole.wall.stability_ratio[i]).toBe(9);
    const let_down = drilled(0, 0, 0);
    together(let_down, 180);
    expect(let_down.begun.level + let_down.begun.inflow).toBeGreaterThan(18);
    for (const i of WET) expect(let_down.hole.radius_m[i]).toBeGreaterThan(0.07);
  });

  it('gains from polymer at once by the thickness in its pores, and further as the skin grows', () => {
    const clean = drilled(0.3, 0, 0);
    const soaked = drilled(0.3, DOSE_gL, 0);
    together(clean, 24);
    together(soaked, 24);
    const early = soaked.hole.wall.stability_ratio[20];
    expect(early).toBeGreaterThan(1.5 * clean.hole.wall.stability_ratio[20]);
    together(soaked, 600);
    expect(soaked.hole.wall.stability_ratio[20]).toBeGreaterThan(1.5 * early);
  });

  it('is dug at by water at the bit, not by polymer of the same flow', () => {
    for (const head_m of [0.5, 1]) {
      const water = drilled(head_m, 0, 0.002);
      const polymer = drilled(head_m, DOSE_gL, 0.002);
      together(water, 600);
      together(polymer, 600);
      expect(water.hole.radius_m[BIT_CELL]).toBeGreaterThan(head_m < 1 ? 0.055 : 0.0505);
      expect(polymer.hole.radius_m[BIT_CELL]).toBeLessThan(0.0505);
    }
  });

  it('is caved by a quick pull with the level .2 m above its water, bare; not by a slow one, and not behind a skin', () => {
    const pulled = (lift_ms: number, soaked_gL: number): Coupled => {
      const site = drilled(0.2, soaked_gL, 0);
      site.input.stem.bit_m = 3;
      site.hole.depth_m = 6;
      together(site, 120);
      site.moving.lift_ms = lift_ms;
      together(site, 8);
      return site;
    };
    expect(pulled(0.3, 0).begun.swab).toBeGreaterThan(3);
    expect(pulled(0.1, 0).begun.swab).toBe(0);
    expect(pulled(0.3, DOSE_gL).begun.swab).toBe(0);
  });

  it('loses support as the pull gets faster', () => {
    const taken = [0.1, 0.2, 0.4].map((lift_ms) => {
      const site = drilled(1, 0, 0);
      site.input.stem.bit_m = 6;
      site.moving.lift_ms = lift_ms;
      together(site, 1);
      return -site.loss.surge_Pa[30];
    });
    expect(taken[1]).toBeGreaterThan(3 * taken[0]);
    expect(taken[2]).toBeGreaterThan(3 * taken[1]);
  });
});
