// What becomes of the additives with time, wherever they are: powder soaks and rots, bentonite swells, chlorine breaks polymer and fades.

import { breakPolymer } from '../fluid/chlorine';
import { soakCells, soakStore, swellCells } from '../fluid/soak';
import { CHLORINE, SWELLING } from '../fluid/substances';
import { breakInHole } from '../hole/chlorinate';
import { readChamber } from '../pit/level';
import type { Run } from './run';
import { stemPlace } from './stem';

/** Has this substance ever been in the circuit? What never came in costs nothing. */
function ever({ state }: Run, s: number): boolean {
  return state.boundary.dissolvedIn_kg[s] + state.boundary.dissolvedStart_kg[s] > 0;
}

/** One second for everything that ages. What rotted, or was broken, has left the fluid as polymer. */
export function ageAll(run: Run): void {
  const { state, work } = run;
  const { hole, fill, pit, boundary } = state;
  let rotted_kg = soakCells(hole.dissolved_kg, hole.cells, hole.used, work.shares);
  rotted_kg += soakCells(fill.dissolved_kg, fill.cells, fill.cells, work.shares);
  rotted_kg += soakStore(pit.settling.dissolved_kg, work.shares) + soakStore(pit.suction.dissolved_kg, work.shares);
  if (ever(run, SWELLING)) {
    swellCells(hole.dissolved_kg, hole.cells, hole.used, work.shares);
    swellCells(fill.dissolved_kg, fill.cells, fill.cells, work.shares);
    swellCells(pit.settling.dissolved_kg, 1, 1, work.shares);
    swellCells(pit.suction.dissolved_kg, 1, 1, work.shares);
  }
  if (ever(run, CHLORINE)) rotted_kg += breakAll(run);
  boundary.polymerOut_kg += rotted_kg;
  boundary.polymerRotted_kg += rotted_kg;
}

/** Chlorine in hole, stem and pit; returns the polymer broken, kg. */
function breakAll(run: Run): number {
  const { hole, fill, pit, boundary } = run.state;
  const { breakPace, breakLoss, chamberReading } = run.work;
  breakLoss.polymer_kg = 0;
  breakLoss.chlorine_kg = 0;
  breakInHole(hole, stemPlace(run), breakPace, breakLoss);
  for (let i = 0; i < fill.cells; i++)
    breakPolymer(fill.dissolved_kg, fill.cells, i, fill.water_m3[i], 0, breakPace, breakLoss);
  for (const chamber of [pit.settling, pit.suction]) {
    readChamber(chamber, chamberReading);
    breakPolymer(chamber.dissolved_kg, 1, 0, chamber.water_m3, chamberReading.fines_frac, breakPace, breakLoss);
  }
  boundary.dissolvedOut_kg[CHLORINE] += breakLoss.chlorine_kg;
  return breakLoss.polymer_kg;
}
