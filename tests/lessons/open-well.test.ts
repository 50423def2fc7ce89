// The lesson open-well: crews make whole wells on twenty grounds. All finish; the careful crew's wells are better in all that counts.

import { describe, expect, test } from 'vitest';
import { scenarioOf } from '$lessons';
import { made, middleOf, openWell, type Made } from './openWell';

const SEEDS = Array.from({ length: 20 }, (_, i) => i + 1);
/** One in so many is played again from its run file. */
const AGAIN_EVERY = 5;
const wells = new Map<string, Made[]>();

describe.each(['green', 'steady', 'careful'])('%s', (crew) => {
  test('makes twenty wells, each to an end of its own, and nothing is lost', () => {
    const own = SEEDS.map((seed) => made(crew, seed, seed % AGAIN_EVERY === 0));
    wells.set(crew, own);
    own.forEach(({ outcome, lost, reproduced }, i) => {
      expect([SEEDS[i], ['outcome.handedOver', 'outcome.givenUp'].includes(outcome)]).toEqual([SEEDS[i], true]);
      expect([SEEDS[i], lost <= 1e-9]).toEqual([SEEDS[i], true]);
      expect([SEEDS[i], reproduced]).not.toEqual([SEEDS[i], false]);
    });
    expect(own.filter(({ reproduced }) => reproduced === true)).toHaveLength(SEEDS.length / AGAIN_EVERY);
  }, 600_000);
});

test('careful hands every well over, and its middle yield, leak time and sand are each better than those of green', () => {
  const careful = wells.get('careful')!;
  expect(careful.filter(({ outcome }) => outcome !== 'outcome.handedOver')).toEqual([]);
  const [good, bad] = [middleOf(careful), middleOf(wells.get('green')!)];
  expect(good.yield_Lmin).toBeGreaterThan(bad.yield_Lmin);
  expect(good.leak_d).toBeGreaterThan(bad.leak_d);
  expect(good.sand_mgL).toBeLessThan(bad.sand_mgL);
});

test('scores tell the crews apart: careful 85 and more on nearly all, steady between, green low', () => {
  const scores = (crew: string) => wells.get(crew)!.map(({ score }) => score);
  expect(scores('careful').filter((score) => score >= 85).length).toBeGreaterThanOrEqual(18);
  const [careful, steady, green] = ['careful', 'steady', 'green'].map((crew) => middleOf(wells.get(crew)!).score);
  expect(steady).toBeGreaterThanOrEqual(60);
  expect(steady).toBeLessThanOrEqual(85);
  expect(steady).toBeLessThan(careful!);
  expect(green).toBeLessThanOrEqual(45);
  expect(wells.get('careful')!.filter(({ passed }) => passed).length).toBeGreaterThanOrEqual(18);
  expect(wells.get('green')!.filter(({ passed }) => passed)).toEqual([]);
});

test('over 200 seeds there are 4 m of medium sand and coarser below the lowest water and above 15 m, and fresh water in it', () => {
  for (let seed = 0; seed < 200; seed++) {
    const { ground } = scenarioOf(openWell, seed);
    const coarse = ground.layers.filter(({ kind }) => kind === 'mediumSand' || kind === 'coarseSand');
    const top_m = Math.max(ground.lowestWater_m, coarse[0]!.top_m);
    const bottom_m = Math.min(15, coarse.at(-1)!.bottom_m);
    expect([seed, bottom_m - top_m >= 4]).toEqual([seed, true]);
    const saltFrom_m = ground.salinity.find(({ salt_gL }) => salt_gL > 1)?.from_m ?? Infinity;
    expect(saltFrom_m).toBeGreaterThan(15);
    expect(ground.depth_m).toBeGreaterThan(openWell.opening.maxDepth_m);
  }
});
