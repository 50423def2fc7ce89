// A crew that goes on with what somebody else began, from any moment. What it would remember it takes from the log of accepted acts, the rod marks
// and the senses; the rest it finds out as it goes.

import { sensesOf, type Run, type Senses } from '$sim';
import { crewOfCare } from '../crews/careful';
import { adoptCare } from './careTakeOver';
import type { CareName } from '../crews/careStyle';
import type { Crew, Job } from '../crews/crew';
import { createGreen, type GreenMemory } from '../crews/green';
import { createCrew } from '../crews/index';
import { createSteady, type SteadyMemory } from '../crews/steady';
import { standing } from './standing';
import { toldBy, type Told } from './told';
import { adoptWell, layersBooked } from './wellTakeOver';

/** The steady crew lets its powder soak for so long, s. */
const SOAK_s = 1800;

export function takeOver(name: string, job: Job, run: Run): Crew {
  const senses = sensesOf(run);
  const told = toldBy(run, senses);
  if (name === 'careful' || name === 'other') {
    const crew = crewOfCare(name satisfies CareName, job);
    adoptCare(crew.memory, run, senses, told);
    return crew;
  }
  if (name === 'steady') {
    const crew = createSteady(job);
    adoptSteady(crew.memory, senses, told);
    return crew;
  }
  if (name === 'green') {
    const crew = createGreen(job);
    adoptGreen(crew.memory, senses, told);
    return crew;
  }
  return createCrew(name, job);
}

function adoptSteady(memory: SteadyMemory, senses: Senses, told: Told): void {
  const powder_s = told.acts('addAdditive')[0]?.[0] ?? -1;
  memory.powderIn = powder_s >= 0;
  memory.soaked_s = powder_s >= 0 ? powder_s + SOAK_s : 0;
  const lastPowder_s = told.last_s('addAdditive');
  for (const [tick, , { water_L }] of told.acts('addWater'))
    if (tick > lastPowder_s) memory.poured_L += Number(water_L);
  const sampled_s = told.last_s('catchSample');
  memory.sampledRod = sampled_s < 0 ? 0 : told.rodsAt(sampled_s);
  const { ends, feedOff_s, cleared, still } = standing(senses, told, senses.stem.bottom_m >= memory.goal_m);
  if (ends) {
    memory.stop_s = feedOff_s;
    memory.stopping = still && cleared;
  }
  memory.progress.deepest_m = senses.stem.bottom_m;
  memory.progress.deeper_s = senses.time_s;
  if (memory.log) memory.booked = layersBooked(senses, told);
  if (memory.well) adoptWell(memory.well, senses, told);
}

function adoptGreen(memory: GreenMemory, senses: Senses, told: Told): void {
  const sampled_s = told.last_s('catchSample');
  memory.sampled = sampled_s < 0 ? 0 : told.rodsAt(sampled_s);
  memory.stopping = standing(senses, told, senses.stem.bottom_m >= memory.goal_m).ends;
  memory.progress.deepest_m = senses.stem.bottom_m;
  memory.progress.deeper_s = senses.time_s;
  if (memory.well) adoptWell(memory.well, senses, told);
}
