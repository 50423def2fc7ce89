// The column of fluid as the wall meets it: room, weight and load of each cell from the mouth to the top of the bed.
import { BENTONITE, SOAKED } from '../../fluid/substances';
import { CLASS_COUNT } from '../../materials/sizes';
import { GRAVITY_MS2 } from '../../numeric/units';
import { BED_POROSITY, steelArea_m2, type HoleState } from '../hole';
import { suspensionDensity_kgm3 } from '../load';
import type { LossInput, LossWork } from './work';

/** A rest of a cell thinner than this, m, is none. */
const NO_HEIGHT_m = 1e-9;

/** Sums the grains of each cell in use, and those of the bed. */
function readGrains(hole: HoleState, work: LossWork): void {
  const { load_m3, fines_m3 } = work;
  const { used, cells, solids_m3: v } = hole;
  let whole_m3 = 0;
  let wholeFines_m3 = 0;
  for (let i = 0; i < used; i++) {
    // Written out: a loop over the classes costs three times as much, and this is done for every cell in every second.
    const fines = v[i] + v[i + cells];
    const sand = v[i + 2 * cells] + v[i + 3 * cells] + v[i + 4 * cells];
    const load = fines + sand + v[i + 5 * cells] + v[i + 6 * cells] + v[i + 7 * cells];
    fines_m3[i] = fines;
    load_m3[i] = load;
    whole_m3 += load;
    wholeFines_m3 += fines;
  }
  work.grains_m3 = whole_m3;
  work.wholeFines_m3 = wholeFines_m3;
  let bed_m3 = 0;
  for (let k = 0; k < CLASS_COUNT; k++) bed_m3 += hole.bed_m3[k];
  work.bedGrains_m3 = bed_m3;
  work.bed_m3 = bed_m3 / (1 - BED_POROSITY);
}

/** Reads the column down to bottom_m, the top of the bed. Call fitCells first: it gives that depth and the cells in use. */
export function readColumn(hole: HoleState, bottom_m: number, input: LossInput, work: LossWork): void {
  readGrains(hole, work);
  const { dz_m, used, radius_m, dissolved_kg } = hole;
  const { height_m, cellRoom_m3, density_kgm3, middle_Pa, bottom_Pa, added_Pa, surge_Pa, load_m3 } = work;
  const { bit_m, friction_Pam } = input;
  const steel_m2 = steelArea_m2(input);
  const soaked = SOAKED * hole.cells;
  const bentonite = BENTONITE * hole.cells;
  const count = Math.max(1, Math.min(hole.cells, Math.ceil(bottom_m / dz_m - NO_HEIGHT_m)));
  work.cells = count;
  work.bottom_m = bottom_m;
  let whole_m3 = 0;
  let pressure_Pa = 0;
  let density = 0;
  let soaked_kg = 0;
  let wholeBentonite_kg = 0;
  for (let i = 0; i < count; i++) {
    const top_m = i * dz_m;
    const height = i === count - 1 ? bottom_m - top_m : dz_m;
    const steel_m = bit_m >= top_m + height ? height : bit_m > top_m ? bit_m - top_m : 0;
    // A cell that the ground has closed round the stem has no room; less than none would be nonsense.
    const room_m3 = Math.max(0, Math.PI * radius_m[i] * radius_m[i] * height - steel_m2 * steel_m);
    // The last cell in use may reach into the next cell of the wall, and that one has its fluid.
    if (i < used) {
      const fluid_m3 = i === used - 1 ? (room_m3 * (bottom_m - top_m)) / height : room_m3;
      const load = fluid_m3 > 0 ? Math.min(1, load_m3[i] / fluid_m3) : 0;
      const bentonite_kg = dissolved_kg[bentonite + i];
      const water_m3 = fluid_m3 - load_m3[i];
      soaked_kg += dissolved_kg[soaked + i];
      wholeBentonite_kg += bentonite_kg;
      density = suspensionDensity_kgm3(load, bentonite_kg > 0 && water_m3 > 0 ? bentonite_kg / water_m3 : 0);
    }
    const half_Pa = 0.5 * density * GRAVITY_MS2 * height;
    height_m[i] = height;
    cellRoom_m3[i] = room_m3;
    density_kgm3[i] = density;
    middle_Pa[i] = pressure_Pa + half_Pa;
    pressure_Pa += 2 * half_Pa;
    bottom_Pa[i] = pressure_Pa;
    added_Pa[i] = friction_Pam * Math.min(bit_m, top_m + 0.5 * height) + surge_Pa[i];
    whole_m3 += room_m3;
  }
  work.room_m3 = whole_m3;
  work.soaked_kg = soaked_kg;
  work.bentonite_kg = wholeBentonite_kg;
}
