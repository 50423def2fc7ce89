// Levels in the pit: fluid below the rim, deposit above the floor.
import type { Chamber } from './pit';

/** Depth of the fluid's surface below the rim, m. */
export function levelBelowRim_m(_chamber: Chamber): number {
  throw new Error('not filled in yet');
}

/** Height of the deposit above the dug floor, m. */
export function floorRise_m(_chamber: Chamber): number {
  throw new Error('not filled in yet');
}

/** Volume of the free suspension: all but the deposit with its pores, m3. */
export function freeVolume_m3(_chamber: Chamber): number {
  throw new Error('not filled in yet');
}

/** Density and load of the free suspension. */
export interface ChamberReading {
  density_kgm3: number;
  soaked_gL: number;
  /** Clay and silt, and all grains, as volume fractions. */
  fines_frac: number;
  load_frac: number;
}

export function readChamber(_chamber: Chamber, _out: ChamberReading): void {
  throw new Error('not filled in yet');
}
