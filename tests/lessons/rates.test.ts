// How fast the careful crew gets on: metres an hour while advancing, by kind of ground, and a whole hole of mixed sand and silt. The bands are handbook practice, from memory.

import { expect, test } from 'vitest';
import type { SoilKind } from '$sim';
import { outcomeOf } from '$lessons';
import { advance, countOf, layer, practiceOn } from './ownGround';

/** A stem of two to six rods; stiff clay takes a day, so it is watched for five hours. */
const DEPTH_m = 9;
const WATCHED_s = 18000;

test.each<[SoilKind, number, number]>([
  ['siltySand', 10, 60],
  ['fineSand', 10, 60],
  ['mediumSand', 10, 60],
  ['coarseSand', 10, 60],
  ['silt', 5, 20],
  ['softClay', 2, 8],
  ['stiffClay', 0.5, 2],
])(
  '%s: %d to %d m/h while advancing, at the feed that the careful crew uses',
  (kind, least_mh, most_mh) => {
    const { drilled_m, fed_s } = advance(practiceOn([layer(kind, 40)], DEPTH_m, 2), 'careful', 0, WATCHED_s);
    expect(drilled_m).toBeGreaterThan(2);
    const rate_mh = (drilled_m / fed_s) * 3600;
    expect(rate_mh).toBeGreaterThanOrEqual(least_mh);
    expect(rate_mh).toBeLessThanOrEqual(most_mh);
  },
  60000,
);

test.each<[SoilKind]>([['fineGravel'], ['coarseGravel']])(
  '%s: 0 to 1 m/h',
  (kind) => {
    const practice = practiceOn([layer('siltySand', 4), layer(kind, 40)], DEPTH_m, 0.3);
    const { drilled_m, fed_s } = advance(practice, 'careful', 4.05, WATCHED_s);
    expect(fed_s).toBeGreaterThan(120);
    expect(drilled_m).toBeGreaterThan(0);
    expect((drilled_m / fed_s) * 3600).toBeLessThanOrEqual(1);
  },
  120000,
);

test.each([1, 2])(
  '20 m of mixed sand and silt in 3 to 8 job hours, nothing stuck, no prime lost, seed %d',
  (seed) => {
    const layers = [
      layer('topsoil', 0.3, 0.6),
      layer('silt', 1, 2),
      layer('fineSand', 1.5, 3),
      layer('silt', 1, 2),
      layer('mediumSand', 1.5, 3),
      layer('siltySand', 1.5, 3),
      layer('silt', 1, 2.5),
      layer('fineSand', 2, 4),
      layer('siltySand', 2, 3),
      layer('mediumSand', 30),
    ];
    const practice = practiceOn(layers, 20, seed === 1 ? 1.5 : 4);
    const { run } = advance(practice, 'careful', 0, 43200, seed);
    expect(outcomeOf(run, practice).key).toBe('outcome.depthReached');
    expect(run.state.tick / 3600).toBeGreaterThanOrEqual(3);
    expect(run.state.tick / 3600).toBeLessThanOrEqual(8);
    expect([countOf(run, 'stuck'), countOf(run, 'primeLost')]).toEqual([0, 0]);
  },
  60000,
);
