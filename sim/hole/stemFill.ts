// What stands inside the stem: a delay line between pump and bit.
import type { Parcel } from './parcel';

/** Fluid column in `cells` slices from the swivel down to the bit, plus the air in a fresh rod at its top. */
export interface StemFill {
  cells: number;
  water_m3: Float64Array;
  /** Class-major: class k, slice i at k*cells + i. */
  solids_m3: Float64Array;
  soaked_kg: Float64Array;
  soaking_kg: Float64Array;
  /** Air, m3. */
  void_m3: number;
}

/** Density and load of the fluid in the stem, and its polymer. */
export interface StemReading {
  density_kgm3: number;
  soaked_gL: number;
  fines_frac: number;
}

/** A stem full of air. */
export function createStemFill(_volume_m3: number): StemFill {
  throw new Error('not filled in yet');
}

/** Pushes inflow in at the top; outflow receives what leaves at the bit. Air leaves first and is not followed. */
export function pushThroughStem(_fill: StemFill, _inflow: Parcel, _outflow: Parcel): void {
  throw new Error('not filled in yet');
}

/** A rod is screwed on at the top: its bore holds air. */
export function lengthenStem(_fill: StemFill, _volume_m3: number): void {
  throw new Error('not filled in yet');
}

/** A rod comes off: air goes first, then fluid leaves at the bit into outflow. */
export function shortenStem(_fill: StemFill, _volume_m3: number, _outflow: Parcel): void {
  throw new Error('not filled in yet');
}

export function readStem(_fill: StemFill, _out: StemReading): void {
  throw new Error('not filled in yet');
}
