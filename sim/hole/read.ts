// Reading the hole: what its fluid weighs, how thick it is, what it carries.
import { makeupInto } from '../fluid/makeup';
import { rheologyOf } from '../fluid/rheology';
import { BENTONITE, SALT, SOAKED, SWELLING } from '../fluid/substances';
import { CLAY_CLASS } from '../materials/sizes';
import { countGrains, findSurface, readRoom } from './column';
import { bedTop_m, type HoleState, type StemPlace } from './hole';
import { suspensionDensity_kgm3 } from './load';
import type { HoleWork } from './work';

/** The load on the bit is judged over this length above it, m. */
const LOADED_m = 0.5;

const place: StemPlace = { bit_m: 0, rodOutside_m: 0 };

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
  const { column, volume_m3, grains_m3, fines_m3 } = work;
  column.bottom_m = bedTop_m(hole, place);
  column.cells = hole.used;
  readRoom(hole, work, place, 0);
  countGrains(hole, work, 0);
  const firstRoom_m3 = findSurface(work, hole.shortfall_m3, false);
  const { cells, dissolved_kg } = hole;
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
  let suspended_m3 = 0;
  let coarse_m3 = 0;
  for (let i = 0; i < hole.used; i++) {
    suspended_m3 += grains_m3[i];
    coarse_m3 += grains_m3[i] - fines_m3[i];
    const first = i === column.from;
    const top_m = first ? column.from_m : i * hole.dz_m;
    // Above the surface there is no fluid. Cells below the bit are out of the stream; a cell that the bit stands in counts whole.
    if (i < column.from || (!first && top_m >= bit_m)) continue;
    const bottom_m = i === hole.used - 1 ? column.bottom_m : (i + 1) * hole.dz_m;
    const volume = first ? firstRoom_m3 : volume_m3[i];
    room += volume;
    grains += grains_m3[i];
    fines += fines_m3[i];
    clay += hole.solids_m3[CLAY_CLASS * cells + i];
    soaked_kg += dissolved_kg[SOAKED * cells + i];
    bentonite_kg += dissolved_kg[BENTONITE * cells + i];
    swelling_kg += dissolved_kg[SWELLING * cells + i];
    salt_kg += dissolved_kg[SALT * cells + i];
    bore += 2 * hole.radius_m[i] * (bottom_m - top_m);
    length_m += bottom_m - top_m;
    if (bottom_m > bit_m - LOADED_m) {
      bottomRoom += volume;
      bottomGrains += grains_m3[i];
    }
  }
  work.suspended_m3 = suspended_m3;
  work.coarse_m3 = coarse_m3;
  work.bottomLoad_frac = bottomRoom > 0 ? bottomGrains / bottomRoom : 0;
  work.diameter_m = length_m > 0 ? bore / length_m : 2 * hole.radius_m[0];
  const fines_frac = room > 0 ? Math.min(1, fines / room) : 0;
  const clay_frac = room > 0 ? Math.min(1, clay / room) : 0;
  makeupInto(work, soaked_kg, bentonite_kg, swelling_kg, salt_kg, room - grains, fines_frac, clay_frac);
  const load_frac = room > 0 ? Math.min(1, grains / room) : 0;
  work.density_kgm3 = suspensionDensity_kgm3(load_frac, work.bentonite_gL, work.salt_gL);
  rheologyOf(work.rheology, work, temperature_C);
  work.K_Pasn = work.rheology.K_Pasn;
  work.n_ratio = work.rheology.n_ratio;
}
