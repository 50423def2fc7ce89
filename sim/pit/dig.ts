// Digging the deposit out with a shovel.
import { SUBSTANCE_COUNT } from '../fluid/substances';
import { CLASS_COUNT, FINE_CLASS_COUNT } from '../materials/sizes';
import { BED_POROSITY } from '../hole/hole';
import { emptyParcel, type Parcel } from '../hole/parcel';
import { depositGrains_m3 } from './level';
import type { Chamber } from './pit';

/** Share of the clay and silt in a shovelful that washes off into the fluid. ASSUMED. */
const WASHED_OFF_frac = 0.3;

/**
 * Takes up to spoil_m3 of deposit, pores included, out of the chamber; out is set to it. Part of the fines washes off into the
 * fluid. Returns the volume dug, m3.
 */
export function digOut(chamber: Chamber, spoil_m3: number, out: Parcel): number {
  emptyParcel(out);
  const grains_m3 = depositGrains_m3(chamber);
  if (grains_m3 <= 0 || spoil_m3 <= 0) return 0;
  const part = Math.min(1, (spoil_m3 * (1 - BED_POROSITY)) / grains_m3);
  for (let k = 0; k < CLASS_COUNT; k++) {
    const dug = chamber.deposit_m3[k] * part;
    const washed = k < FINE_CLASS_COUNT ? dug * WASHED_OFF_frac : 0;
    chamber.deposit_m3[k] -= dug;
    chamber.solids_m3[k] += washed;
    out.solids_m3[k] = dug - washed;
  }
  const bulk_m3 = (grains_m3 * part) / (1 - BED_POROSITY);
  const pores_m3 = Math.min(chamber.water_m3, bulk_m3 * BED_POROSITY);
  const share = chamber.water_m3 > 0 ? pores_m3 / chamber.water_m3 : 0;
  out.water_m3 = pores_m3;
  chamber.water_m3 -= out.water_m3;
  for (let s = 0; s < SUBSTANCE_COUNT; s++) {
    out.dissolved_kg[s] = chamber.dissolved_kg[s] * share;
    chamber.dissolved_kg[s] -= out.dissolved_kg[s];
  }
  return bulk_m3;
}
