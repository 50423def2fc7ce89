// The column of fluid as the wall meets it: room and weight of each cell from the mouth to the top of the bed.
import { BENTONITE, SALT, SWELLING } from '../../fluid/substances';
import { GRAVITY_MS2 } from '../../numeric/units';
import { steelArea_m2, type HoleState } from '../hole';
import { suspensionDensity_kgm3 } from '../load';
import type { LossInput, LossWork } from './work';

/** A rest of a cell thinner than this, m, is none. */
const NO_HEIGHT_m = 1e-9;

/** Density of cell i of those in use, kg/m3, with so much of its fluid taken up by grains; dissolved: it may hold bentonite or salt. */
function densityOf_kgm3(hole: HoleState, i: number, fluid_m3: number, load_m3: number, dissolved: boolean): number {
  const load_frac = load_m3 < fluid_m3 ? load_m3 / fluid_m3 : fluid_m3 > 0 ? 1 : 0;
  // A closed cell has no water for anything to be dissolved in.
  if (!dissolved || !(load_frac < 1) || !(fluid_m3 > 0)) return suspensionDensity_kgm3(load_frac);
  const { cells, dissolved_kg } = hole;
  const bentonite_kg = dissolved_kg[BENTONITE * cells + i] + dissolved_kg[SWELLING * cells + i];
  const water_m3 = fluid_m3 - load_m3;
  return suspensionDensity_kgm3(load_frac, bentonite_kg / water_m3, dissolved_kg[SALT * cells + i] / water_m3);
}

/** Reads the column down to bottom_m, the top of the bed. Call fitCells and readContents first. */
export function readColumn(hole: HoleState, bottom_m: number, input: LossInput, work: LossWork): void {
  const { dz_m, used, radius_m } = hole;
  const { height_m, cellRoom_m3, density_kgm3, middle_Pa, bottom_Pa, added_Pa, surge_Pa, load_m3 } = work;
  const { bit_m, friction_Pam } = input;
  const dissolved = work.bentonite_kg + work.swelling_kg + work.salt_kg > 0;
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
    const open_m3 = Math.PI * radius_m[i] * radius_m[i] * height - steel_m2 * steel_m;
    // A cell that the ground has closed round the stem has no room; less than none would be nonsense.
    const room_m3 = open_m3 > 0 ? open_m3 : 0;
    // The last cell in use may reach into the next cell of the wall, and that one has its fluid.
    if (i < used) {
      const fluid_m3 = i === used - 1 ? (room_m3 * (bottom_m - top_m)) / height : room_m3;
      density = densityOf_kgm3(hole, i, fluid_m3, load_m3[i], dissolved);
    }
    const half_Pa = 0.5 * density * GRAVITY_MS2 * height;
    const middle_m = top_m + 0.5 * height;
    height_m[i] = height;
    cellRoom_m3[i] = room_m3;
    density_kgm3[i] = density;
    middle_Pa[i] = pressure_Pa + half_Pa;
    pressure_Pa += 2 * half_Pa;
    bottom_Pa[i] = pressure_Pa;
    added_Pa[i] = friction_Pam * (middle_m < bit_m ? middle_m : bit_m) + surge_Pa[i];
    whole_m3 += room_m3;
  }
  work.room_m3 = whole_m3;
}
