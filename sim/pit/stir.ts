// Stirring the pit with a paddle: fines rise from the floor, and the two chambers mix over the notch.
import { SUBSTANCE_COUNT } from '../fluid/substances';
import { CLASS_COUNT, FINE_CLASS_COUNT } from '../materials/sizes';
import { levelBelowRim_m } from './level';
import type { Chamber, PitState } from './pit';

/** Share of the settled clay and silt that a second of stirring lifts, and share of the smaller chamber's fluid that changes places. ASSUMED. */
const LIFTED_1s = 0.01;
const SWAPPED_1s = 0.005;

function liftFines(chamber: Chamber): void {
  for (let k = 0; k < FINE_CLASS_COUNT; k++) {
    const lifted = chamber.deposit_m3[k] * LIFTED_1s;
    chamber.deposit_m3[k] -= lifted;
    chamber.solids_m3[k] += lifted;
  }
}

/** Change of two amounts whose carriers swap a volume: towards one concentration, nothing lost. */
const swapped = (amountA: number, waterA_m3: number, amountB: number, waterB_m3: number, volume_m3: number): number =>
  volume_m3 * (amountB / waterB_m3 - amountA / waterA_m3);

/** One second of stirring, in place. The water of each chamber stays as it is. */
export function stirPit(pit: PitState): void {
  const { settling, suction } = pit;
  liftFines(settling);
  liftFines(suction);
  const joined = levelBelowRim_m(settling) < pit.notch_m && levelBelowRim_m(suction) < pit.notch_m;
  if (!joined || settling.water_m3 <= 0 || suction.water_m3 <= 0) return;
  const volume_m3 = SWAPPED_1s * Math.min(settling.water_m3, suction.water_m3);
  for (let s = 0; s < SUBSTANCE_COUNT; s++) {
    const [here_kg, there_kg] = [settling.dissolved_kg[s], suction.dissolved_kg[s]];
    const moved_kg = swapped(here_kg, settling.water_m3, there_kg, suction.water_m3, volume_m3);
    settling.dissolved_kg[s] += moved_kg;
    suction.dissolved_kg[s] -= moved_kg;
  }
  for (let k = 0; k < CLASS_COUNT; k++) {
    const grains = swapped(settling.solids_m3[k], settling.water_m3, suction.solids_m3[k], suction.water_m3, volume_m3);
    settling.solids_m3[k] += grains;
    suction.solids_m3[k] -= grains;
  }
}
