// One second in the hole, in this order: what comes in at the bit, transport, settling, bed, mouth.
import type { HoleState } from './hole';
import type { MouthFlux } from './mouth';
import type { Parcel } from './parcel';

export interface SweepInput {
  /** Length of the tick, s. */
  dt_s: number;
  /** Depth of the bit before and after this tick, m. */
  bitBefore_m: number;
  bit_m: number;
  rodOutside_m: number;
  temperature_C: number;
  /** What came out of the nozzles in this tick. */
  inflow: Parcel;
  /** Apparent shear rate that a falling grain feels from the flow round it, 1/s: half the wall rate of the annulus, .05 when still. */
  ambient_s: number;
}

/** Scratch arrays and readings of the hole: never state, rebuilt each tick. */
export interface HoleWork {
  /** Density, rheology and load of the fluid in the annulus above the bit (means), as the pump feels them. */
  density_kgm3: number;
  K_Pasn: number;
  n_ratio: number;
  soaked_gL: number;
  fines_frac: number;
  /** Grain volume fraction over the last half metre above the bit: loads the bit. */
  bottomLoad_frac: number;
  /** Grains in suspension in the whole hole, and those of sand and coarser, m3. */
  suspended_m3: number;
  coarse_m3: number;
  /** Mean diameter of the hole above the bit, m. */
  diameter_m: number;
  /** Mean slip of each class in the hole, m/s. */
  slip_ms: Float64Array;
}

export function createHoleWork(_hole: HoleState): HoleWork {
  throw new Error('not filled in yet');
}

/** Reads the hole into work (call before solveFlow; sweepHole does so itself at its start). */
export function readHole(
  _hole: HoleState,
  _bit_m: number,
  _rodOutside_m: number,
  _temperature_C: number,
  _work: HoleWork,
): void {
  throw new Error('not filled in yet');
}

/** Carries the hole one tick on; mouth receives what left over the sill. */
export function sweepHole(_hole: HoleState, _work: HoleWork, _input: SweepInput, _mouth: MouthFlux): void {
  throw new Error('not filled in yet');
}
