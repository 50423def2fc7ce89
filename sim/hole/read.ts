// Reading the hole: what its fluid weighs, how thick it is, what it carries.
import { makeupInto } from '../fluid/makeup';
import { rheologyOf } from '../fluid/rheology';
import { BENTONITE, SALT, SOAKED, SWELLING } from '../fluid/substances';
import { CLASS_COUNT, CLAY_CLASS, FINE_CLASS_COUNT } from '../materials/sizes';
import { bedTop_m, cellVolume_m3, type HoleState, type StemPlace } from './hole';
import { suspensionDensity_kgm3 } from './load';
import type { HoleWork } from './work';

/** The load on the bit is judged over this length above it, m. */
const LOADED_m = 0.5;

const place: StemPlace = { bit_m: 0, rodOutside_m: 0 };

/** Bottom of cell i of those in use, m. */
export const cellBottom_m = (hole: HoleState, i: number, bedTop: number): number =>
  i === hole.used - 1 ? bedTop : (i + 1) * hole.dz_m;

/** Reads the hole into work: call before solveFlow. */
export function readHole(
  hole: HoleState,
  bit_m: number,
  rodOutside_m: number,
  temperature_C: number,
  work: HoleWork,
): void {
  place.bit_m = bit_m;
  place.rodOutside_m = rodOutside_m;
  const bedTop = bedTop_m(hole, place);
  let room = 0;
  let grains = 0;
  let fines = 0;
  let clay = 0;
  let soaked_kg = 0;
  let bentonite_kg = 0;
  let swelling_kg = 0;
  let salt_kg = 0;
  let bottomRoom = 0;
  let bottomGrains = 0;
  let bore = 0;
  let length_m = 0;
  work.suspended_m3 = 0;
  work.coarse_m3 = 0;
  for (let i = 0; i < hole.used; i++) {
    const top_m = i * hole.dz_m;
    const bottom_m = cellBottom_m(hole, i, bedTop);
    let fine = 0;
    for (let k = 0; k < FINE_CLASS_COUNT; k++) fine += hole.solids_m3[k * hole.cells + i];
    let coarse = 0;
    for (let k = FINE_CLASS_COUNT; k < CLASS_COUNT; k++) coarse += hole.solids_m3[k * hole.cells + i];
    work.suspended_m3 += fine + coarse;
    work.coarse_m3 += coarse;
    // Cells below the bit are out of the stream; a cell that the bit stands in counts whole.
    if (i > 0 && top_m >= bit_m) continue;
    const volume = cellVolume_m3(hole, i, bottom_m, place);
    room += volume;
    grains += fine + coarse;
    fines += fine;
    clay += hole.solids_m3[CLAY_CLASS * hole.cells + i];
    soaked_kg += hole.dissolved_kg[SOAKED * hole.cells + i];
    bentonite_kg += hole.dissolved_kg[BENTONITE * hole.cells + i];
    swelling_kg += hole.dissolved_kg[SWELLING * hole.cells + i];
    salt_kg += hole.dissolved_kg[SALT * hole.cells + i];
    bore += 2 * hole.radius_m[i] * (bottom_m - top_m);
    length_m += bottom_m - top_m;
    if (bottom_m > bit_m - LOADED_m) {
      bottomRoom += volume;
      bottomGrains += fine + coarse;
    }
  }
  work.bottomLoad_frac = bottomRoom > 0 ? bottomGrains / bottomRoom : 0;
  work.diameter_m = length_m > 0 ? bore / length_m : 2 * hole.radius_m[0];
  const fines_frac = room > 0 ? fines / room : 0;
  makeupInto(
    work,
    soaked_kg,
    bentonite_kg,
    swelling_kg,
    salt_kg,
    room - grains,
    fines_frac,
    room > 0 ? clay / room : 0,
  );
  work.density_kgm3 = suspensionDensity_kgm3(room > 0 ? grains / room : 0, work.bentonite_gL, work.salt_gL);
  rheologyOf(work.rheology, work, temperature_C);
  work.K_Pasn = work.rheology.K_Pasn;
  work.n_ratio = work.rheology.n_ratio;
}
