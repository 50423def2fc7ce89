// The crews by name. Each call makes a fresh one with an empty memory.

import { createCareful } from './careful';
import type { Crew, Job } from './crew';
import { createGreen } from './green';
import { createOther } from './other';
import { createRandom } from './random';
import { createSteady } from './steady';

const MAKERS: Readonly<Record<string, (job?: Job) => Crew>> = {
  green: createGreen,
  steady: createSteady,
  careful: createCareful,
  other: createOther,
  random: createRandom,
};

export const CREWS: readonly string[] = Object.keys(MAKERS);

/** Those that mean to do the job. */
export const WORKING_CREWS: readonly string[] = CREWS.filter((name) => name !== 'random');

export function isCrewName(name: string): boolean {
  return Object.hasOwn(MAKERS, name);
}

/** The job is what the crew is told; without one it is the three rods of the first lesson. */
export function createCrew(name: string, job?: Job): Crew {
  const make = Object.hasOwn(MAKERS, name) ? MAKERS[name] : undefined;
  if (make === undefined) throw new RangeError(`There is no crew "${name}".`);
  return make(job);
}
