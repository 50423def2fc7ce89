// The crews by name. Each call makes a fresh one with an empty memory.

import { createCareful } from './careful';
import type { Crew } from './crew';
import { createGreen } from './green';

const MAKERS: Readonly<Record<string, () => Crew>> = { green: createGreen, careful: createCareful };

export const CREWS: readonly string[] = Object.keys(MAKERS);

export function isCrewName(name: string): boolean {
  return Object.hasOwn(MAKERS, name);
}

export function createCrew(name: string): Crew {
  const make = Object.hasOwn(MAKERS, name) ? MAKERS[name] : undefined;
  if (make === undefined) throw new RangeError(`There is no crew "${name}".`);
  return make();
}
