// Chlorine at work in the hole, cell by cell.
import { breakPolymer, type BreakLoss, type BreakPace } from '../fluid/chlorine';
import { CHLORINE } from '../fluid/substances';
import { CLASS_COUNT, FINE_CLASS_COUNT } from '../materials/sizes';
import { bedTop_m, cellVolume_m3, type HoleState, type StemPlace } from './hole';
import { cellBottom_m } from './column';

/** One tick of chlorine against polymer in every cell that holds chlorine; adds what went to out. */
export function breakInHole(hole: HoleState, stem: StemPlace, pace: BreakPace, out: BreakLoss): void {
  const bedTop = bedTop_m(hole, stem);
  for (let i = 0; i < hole.used; i++) {
    if (!(hole.dissolved_kg[CHLORINE * hole.cells + i] > 0)) continue;
    const room_m3 = cellVolume_m3(hole, i, cellBottom_m(hole, i, bedTop), stem);
    let grains = 0;
    let fines = 0;
    for (let k = 0; k < CLASS_COUNT; k++) {
      grains += hole.solids_m3[k * hole.cells + i];
      if (k === FINE_CLASS_COUNT - 1) fines = grains;
    }
    const fines_frac = room_m3 > 0 ? fines / room_m3 : 0;
    breakPolymer(hole.dissolved_kg, hole.cells, i, room_m3 - grains, fines_frac, pace, out);
  }
}
