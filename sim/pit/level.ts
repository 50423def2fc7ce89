// Levels and loads in the pit: fluid below the rim, deposit above the floor, what is in suspension.
import { makeupInto, type FluidMakeup } from '../fluid/makeup';
import { BENTONITE, SALT, SOAKED, SWELLING } from '../fluid/substances';
import { BED_POROSITY } from '../hole/hole';
import { suspensionDensity_kgm3 } from '../hole/load';
import { CLASS_COUNT, CLAY_CLASS, FINE_CLASS_COUNT } from '../materials/sizes';
import type { Chamber } from './pit';

/** Grain volume of the deposit, m3. */
export function depositGrains_m3(chamber: Chamber): number {
  let grains = 0;
  for (let k = 0; k < CLASS_COUNT; k++) grains += chamber.deposit_m3[k];
  return grains;
}

/** Grain volume in suspension, m3. */
export function suspended_m3(chamber: Chamber): number {
  let grains = 0;
  for (let k = 0; k < CLASS_COUNT; k++) grains += chamber.solids_m3[k];
  return grains;
}

/** Depth of the fluid's surface below the rim, m; negative where it stands above. Worked value: 0.6 m2, .8 m deep, 240 L -> .4. */
export function levelBelowRim_m(chamber: Chamber): number {
  const content_m3 = chamber.water_m3 + suspended_m3(chamber) + depositGrains_m3(chamber);
  return chamber.depth_m - content_m3 / chamber.area_m2;
}

/** Height of the deposit with its pores above the dug floor, m. Worked value: 33 L of grains on 0.6 m2 -> .1. */
export function floorRise_m(chamber: Chamber): number {
  return depositGrains_m3(chamber) / ((1 - BED_POROSITY) * chamber.area_m2);
}

/** Volume of the free suspension, m3: water and suspended grains less the pore water of the deposit. */
export function freeVolume_m3(chamber: Chamber): number {
  const pores_m3 = (depositGrains_m3(chamber) * BED_POROSITY) / (1 - BED_POROSITY);
  return Math.max(0, chamber.water_m3 - pores_m3) + suspended_m3(chamber);
}

/** Make-up, density and load of the free suspension. */
export interface ChamberReading extends FluidMakeup {
  density_kgm3: number;
  /** All grains as a volume fraction. */
  load_frac: number;
}

export function readChamber(chamber: Chamber, out: ChamberReading): void {
  const volume_m3 = freeVolume_m3(chamber);
  let fines = 0;
  for (let k = 0; k < FINE_CLASS_COUNT; k++) fines += chamber.solids_m3[k];
  out.load_frac = volume_m3 > 0 ? suspended_m3(chamber) / volume_m3 : 0;
  const carried_kg = chamber.dissolved_kg;
  makeupInto(
    out,
    carried_kg[SOAKED],
    carried_kg[BENTONITE],
    carried_kg[SWELLING],
    carried_kg[SALT],
    chamber.water_m3,
    volume_m3 > 0 ? fines / volume_m3 : 0,
    volume_m3 > 0 ? chamber.solids_m3[CLAY_CLASS] / volume_m3 : 0,
  );
  out.density_kgm3 = suspensionDensity_kgm3(out.load_frac, out.bentonite_gL, out.salt_gL);
}
