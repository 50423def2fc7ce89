// Topping up the hole: fluid dipped from the suction chamber and poured in at the mouth by the bucket.

import { fluidLevel_m } from '../hole/hole';
import { emptyParcel, parcelVolume_m3 } from '../hole/parcel';
import { CLASS_COUNT } from '../materials/sizes';
import { SUBSTANCE_COUNT } from '../fluid/substances';
import { dipFrom } from '../pit/exchange';
import type { Run } from './run';
import { countOut } from './boundary';
import { stemPlace } from './stem';
import { draw, QUIET } from './wellTick';
import { TICK_s } from './work';

/** Dips up to this much out of the suction chamber, m3, and holds it ready for this second's pouring. */
export function dip(run: Run, volume_m3: number): void {
  dipFrom(run.state.pit.suction, volume_m3, run.work.poured);
}

/** The same into the casing of a well, up to the brim: what comes in there is its own water from then on. */
export function dipIntoWell(run: Run, volume_m3: number): void {
  const { poured } = run.work;
  const { level_m, section_m2 } = run.state.well!;
  emptyParcel(poured);
  dipFrom(run.state.pit.suction, Math.min(volume_m3, Math.max(0, level_m) * section_m2), poured);
  countOut(run.state.boundary, poured);
  draw(run, -parcelVolume_m3(poured) / TICK_s, QUIET);
  emptyParcel(poured);
}

/** Cell at whose surface the bucket is emptied. */
function surfaceCell(run: Run): number {
  const { hole } = run.state;
  const at = Math.floor(fluidLevel_m(hole, stemPlace(run)) / hole.dz_m);
  return Math.min(hole.used - 1, Math.max(0, at));
}

/** Lets what is poured come in at the surface: the sweep takes it as water that enters there. Call it between loss and sweep. */
export function pourIntoHole(run: Run): void {
  const { poured, loss } = run.work;
  const volume_m3 = parcelVolume_m3(poured);
  if (volume_m3 > 0) loss.leave_m3[surfaceCell(run)] -= volume_m3;
}

/** Sets right, after the sweep, what the bucket held beside water, and that it came from the pit and not from the ground. */
export function settlePoured(run: Run): void {
  const { poured, hole: holeWork } = run.work;
  const volume_m3 = parcelVolume_m3(poured);
  if (volume_m3 <= 0) return;
  const { hole } = run.state;
  const i = surfaceCell(run);
  const { came, left } = holeWork;
  came.water_m3 -= volume_m3;
  // Less came in than was poured where the ground drank in the same cell: that much was lost.
  left.water_m3 -= Math.min(0, came.water_m3);
  came.water_m3 = Math.max(0, came.water_m3);
  for (let k = 0; k < CLASS_COUNT; k++) {
    const grains_m3 = poured.solids_m3[k];
    hole.solids_m3[k * hole.cells + i] += grains_m3;
    // Grains that went round through the pit have lost their origin: they count from where they enter.
    hole.moment_m4[k * hole.cells + i] += grains_m3 * (i + 0.5) * hole.dz_m;
    hole.water_m3 -= grains_m3;
  }
  for (let s = 0; s < SUBSTANCE_COUNT; s++) hole.dissolved_kg[s * hole.cells + i] += poured.dissolved_kg[s];
  emptyParcel(poured);
}
