// The other crew: as competent as careful, another way: bentonite, the funnel, weight by ear, another rhythm of samples; cloth, a bentonite seal that sets before the well is washed. It guards the rubric against fitting one style.

import { crewOfCare } from './careful';
import type { CarefulMemory } from './carefulMemory';
import { THREE_RODS, type Crew, type Job } from './crew';

export const createOther = (job: Job = THREE_RODS): Crew & { readonly memory: CarefulMemory } =>
  crewOfCare('other', job);
