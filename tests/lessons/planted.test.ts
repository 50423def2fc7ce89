// Each single planted mistake costs its own category its points, and no other category more than 5.

import { expect, test } from 'vitest';
import { createRun } from '$sim';
import { createCrew, grade, lessonById, playOn, scenarioOf, type Crew } from '$lessons';
import { PLANTED, spoiltCrew } from './planted';

const lesson = lessonById('first-rods')!;
const SEEDS = [4, 9];

function pointsOf(crew: Crew, seed: number): Map<string, number> {
  const run = playOn(createRun(scenarioOf(lesson, seed)), lesson, crew);
  return new Map(grade(run, lesson).categories.map(({ id, points }) => [id, points]));
}

const careful = new Map(SEEDS.map((seed) => [seed, pointsOf(createCrew('careful'), seed)]));

test.each(PLANTED.map((planted) => [planted.name, planted] as const))('%s', (_name, planted) => {
  for (const seed of SEEDS) {
    const spoilt = pointsOf(spoiltCrew(planted), seed);
    for (const [id, points] of careful.get(seed)!) {
      const lost = points - spoilt.get(id)!;
      if (id === planted.category)
        expect([seed, id, lost >= planted.costs - 1e-9, lost]).toEqual([seed, id, true, lost]);
      else expect([seed, id, lost <= 5 + 1e-9, lost]).toEqual([seed, id, true, lost]);
    }
  }
});
