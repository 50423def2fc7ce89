// The careful crew that takes a run over: what the crew before did it reads off the log of accepted acts and the senses, never off what is hidden.

import { sensesOf, type ActionName, type Run } from '$sim';
import type { Crew } from '../crews/crew';
import type { CarefulMemory } from '../crews/carefulMemory';
import { createCareful } from '../crews/careful';
import { HAZARD_IDS } from '../hazards';
import { jobFor } from '../job';
import { acceptedActs } from '../rubric/episodes';
import type { Lesson } from '../schema';

export function heirOf(run: Run, lesson: Lesson): Crew {
  const crew = createCareful(jobFor(run, lesson));
  adopt(crew.memory, run);
  return crew;
}

function adopt(memory: CarefulMemory, run: Run): void {
  const senses = sensesOf(run);
  const acts = (action: ActionName) => acceptedActs({ log: run.log, events: run.record.events }, action);
  const amount = (action: ActionName, name: string): number =>
    acts(action).reduce((sum, [, , payload]) => sum + Number(payload[name] ?? 0), 0);
  if (run.state.cautions.length >= HAZARD_IDS.length) memory.cautionsRead = HAZARD_IDS.length;
  memory.powderIn_g = amount('addAdditive', 'mass_g');
  memory.water.poured_L = amount('addWater', 'water_L');
  const last = senses.tray.at(-1);
  if (last) {
    memory.sampled_m = last.label_m;
    memory.sampledRod = Math.ceil(last.label_m / 1.5);
  }
  memory.feltRod = senses.stem.rods;
  const { well } = memory;
  if (!well || !senses.well) return;
  well.spotChosen = acts('chooseSite').length > 0;
  well.booked = run.state.ownLog.length || -1;
  well.pulled = run.record.events.some(({ name }) => name === 'stemPulled') && senses.stem.rods === 0;
  const { casing } = senses.well;
  if (casing.look === 'set' || casing.look === 'landed' || casing.look === 'hung') {
    if (senses.well.seals.length > 0 && acts('placeSeal').some(([, , { seal }]) => seal !== 'cuttings'))
      well.filling = 'done';
  }
  well.broken = acts('breakPolymer').length > 0;
  const disinfected = acts('disinfect').at(-1);
  well.disinfected = disinfected !== undefined;
  for (const [tick] of acts('develop')) {
    if (disinfected && tick > disinfected[0]) well.rinses++;
    else well.rounds++;
  }
  well.dipped = acts('dipWell').length > 0;
  well.tests = acts('yieldTest').length;
  well.headed = senses.well.headWorks !== null;
  well.recorded = acts('record').length;
}
