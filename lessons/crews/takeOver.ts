// A crew that takes a job over: what was done before it reads off the log of accepted acts and the senses, never off what is hidden.

import { sensesOf, type ActionName, type Run } from '$sim';
import { acceptedActs } from '../rubric/episodes';
import type { CarefulMemory } from './carefulMemory';
import type { Crew } from './crew';
import type { SteadyMemory } from './steady';
import type { WellMemory } from './wellMemory';

/** Length of a rod as a crew reckons, m. */
const ROD_m = 1.5;

const actsOf = (run: Run, action: ActionName) => acceptedActs({ log: run.log, events: run.record.events }, action);

const amountOf = (run: Run, action: ActionName, name: string): number =>
  actsOf(run, action).reduce((sum, [, , payload]) => sum + Number(payload[name] ?? 0), 0);

/** What a crew of care knows of the hole that it goes on with. */
export function adoptHole(memory: CarefulMemory, run: Run): void {
  const senses = sensesOf(run);
  memory.powderIn_g = amountOf(run, 'addAdditive', 'mass_g');
  memory.water.poured_L = amountOf(run, 'addWater', 'water_L');
  const last = senses.tray.at(-1);
  if (last) {
    memory.sampled_m = last.label_m;
    memory.sampledRod = Math.ceil(last.label_m / ROD_m);
  }
  memory.feltRod = senses.stem.rods;
}

/** What any crew knows of the well that it goes on with. */
export function adoptWell(well: WellMemory, run: Run): void {
  const senses = sensesOf(run);
  if (!senses.well) return;
  const { casing, seals, headWorks } = senses.well;
  well.spotChosen = actsOf(run, 'chooseSite').length > 0 || senses.well.job !== 'siteSetup';
  well.booked = run.state.ownLog.length || -1;
  well.pulled = run.record.events.some(({ name }) => name === 'stemPulled') && senses.stem.rods === 0;
  const stands = casing.look === 'set' || casing.look === 'landed' || casing.look === 'hung';
  const sealed = actsOf(run, 'placeSeal').some(([, , { seal }]) => seal !== 'cuttings');
  if (stands && seals.length > 0 && sealed) well.filling = 'done';
  well.broken = actsOf(run, 'breakPolymer').length > 0;
  const disinfected = actsOf(run, 'disinfect').at(-1);
  well.disinfected = disinfected !== undefined;
  for (const [tick] of actsOf(run, 'develop')) {
    if (disinfected && tick > disinfected[0]) well.rinses++;
    else well.rounds++;
  }
  well.dipped = actsOf(run, 'dipWell').length > 0;
  well.tests = actsOf(run, 'yieldTest').length;
  well.headed = headWorks !== null;
  well.recorded = actsOf(run, 'record').length;
}

/** The crew goes on where another has worked. Cautions it reads itself. */
export function takeOver(crew: Crew, run: Run): Crew {
  const memory = crew.memory as Partial<CarefulMemory> & Partial<Pick<SteadyMemory, 'powderIn'>>;
  if (memory.powderIn_g !== undefined) adoptHole(memory as CarefulMemory, run);
  if (memory.powderIn !== undefined) memory.powderIn = amountOf(run, 'addAdditive', 'mass_g') > 0;
  if (memory.well) adoptWell(memory.well, run);
  return crew;
}
