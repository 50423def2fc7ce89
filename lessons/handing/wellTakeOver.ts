// What a crew takes over of a well: what was chosen, planned, filled in, washed, tested and written down.

import type { Senses } from '$sim';
import { ownLayers } from '../crews/ownLayers';
import type { Told } from './told';
import type { WellMemory } from '../crews/wellMemory';
import { STYLES } from '../crews/wellStyle';

export function adoptWell(memory: WellMemory, senses: Senses, told: Told): void {
  const { well } = senses;
  if (!well) return;
  memory.spotChosen = told.acts('chooseSite').length > 0 || told.acts('setOut').length > 0 || well.job !== 'siteSetup';
  memory.booked = layersBooked(senses, told) || -1;
  memory.pulled = senses.stem.rods === 0;
  memory.runs = told.acts('runCasing').length;
  memory.works = told.acts('workCasing').length;
  adoptFilling(memory, senses, told);
  memory.broken = told.acts('breakPolymer').length > 0;
  memory.dipped = told.acts('dipWell').length > 0;
  memory.tests = told.acts('yieldTest').length;
  const disinfected_s = told.last_s('disinfect');
  memory.disinfected = disinfected_s >= 0;
  for (const [tick] of told.acts('develop')) {
    if (memory.disinfected && tick > disinfected_s) memory.rinses++;
    else memory.rounds++;
  }
  memory.headed = well.headWorks !== null;
  const written = told.acts('record').map(([, , { field }]) => field);
  const { record } = STYLES[memory.style];
  while (memory.recorded < record.length && written.includes(record[memory.recorded])) memory.recorded++;
}

/** How many layers of the book stand there already, from the top down. */
export function layersBooked(senses: Senses, told: Told): number {
  const written = told.acts('logLayer').map(([, , layer]) => layer);
  const layers = ownLayers(senses);
  const missing = layers.findIndex(
    ({ from_m, to_m, kind }) =>
      !written.some((entry) => entry.from_m === from_m && entry.to_m === to_m && entry.kind === kind),
  );
  return missing < 0 ? layers.length : missing;
}

/** What was filled in last, how often, and whether it was sounded since. */
function adoptFilling(memory: WellMemory, senses: Senses, told: Told): void {
  const sealed = told.acts('placeSeal').filter(([, , { seal }]) => seal !== 'cuttings');
  const backfilled = [
    ...told.acts('backfill'),
    ...told.acts('placeSeal').filter(([, , { seal }]) => seal === 'cuttings'),
  ];
  const packed = told.acts('pourPack');
  const [filling, pours] =
    sealed.length > 0
      ? (['seal', sealed] as const)
      : backfilled.length > 0
        ? (['backfill', backfilled] as const)
        : (['pack', packed] as const);
  memory.filling = filling;
  memory.pours = pours.length;
  let last_s = -1;
  for (const [tick] of [...sealed, ...backfilled, ...packed]) last_s = Math.max(last_s, tick);
  memory.sounded = senses.well!.sounded !== null && told.last_s('sound') > last_s;
}
