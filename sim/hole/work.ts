// Scratch of the hole: arrays and readings that each tick works out afresh. Never state.
import { CLASS_COUNT } from '../materials/sizes';
import { createMakeup, type FluidMakeup } from '../fluid/makeup';
import type { Rheology } from '../fluid/rheology';
import { createFieldWork, type Column, type Entry, type FieldWork } from './field';
import { HINDERED_COUNT } from './hindered';
import type { HoleState } from './hole';

/** The column is read in this many stretches of equal length, each with one fluid. ASSUMED: fine enough to follow a slug of thicker fluid up. */
export const STRETCHES = 4;

/** What the rest of the circuit needs to know of the hole, set by readHole. */
export interface HoleReading extends FluidMakeup {
  /** Means over the annulus above the bit: what the pump feels. */
  density_kgm3: number;
  K_Pasn: number;
  n_ratio: number;
  /** Mean diameter of the hole above the bit, m. */
  diameter_m: number;
  /** All grains as a volume fraction over the last half metre above the bit: they load it. */
  bottomLoad_frac: number;
  /** Grains in suspension in the whole hole, and those of sand and coarser, m3. */
  suspended_m3: number;
  coarse_m3: number;
}

export interface HoleWork extends HoleReading {
  column: Column;
  entry: Entry;
  field: FieldWork;
  rheology: Rheology;
  /** By cell: room, volume fraction of grains, flux of the mixture, speed of one field, speed of the water. */
  volume_m3: Float64Array;
  solids_frac: Float64Array;
  flux_ms: Float64Array;
  up_ms: Float64Array;
  water_ms: Float64Array;
  /** By cell: powers of the hindering (HINDERED_COUNT each), place among the stretches. */
  powers: Float64Array;
  stretchPlace: Float64Array;
  /** By stretch, CLASS_COUNT each: slip and hindering exponent. */
  slip_ms: Float64Array;
  hinder: Float64Array;
  /** One stretch, and by class what reached the mouth. */
  oneSlip_ms: Float64Array;
  oneHinder: Float64Array;
  mouth_m3: Float64Array;
  mouthMoment_m4: Float64Array;
}

export function createHoleWork(hole: HoleState): HoleWork {
  const { cells } = hole;
  return {
    ...createMakeup(),
    density_kgm3: 1000,
    K_Pasn: 1e-3,
    n_ratio: 1,
    diameter_m: 2 * hole.radius_m[0],
    bottomLoad_frac: 0,
    suspended_m3: 0,
    coarse_m3: 0,
    column: { cells: 1, dz_m: hole.dz_m, bottom_m: hole.dz_m },
    entry: { face: 0, amount: 0, moment: 0 },
    field: createFieldWork(cells),
    rheology: { K_Pasn: 1e-3, n_ratio: 1 },
    volume_m3: new Float64Array(cells),
    solids_frac: new Float64Array(cells),
    flux_ms: new Float64Array(cells),
    up_ms: new Float64Array(cells),
    water_ms: new Float64Array(cells),
    powers: new Float64Array(cells * HINDERED_COUNT),
    stretchPlace: new Float64Array(cells),
    slip_ms: new Float64Array(STRETCHES * CLASS_COUNT),
    hinder: new Float64Array(STRETCHES * CLASS_COUNT),
    oneSlip_ms: new Float64Array(CLASS_COUNT),
    oneHinder: new Float64Array(CLASS_COUNT),
    mouth_m3: new Float64Array(CLASS_COUNT),
    mouthMoment_m4: new Float64Array(CLASS_COUNT),
  };
}
