// The generator: same seed same ground, layers without gaps, true to its chain, physical, plain JSON.
import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { SOILS, SOIL_KINDS } from '../../../sim/materials/soils';
import { buildGround, chainOf, ground, type GroundRecipe } from '../../../sim/ground/generate';
import type { Ground } from '../../../sim/ground/ground';
import { layerAt, saturationAt } from '../../../sim/ground/lookup';
import { SETTING, SETTINGS } from '../../../sim/ground/settings';

const seeds = fc.integer({ min: 0, max: 4294967295 });

/** Every number in the ground is finite and every layer joins the one above. */
function expectSound(g: Ground): void {
  const walk = (value: unknown): void => {
    if (typeof value === 'number') expect(Number.isFinite(value)).toBe(true);
    else if (value !== null && typeof value === 'object') Object.values(value).forEach(walk);
  };
  walk(g);
  expect(JSON.parse(JSON.stringify(g))).toEqual(g);
  g.layers.forEach((layer, i) => {
    expect(layer.top_m).toBe(i === 0 ? 0 : g.layers[i - 1].bottom_m);
    expect(layer.bottom_m - layer.top_m).toBeGreaterThan(0.05);
    expect(layer.fractions.reduce((a, b) => a + b, layer.cobble_frac)).toBeCloseTo(1, 12);
  });
  expect(g.depth_m).toBe(g.layers[g.layers.length - 1].bottom_m);
  expect(g.lowestWater_m).toBeGreaterThanOrEqual(g.waterTable_m);
  for (const head of g.heads) {
    expect(head.bottom_m).toBeGreaterThan(head.top_m);
    expect(head.head_m).toBeGreaterThan(0);
    expect(head.head_m).toBeLessThanOrEqual(head.bottom_m);
  }
}

describe.each(SETTINGS)('%s', (setting) => {
  test('is sound for any seed, 40 m deep or more', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const g = ground(setting, seed);
        expectSound(g);
        expect(g.depth_m).toBeGreaterThanOrEqual(40);
        expect(g.layers[0].kind).toBe(SETTING[setting].first);
      }),
      { seed: 13, numRuns: 60 },
    );
  });

  test('same seed same ground, other seed other ground', () => {
    expect(ground(setting, 1234)).toEqual(ground(setting, 1234));
    const profiles = new Set(Array.from({ length: 200 }, (_, seed) => JSON.stringify(ground(setting, seed).layers)));
    expect(profiles.size).toBe(200);
  });

  test('follows its chain: shares of what lies under each kind within four standard errors', () => {
    const { kinds, shares } = chainOf(SETTING[setting]);
    const tally = kinds.map(() => kinds.map(() => 0));
    for (let seed = 0; seed < 1500; seed++) {
      const { layers } = ground(setting, seed);
      for (let i = 1; i < layers.length; i++) {
        tally[kinds.indexOf(layers[i - 1].kind)][kinds.indexOf(layers[i].kind)]++;
      }
    }
    tally.forEach((row, from) => {
      const all = row.reduce((a, b) => a + b, 0);
      expect(all, kinds[from]).toBeGreaterThan(30);
      row.forEach((n, to) => {
        const share = shares[from][to];
        if (share === 0) expect(n).toBe(0);
        else expect(Math.abs(n / all - share)).toBeLessThan(4 * Math.sqrt((share * (1 - share)) / all) + 1e-9);
      });
    });
  });

  test('thickness has the median and the spread of its log-normal law', () => {
    const thick = new Map<string, number[]>();
    for (let seed = 0; seed < 600; seed++) {
      // The last bed may be cut off.
      for (const { kind, top_m, bottom_m } of ground(setting, seed).layers.slice(0, -1)) {
        thick.set(kind, [...(thick.get(kind) ?? []), bottom_m - top_m]);
      }
    }
    for (const [kind, list] of thick) {
      const [median_m, spread] = SETTING[setting].beds[kind as keyof (typeof SETTING)['delta']['beds']]!.thick;
      if (list.length < 300 || median_m > 10) continue;
      list.sort((a, b) => a - b);
      // Thick beds are cut off more often than thin ones, so a tenth of bias is allowed.
      expect(Math.abs(list[Math.floor(list.length / 2)] / median_m - 1), kind).toBeLessThan(0.12);
      const upper = list[Math.floor(list.length * 0.8)] / list[Math.floor(list.length * 0.2)];
      expect(Math.abs(Math.log(upper) / (2 * 0.8416 * spread) - 1), kind).toBeLessThan(0.2);
    }
  });
});

test('all sixteen kinds of ground turn up somewhere', () => {
  const seen = new Set(
    SETTINGS.flatMap((s) => Array.from({ length: 100 }, (_, seed) => ground(s, seed).layers.map((l) => l.kind))).flat(),
  );
  expect(seen.size).toBe(SOIL_KINDS.length);
});

test('each layer varies from its kind within the stated bounds', () => {
  for (let seed = 0; seed < 20; seed++) {
    for (const layer of SETTINGS.flatMap((s) => ground(s, seed).layers)) {
      const soil = SOILS[layer.kind];
      const size = layer.d10_mm / soil.d10_mm;
      expect(size).toBeGreaterThanOrEqual(0.7 - 1e-12);
      expect(size).toBeLessThanOrEqual(1.4 + 1e-12);
      for (const d of ['d30_mm', 'd50_mm', 'd60_mm', 'd85_mm'] as const)
        expect(layer[d] / soil[d]).toBeCloseTo(size, 12);
      expect(Math.abs(layer.porosity_frac - soil.porosity_frac)).toBeLessThanOrEqual(0.03 + 1e-12);
      expect(layer.K_ms / soil.K_ms / (size * size)).toBeCloseTo(1, 9);
      for (const f of ['su_kPa', 'E_MPa'] as const) {
        if (soil[f] === null) expect(layer[f]).toBeNull();
        else {
          expect(layer[f]! / soil[f]).toBeGreaterThanOrEqual(0.7 - 1e-12);
          expect(layer[f]! / soil[f]).toBeLessThanOrEqual(1.4 + 1e-12);
        }
      }
    }
  }
});

test('air colours the ground above the lowest water, below it is grey, black, pale or red crust', () => {
  for (let seed = 0; seed < 20; seed++) {
    for (const g of SETTINGS.map((s) => ground(s, seed))) {
      for (const { kind, colour, top_m, bottom_m } of g.layers) {
        const aerated = (top_m + bottom_m) / 2 < g.lowestWater_m;
        const own: readonly string[] = aerated ? SOILS[kind].oxidised : SOILS[kind].reduced;
        const tint = SETTING[g.setting as 'delta'].tint;
        expect(own.includes(colour) || (aerated && colour === tint)).toBe(true);
      }
    }
  }
});

test('heads: the table where it lies, raised only under tight ground, perched only above the table', () => {
  let confined = 0;
  let perched = 0;
  for (let seed = 0; seed < 100; seed++) {
    for (const g of SETTINGS.map((s) => ground(s, seed))) {
      for (const { top_m, bottom_m, head_m } of g.heads) {
        if (bottom_m <= g.waterTable_m) {
          perched++;
          expect(head_m).toBeGreaterThanOrEqual(top_m);
        } else if (top_m <= g.waterTable_m) expect(head_m).toBe(g.waterTable_m);
        else if (head_m !== g.waterTable_m) {
          confined++;
          expect(head_m).toBeLessThanOrEqual(top_m + 1e-9);
          const tight = g.layers.some((l) => l.bottom_m <= top_m + 1e-9 && l.K_ms < 1.5e-6);
          expect(tight).toBe(true);
        }
      }
    }
  }
  expect(confined).toBeGreaterThan(50);
  expect(perched).toBeGreaterThan(10);
});

test('salt lies under fresh water on the coast and in the delta, nowhere else', () => {
  for (const setting of SETTINGS) {
    const { salinity } = ground(setting, 5);
    const salty = setting === 'coastal' || setting === 'delta';
    expect(salinity).toHaveLength(salty ? 3 : 1);
    salinity.forEach((step, i) => {
      if (i > 0) {
        expect(step.from_m).toBeGreaterThan(salinity[i - 1].from_m);
        expect(step.salt_gL).toBeGreaterThan(salinity[i - 1].salt_gL);
      }
    });
  }
});

test('the site: four spots, three neighbours of different hamlets near the true level, a latrine', () => {
  for (let seed = 0; seed < 100; seed++) {
    const { site, contamination, waterTable_m, lowestWater_m } = ground('terrace', seed);
    expect(site.spots.map((s) => s.id)).toEqual(['A', 'B', 'C', 'D']);
    expect(Math.min(...site.spots.map((s) => s.rise_m))).toBe(0);
    expect(new Set(site.wells.map((w) => w.hamlet)).size).toBe(3);
    for (const well of site.wells) {
      expect(Math.abs(well.level_m - waterTable_m)).toBeLessThanOrEqual(0.36);
      expect(Math.abs(well.dryLevel_m - lowestWater_m)).toBeLessThanOrEqual(0.36);
      expect(well.depth_m).toBeGreaterThan(well.level_m);
    }
    expect(contamination[0].source).toBe('latrine');
  }
});

test('refuses a setting or a seed that is none, in a plain sentence', () => {
  expect(() => ground('moon', 1)).toThrow("There is no setting 'moon'. Choose one of: flood-plain");
  for (const seed of [-1, 0.5, 4294967296, NaN]) {
    expect(() => ground('delta', seed)).toThrow('The seed must be a whole number from 0 to 4294967295.');
  }
  expect(() => ground('toString', 1)).toThrow(RangeError);
});

describe('a recipe', () => {
  const recipe: GroundRecipe = {
    layers: [
      { kind: 'topsoil', thickness_m: [0.3, 0.6] },
      { kind: 'silt', thickness_m: [0.8, 1.4] },
      { kind: 'coarseSand', thickness_m: [5, 6] },
    ],
    waterTable_m: [1, 2.5],
  };

  test('gives its own layers within its ranges, varied by the seed', () => {
    fc.assert(
      fc.property(seeds, (seed) => {
        const g = buildGround(recipe, seed);
        expectSound(g);
        expect(g.layers.map((l) => l.kind)).toEqual(['topsoil', 'silt', 'coarseSand']);
        g.layers.forEach((l, i) => {
          const [least, most] = recipe.layers[i].thickness_m;
          expect(l.bottom_m - l.top_m).toBeGreaterThan(least - 0.0051);
          expect(l.bottom_m - l.top_m).toBeLessThan(most + 0.0051);
        });
        expect(g.waterTable_m).toBeGreaterThanOrEqual(1);
        expect(g.waterTable_m).toBeLessThanOrEqual(2.5);
      }),
      { seed: 14, numRuns: 50 },
    );
    expect(buildGround(recipe, 3)).toEqual(buildGround(recipe, 3));
    expect(buildGround(recipe, 3).layers).not.toEqual(buildGround(recipe, 4).layers);
  });

  test('needs layers and a seed', () => {
    expect(() => buildGround({ ...recipe, layers: [] }, 1)).toThrow('The recipe has no layers.');
    expect(() => buildGround(recipe, -3)).toThrow(RangeError);
  });
});

test('what lies at a depth, and how wet it is', () => {
  const g = ground('old-channel', 7);
  const second = g.layers[1];
  expect(layerAt(g, second.top_m)).toBe(second);
  expect(layerAt(g, second.top_m - 1e-9)).toBe(g.layers[0]);
  expect(layerAt(g, -1)).toBe(g.layers[0]);
  expect(layerAt(g, 999)).toBe(g.layers[g.layers.length - 1]);
  expect(saturationAt(g, g.waterTable_m)).toBe(1);
  const above = saturationAt(g, 0);
  expect(above).toBeGreaterThan(0);
  expect(above).toBeLessThan(1);
});
