// What the hole holds in suspension, dissolved and on its bottom, in sums: read once a tick.
import { BENTONITE, SALT, SOAKED, SWELLING } from '../../fluid/substances';
import { CLASS_COUNT } from '../../materials/sizes';
import { BED_POROSITY, type HoleState } from '../hole';
import type { LossWork } from './work';

/** Sums the grains of each cell in use, and over them clay, fines, all grains and what is dissolved; and the bed. */
export function readContents(hole: HoleState, work: LossWork): void {
  const { load_m3 } = work;
  const { used, cells, solids_m3: v, dissolved_kg: d } = hole;
  let grains_m3 = 0;
  let clay_m3 = 0;
  let silt_m3 = 0;
  let soaked_kg = 0;
  let bentonite_kg = 0;
  let swelling_kg = 0;
  let salt_kg = 0;
  for (let i = 0; i < used; i++) {
    // Written out: a loop over the classes costs three times as much, and this is done for every cell in every second.
    const clay = v[i];
    const silt = v[i + cells];
    const sand = v[i + 2 * cells] + v[i + 3 * cells] + v[i + 4 * cells];
    const load = clay + silt + sand + v[i + 5 * cells] + v[i + 6 * cells] + v[i + 7 * cells];
    load_m3[i] = load;
    grains_m3 += load;
    clay_m3 += clay;
    silt_m3 += silt;
    soaked_kg += d[SOAKED * cells + i];
    bentonite_kg += d[BENTONITE * cells + i];
    swelling_kg += d[SWELLING * cells + i];
    salt_kg += d[SALT * cells + i];
  }
  work.grains_m3 = grains_m3;
  work.clay_m3 = clay_m3;
  work.fines_m3 = clay_m3 + silt_m3;
  work.soaked_kg = soaked_kg;
  work.bentonite_kg = bentonite_kg;
  work.swelling_kg = swelling_kg;
  work.salt_kg = salt_kg;
  let bed_m3 = 0;
  for (let k = 0; k < CLASS_COUNT; k++) bed_m3 += hole.bed_m3[k];
  work.bedGrains_m3 = bed_m3;
  work.bed_m3 = bed_m3 / (1 - BED_POROSITY);
}
