// Scratch of the hole: arrays and readings that each tick works out afresh. Never state.
import { CLASS_COUNT } from '../materials/sizes';
import { createMakeup, type FluidMakeup } from '../fluid/makeup';
import type { Rheology } from '../fluid/rheology';
import { createFieldWork, fullColumn, type Column, type Entry, type FieldWork } from './field';
import { HINDERED_COUNT } from './hindered';
import type { HoleState } from './hole';
import { createParcel, type Parcel } from './parcel';

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
  /** Face at the bit, velocity just above it, the longest way of the mixture in the tick, in heights of a cell. */
  bitFace: number;
  pastBit_ms: number;
  longest: number;
  /** The least upward way of the mixture in any cell. */
  least: number;
  /** First and last cell that holds any of the class at hand. */
  range: { first: number; last: number };
  /** What went into the ground, and the ground water that came in, in this tick; whether anything did. */
  left: Parcel;
  came: Parcel;
  exchanges: boolean;
  /** By cell: room and free section; grains, and the fines among them. */
  volume_m3: Float64Array;
  section_m2: Float64Array;
  grains_m3: Float64Array;
  fines_m3: Float64Array;
  /** By cell: volume fraction of grains; upward way of the mixture in the tick, in heights of a whole cell. */
  solids_frac: Float64Array;
  flow: Float64Array;
  /** By cell: what leaves and comes in, the water in what leaves, salt that comes in, water before and after the tick. */
  leave_m3: Float64Array;
  enter_m3: Float64Array;
  leaveWater_m3: Float64Array;
  saltIn_kg: Float64Array;
  waterBefore_m3: Float64Array;
  waterAfter_m3: Float64Array;
  /** By face: the share of what entered at the bit that lies above it, with its water. */
  entered: Float64Array;
  /** Zeros: what is dissolved has no origin to follow. */
  noMoment: Float64Array;
  /** Number of stretches in use. */
  stretches: number;
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
  const byCell = (): Float64Array => new Float64Array(cells);
  const makeup = createMakeup();
  return {
    // Field by field: engines give every object made by spreading a shape of its own, and then read all of them slowly.
    soaked_gL: makeup.soaked_gL,
    bentonite_gL: makeup.bentonite_gL,
    salt_gL: makeup.salt_gL,
    fines_frac: makeup.fines_frac,
    activeBentonite_gL: makeup.activeBentonite_gL,
    plainFines_frac: makeup.plainFines_frac,
    thickFines_frac: makeup.thickFines_frac,
    density_kgm3: 1000,
    K_Pasn: 1e-3,
    n_ratio: 1,
    diameter_m: 2 * hole.radius_m[0],
    bottomLoad_frac: 0,
    suspended_m3: 0,
    coarse_m3: 0,
    column: fullColumn(1, hole.dz_m, hole.dz_m),
    entry: { face: 0, amount: 0, moment: 0, up_frac: 1 },
    field: createFieldWork(cells),
    rheology: { K_Pasn: 1e-3, n_ratio: 1 },
    bitFace: 0,
    pastBit_ms: 0,
    longest: 0,
    least: 0,
    range: { first: 0, last: 0 },
    left: createParcel(),
    came: createParcel(),
    exchanges: false,
    volume_m3: byCell(),
    section_m2: byCell(),
    grains_m3: byCell(),
    fines_m3: byCell(),
    solids_frac: byCell(),
    flow: byCell(),
    leave_m3: byCell(),
    enter_m3: byCell(),
    leaveWater_m3: byCell(),
    saltIn_kg: byCell(),
    waterBefore_m3: byCell(),
    waterAfter_m3: byCell(),
    entered: new Float64Array(cells + 1),
    noMoment: byCell(),
    stretches: 1,
    powers: new Float64Array(cells * HINDERED_COUNT),
    stretchPlace: byCell(),
    slip_ms: new Float64Array(STRETCHES * CLASS_COUNT),
    hinder: new Float64Array(STRETCHES * CLASS_COUNT),
    oneSlip_ms: new Float64Array(CLASS_COUNT),
    oneHinder: new Float64Array(CLASS_COUNT),
    mouth_m3: new Float64Array(CLASS_COUNT),
    mouthMoment_m4: new Float64Array(CLASS_COUNT),
  };
}
