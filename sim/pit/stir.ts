// Stirring the pit with a paddle: both chambers mix, and lumps of powder break up slowly.
import { CLASS_COUNT } from '../materials/sizes';
import { freeVolume_m3 } from './level';
import type { Chamber, PitState } from './pit';

/** Share of the smaller chamber's free fluid that one second of stirring swaps, and share of the lumps it frees. ASSUMED: mixed within a minute, lumps mostly gone after ten. */
const SWAPPED_frac = 0.05;
const LUMPS_FREED_frac = 0.003;

function swapDissolved(a: Chamber, b: Chamber, shareA: number, shareB: number): void {
  const soaked_kg = b.soaked_kg * shareB - a.soaked_kg * shareA;
  const soaking_kg = b.soaking_kg * shareB - a.soaking_kg * shareA;
  a.soaked_kg += soaked_kg;
  b.soaked_kg -= soaked_kg;
  a.soaking_kg += soaking_kg;
  b.soaking_kg -= soaking_kg;
}

/** One second of stirring. Equal volumes change places with all they carry; deposit stays. */
export function stirPit(pit: PitState): void {
  const { settling, suction } = pit;
  const freeA_m3 = freeVolume_m3(settling);
  const freeB_m3 = freeVolume_m3(suction);
  const swapped_m3 = SWAPPED_frac * Math.min(freeA_m3, freeB_m3);
  if (swapped_m3 <= 0) return;
  const shareA = swapped_m3 / freeA_m3;
  const shareB = swapped_m3 / freeB_m3;
  let grains_m3 = 0;
  for (let k = 0; k < CLASS_COUNT; k++) {
    const moved_m3 =
      (suction.solids_m3[k] - suction.deposit_m3[k]) * shareB -
      (settling.solids_m3[k] - settling.deposit_m3[k]) * shareA;
    settling.solids_m3[k] += moved_m3;
    suction.solids_m3[k] -= moved_m3;
    grains_m3 += moved_m3;
  }
  // Volumes that change places are equal, so the water makes up for the grains.
  settling.water_m3 -= grains_m3;
  suction.water_m3 += grains_m3;
  swapDissolved(settling, suction, shareA, shareB);
  for (const chamber of [settling, suction]) {
    const freed_kg = chamber.clumps_kg * LUMPS_FREED_frac;
    chamber.clumps_kg -= freed_kg;
    chamber.soaking_kg += freed_kg;
  }
}
