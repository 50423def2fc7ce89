// The column of fluid as the wall meets it: room, weight and load of each cell from the mouth to the top of the bed.
import { BENTONITE } from '../../fluid/substances';
import { GRAVITY_MS2 } from '../../numeric/units';
import { CLASS_COUNT, FINE_CLASS_COUNT } from '../../materials/sizes';
import { BED_POROSITY, cellVolume_m3, type HoleState, type StemPlace } from '../hole';
import { suspensionDensity_kgm3 } from '../load';
import type { LossWork } from './work';

/** A rest of a cell thinner than this, m, is none. */
const NO_HEIGHT_m = 1e-9;

/** Sums the grains of each cell in use; those of the last count for what the column has below it too. */
function readGrains(hole: HoleState, work: LossWork): void {
  const { load_m3, fines_m3 } = work;
  const { used, cells, solids_m3 } = hole;
  for (let i = 0; i < used; i++) load_m3[i] = 0;
  for (let k = 0; k < CLASS_COUNT; k++) {
    const base = k * cells;
    for (let i = 0; i < used; i++) load_m3[i] += solids_m3[base + i];
    if (k === FINE_CLASS_COUNT - 1) for (let i = 0; i < used; i++) fines_m3[i] = load_m3[i];
  }
  work.grains_m3 = 0;
  for (let i = 0; i < used; i++) work.grains_m3 += load_m3[i];
  work.bedGrains_m3 = 0;
  for (let k = 0; k < CLASS_COUNT; k++) work.bedGrains_m3 += hole.bed_m3[k];
  work.bed_m3 = work.bedGrains_m3 / (1 - BED_POROSITY);
}

/** Reads the column down to bottom_m, the top of the bed. Call fitCells first: it gives that depth and the cells in use. */
export function readColumn(hole: HoleState, stem: StemPlace, bottom_m: number, work: LossWork): void {
  readGrains(hole, work);
  const { dz_m, used } = hole;
  const count = Math.max(1, Math.min(hole.cells, Math.ceil(bottom_m / dz_m - NO_HEIGHT_m)));
  work.cells = count;
  work.bottom_m = bottom_m;
  let room_m3 = 0;
  let pressure_Pa = 0;
  for (let i = 0; i < count; i++) {
    const end_m = i === count - 1 ? bottom_m : (i + 1) * dz_m;
    const height_m = end_m - i * dz_m;
    // A cell that the ground has closed round the stem has no room; less than none would be nonsense.
    const room = Math.max(0, cellVolume_m3(hole, i, end_m, stem));
    // The last cell in use may reach into the next cell of the wall, and that one has its fluid.
    let density_kgm3 = i > 0 && i >= used ? work.density_kgm3[i - 1] : 0;
    if (density_kgm3 === 0) {
      const whole_m3 = i === used - 1 && count > used ? room * (1 + (bottom_m - end_m) / height_m) : room;
      const load = whole_m3 > 0 ? Math.min(1, work.load_m3[i] / whole_m3) : 0;
      const water_m3 = whole_m3 - work.load_m3[i];
      const bentonite_kg = hole.dissolved_kg[BENTONITE * hole.cells + i];
      density_kgm3 = suspensionDensity_kgm3(load, bentonite_kg > 0 && water_m3 > 0 ? bentonite_kg / water_m3 : 0);
    }
    const weight_Pam = density_kgm3 * GRAVITY_MS2;
    work.height_m[i] = height_m;
    work.cellRoom_m3[i] = room;
    work.density_kgm3[i] = density_kgm3;
    work.middle_Pa[i] = pressure_Pa + 0.5 * weight_Pam * height_m;
    pressure_Pa += weight_Pam * height_m;
    work.bottom_Pa[i] = pressure_Pa;
    room_m3 += room;
  }
  work.room_m3 = room_m3;
}
