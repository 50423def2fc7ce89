// Each single planted mistake costs its own category its points, and no other category more than 5.

import { expect, test } from 'vitest';
import { createRun } from '$sim';
import { createCrew, grade, lessonById, playOn, scenarioOf, type Crew } from '$lessons';
import { PLANTED, spoiltCrew } from './planted';

const lesson = lessonById('first-rods')!;
const SEED = 4;

function pointsOf(crew: Crew): Map<string, number> {
  const run = playOn(createRun(scenarioOf(lesson, SEED)), lesson, crew);
  return new Map(grade(run, lesson).categories.map(({ id, points }) => [id, points]));
}

const careful = pointsOf(createCrew('careful'));

test.each(PLANTED.map((planted) => [planted.name, planted] as const))('%s', (_name, planted) => {
  const spoilt = pointsOf(spoiltCrew(planted));
  for (const [id, points] of careful) {
    const lost = points - spoilt.get(id)!;
    if (id === planted.category) expect([id, lost >= planted.costs - 1e-9, lost]).toEqual([id, true, lost]);
    else expect([id, lost <= 5 + 1e-9, lost]).toEqual([id, true, lost]);
  }
});
