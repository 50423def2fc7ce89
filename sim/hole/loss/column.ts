// The column of fluid as the wall meets it: room, weight and load of each cell from the mouth to the top of the bed.
import { BENTONITE, SALT, SOAKED, SWELLING } from '../../fluid/substances';
import { CLASS_COUNT } from '../../materials/sizes';
import { GRAVITY_MS2 } from '../../numeric/units';
import { BED_POROSITY, steelArea_m2, type HoleState } from '../hole';
import { makeupInto } from '../../fluid/makeup';
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

/** Density of fluid_m3 of what cell i of those in use holds, kg/m3. */
function densityOf_kgm3(hole: HoleState, i: number, fluid_m3: number, load_m3: number): number {
  const { cells, dissolved_kg } = hole;
  const clay_kg = dissolved_kg[BENTONITE * cells + i] + dissolved_kg[SWELLING * cells + i];
  const salt_kg = dissolved_kg[SALT * cells + i];
  const load_frac = load_m3 < fluid_m3 ? load_m3 / fluid_m3 : fluid_m3 > 0 ? 1 : 0;
  if (clay_kg + salt_kg === 0 || !(load_frac < 1)) return suspensionDensity_kgm3(load_frac);
  const water_m3 = fluid_m3 - load_m3;
  return suspensionDensity_kgm3(load_frac, clay_kg / water_m3, salt_kg / water_m3);
}

/** Sums one substance over the cells in use, kg. */
function sumOf_kg(hole: HoleState, substance: number): number {
  const base = substance * hole.cells;
  let sum_kg = 0;
  for (let i = base; i < base + hole.used; i++) sum_kg += hole.dissolved_kg[i];
  return sum_kg;
}

/** What the whole column is made of: its parts have all come past the open wall, so the mean stands for the fluid that was lost. */
function readMakeup(hole: HoleState, work: LossWork): void {
  const { room_m3, grains_m3, makeup } = work;
  let clay_m3 = 0;
  for (let i = 0; i < hole.used; i++) clay_m3 += hole.solids_m3[i];
  makeupInto(
    makeup,
    sumOf_kg(hole, SOAKED),
    sumOf_kg(hole, BENTONITE),
    sumOf_kg(hole, SWELLING),
    sumOf_kg(hole, SALT),
    Math.max(0, room_m3 - grains_m3),
    room_m3 > 0 ? work.wholeFines_m3 / room_m3 : 0,
    room_m3 > 0 ? clay_m3 / room_m3 : 0,
  );
}

/** Reads the column down to bottom_m, the top of the bed. Call fitCells first: it gives that depth and the cells in use. */
export function readColumn(hole: HoleState, bottom_m: number, input: LossInput, work: LossWork): void {
  readGrains(hole, work);
  const { dz_m, used, radius_m } = hole;
  const { height_m, cellRoom_m3, density_kgm3, middle_Pa, bottom_Pa, added_Pa, surge_Pa, load_m3 } = work;
  const { bit_m, friction_Pam } = input;
  const steel_m2 = steelArea_m2(input);
  const count = Math.max(1, Math.min(hole.cells, Math.ceil(bottom_m / dz_m - NO_HEIGHT_m)));
  work.cells = count;
  work.bottom_m = bottom_m;
  let whole_m3 = 0;
  let pressure_Pa = 0;
  let density = 0;
  for (let i = 0; i < count; i++) {
    const top_m = i * dz_m;
    const height = i === count - 1 ? bottom_m - top_m : dz_m;
    const steel_m = bit_m >= top_m + height ? height : bit_m > top_m ? bit_m - top_m : 0;
    // A cell that the ground has closed round the stem has no room; less than none would be nonsense.
    const room_m3 = Math.max(0, Math.PI * radius_m[i] * radius_m[i] * height - steel_m2 * steel_m);
    // The last cell in use may reach into the next cell of the wall, and that one has its fluid.
    if (i < used) {
      const fluid_m3 = i === used - 1 ? (room_m3 * (bottom_m - top_m)) / height : room_m3;
      density = densityOf_kgm3(hole, i, fluid_m3, load_m3[i]);
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
  readMakeup(hole, work);
}
