// Any wall in any state: radii stay sound, nothing appears or is lost, every failure is told.
import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import { holeVolume_m3 } from '../../../../sim/hole/hole';
import { CAUSES } from '../../../../sim/hole/wall/failures';
import { CLASS_COUNT } from '../../../../sim/materials/sizes';
import { SOIL_KINDS } from '../../../../sim/materials/soils';
import { allSolids_m3, groundOf, siteOf, stand, sum, type Site } from './site';

const CELLS = 40;
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true });
const each = (min: number, max: number) => fc.array(between(min, max), { minLength: CELLS, maxLength: CELLS });

const anyRecipe = fc.record({
  beds: fc.array(fc.tuple(fc.constantFrom(...SOIL_KINDS), between(0.3, 4)), { minLength: 1, maxLength: 5 }),
  table_m: between(0, 12),
  depth_m: between(0.3, 9.9),
  level_m: between(0, 10),
  bit_frac: between(0, 1),
  radius_m: each(0, 0.2),
  cake_m: each(0, 0.003),
  conductance: each(-2, 1),
  lost_m2: each(0, 2),
  lift_ms: fc.constantFrom(0, 0.1, 0.4, -0.2),
  flow_m3s: fc.constantFrom(0, 0.001, 0.004),
  K_Pasn: fc.constantFrom(0.001, 0.08, 0.5),
  bed_m3: between(0, 0.02),
});
type Recipe = typeof anyRecipe extends fc.Arbitrary<infer R> ? R : never;

function siteFrom(g: Recipe): Site {
  let bottom_m = 0;
  const layers = g.beds.map(([kind, thick_m]) => [kind, (bottom_m += thick_m)] as const);
  const site = siteOf(groundOf([...layers, ['fineSand', 40]], g.table_m), g.depth_m, Math.min(g.level_m, g.depth_m));
  const { hole, ground, input } = site;
  for (let i = 0; i < CELLS && i * hole.dz_m < hole.depth_m; i++) {
    // Every other one as the bit left it; some closed.
    hole.radius_m[i] = i % 2 === 0 ? 0.05 : g.radius_m[i] < 0.005 ? 0 : g.radius_m[i];
    hole.wall.open_s[i] = i * 7;
    hole.wall.cake_m[i] = g.cake_m[i];
    hole.wall.cakeResistance_s[i] = g.cake_m[i] * 1e7;
    hole.wall.lost_m2[i] = g.lost_m2[i];
    hole.wall.conductance_ms[i] = g.conductance[i] < -1 ? 0 : 2 * ground.K_ms[i] * 10 ** g.conductance[i];
  }
  input.stem.bit_m = g.depth_m * g.bit_frac;
  input.flow_m3s = g.flow_m3s;
  input.fluid = { density_kgm3: 1010, K_Pasn: g.K_Pasn, n_ratio: g.K_Pasn > 0.01 ? 0.7 : 1 };
  site.moving.lift_ms = g.lift_ms;
  hole.bed_m3[4] = g.bed_m3;
  return site;
}

/** What is wrong after one second, in words. */
function faults(site: Site): string[] {
  const { hole, came, work } = site;
  const found: string[] = [];
  const grains_m3 = allSolids_m3(site);
  const water_m3 = hole.water_m3;
  const before = Array.from(hole.radius_m);
  const inwards = Array.from(hole.radius_m, (_, i) => hole.wall.squeezed_m[i] + hole.wall.swollen_m[i]);
  const volume_m3 = holeVolume_m3(hole);
  const squeezed = sum(hole.wall.squeezed_m) + sum(hole.wall.swollen_m);
  stand(site, 1);
  if (Math.abs(allSolids_m3(site) - grains_m3 - sum(came.solids_m3)) > 1e-14) found.push('grains');
  if (Math.abs(hole.water_m3 - water_m3 - came.water_m3) > 1e-14) found.push('water');
  const fell_m3 = (hole: Site['hole']): number => {
    let total = 0;
    for (let i = 0; i * hole.dz_m < hole.depth_m; i++) {
      const height_m = Math.min(hole.dz_m, hole.depth_m - i * hole.dz_m);
      // Clay comes in first, then wears.
      const came_m = hole.wall.squeezed_m[i] + hole.wall.swollen_m[i] - inwards[i];
      total += Math.PI * Math.max(0, hole.radius_m[i] ** 2 - (before[i] - came_m) ** 2) * height_m;
    }
    return total;
  };
  // Grains take 1 - n of what fell, n between 0 and 1.
  if (sum(came.solids_m3) > fell_m3(hole) + 1e-14) found.push('more grains than ground');
  if (came.water_m3 + sum(came.solids_m3) > fell_m3(hole) + 1e-12) found.push('more than fell');
  if (sum(came.solids_m3) > 0 && work.fallen.last < work.fallen.first) found.push('fallen from nowhere');
  if (holeVolume_m3(hole) > volume_m3 + 1e-9 && work.fallen.last < work.fallen.first)
    found.push('grown without a fall');
  if (sum(hole.wall.squeezed_m) + sum(hole.wall.swollen_m) < squeezed) found.push('clay that went back');
  for (let i = 0; i * hole.dz_m < hole.depth_m; i++) {
    const r = hole.radius_m[i];
    if (!(r >= 0 && r <= 0.2)) found.push(`radius ${i} ${r}`);
    if (before[i] === 0 && r !== 0) found.push(`opened ${i}`);
    const F = hole.wall.stability_ratio[i];
    if (!(F >= -2 && F <= 9)) found.push(`stability ${i} ${F}`);
    for (const field of [hole.wall.cake_m, hole.wall.cakeResistance_s, hole.wall.lost_m2, hole.wall.wetted_s])
      if (!(field[i] >= 0 && Number.isFinite(field[i]))) found.push(`field ${i} ${field[i]}`);
  }
  for (let f = 0; f < work.failures.count; f++) {
    if (CAUSES[work.failures.cause[f]] === undefined) found.push('no such cause');
    if (!(work.failures.volume_m3[f] >= 0)) found.push('volume of a failure');
  }
  for (let k = 0; k < CLASS_COUNT; k++)
    if (!(came.moment_m4[k] <= came.solids_m3[k] * 10 + 1e-18)) found.push('moment');
  return found;
}

describe('any wall', () => {
  it('stays sound and loses nothing, second by second', () => {
    fc.assert(
      fc.property(anyRecipe, fc.integer({ min: 0, max: 7 }), (recipe, tick) => {
        const site = siteFrom(recipe);
        site.input.tick = tick;
        const found: string[] = [];
        for (let s = 0; s < 20; s++) found.push(...faults(site));
        expect(found).toEqual([]);
      }),
      { seed: 7, numRuns: 200 },
    );
  });
});
