// What a hole has room for and what it holds, added up cell by cell, apart from the sweep's own count.
import { cellVolume_m3, type HoleState, type StemPlace } from '../../../sim/hole/hole';
import { CLASS_COUNT } from '../../../sim/materials/sizes';

/** Room for fluid and grains in the hole outside the stem, m3. A cell that has closed on the stem has none. */
export function holeCapacity_m3(hole: HoleState, stem: StemPlace): number {
  let capacity = 0;
  for (let i = 0; i < hole.cells && i * hole.dz_m < hole.depth_m; i++) {
    capacity += cellVolume_m3(hole, i, Math.min((i + 1) * hole.dz_m, hole.depth_m), stem);
  }
  return capacity;
}

/** Water and grains that the hole holds, bed included, m3. */
export function holeContent_m3(hole: HoleState): number {
  let content = hole.water_m3;
  for (let k = 0; k < CLASS_COUNT; k++) {
    const base = k * hole.cells;
    for (let i = 0; i < hole.used; i++) content += hole.solids_m3[base + i];
    content += hole.bed_m3[k];
  }
  return content;
}
