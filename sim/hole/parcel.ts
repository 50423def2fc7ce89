// A parcel: some fluid on its way from one part of the circuit to the next within a tick, with all that it carries.
import { SUBSTANCE_COUNT } from '../fluid/substances';
import { CLASS_COUNT } from '../materials/sizes';

/** Everything that passes one place in one tick. Volumes are totals of the tick, not rates. */
export interface Parcel {
  /** Water without the grains, m3. */
  water_m3: number;
  /** Grain volume by size class, m3. */
  solids_m3: Float64Array;
  /** Grain volume times the depth it was cut at, m4; zero where the origin is not followed (stem, pit). */
  moment_m4: Float64Array;
  /** What the water carries, by substance, kg. */
  dissolved_kg: Float64Array;
}

export function createParcel(): Parcel {
  return {
    water_m3: 0,
    solids_m3: new Float64Array(CLASS_COUNT),
    moment_m4: new Float64Array(CLASS_COUNT),
    dissolved_kg: new Float64Array(SUBSTANCE_COUNT),
  };
}

export function emptyParcel(parcel: Parcel): void {
  const { solids_m3, moment_m4, dissolved_kg } = parcel;
  parcel.water_m3 = 0;
  // By hand: `fill` leaves the compiled code, and that costs more than so few numbers.
  for (let k = 0; k < CLASS_COUNT; k++) {
    solids_m3[k] = 0;
    moment_m4[k] = 0;
  }
  for (let s = 0; s < SUBSTANCE_COUNT; s++) dissolved_kg[s] = 0;
}

/** Water and grains together, m3. */
export function parcelVolume_m3(parcel: Parcel): number {
  let volume = parcel.water_m3;
  for (let k = 0; k < CLASS_COUNT; k++) volume += parcel.solids_m3[k];
  return volume;
}

/** Moves a share, 0 to 1, of all that one parcel holds into another, on top of what is there. */
export function moveShare(from: Parcel, share_frac: number, to: Parcel): void {
  const water_m3 = from.water_m3 * share_frac;
  from.water_m3 -= water_m3;
  to.water_m3 += water_m3;
  for (const part of ['solids_m3', 'moment_m4', 'dissolved_kg'] as const) {
    for (let i = 0; i < from[part].length; i++) {
      const moved = from[part][i] * share_frac;
      from[part][i] -= moved;
      to[part][i] += moved;
    }
  }
}
