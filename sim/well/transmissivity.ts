// What beds pass together: along them (transmissivity, Kh) and across them (Kv).

/** A bed, or a layer of the ground. */
export interface Bed {
  readonly top_m: number;
  readonly bottom_m: number;
  readonly K_ms: number;
}

/** Metres that a bed and a stretch of depth share, 0 or more. Worked value: bed 2-5 m, stretch 4-9 m -> 1. */
export const shared_m = (bed: Bed, top_m: number, bottom_m: number): number =>
  Math.max(0, Math.min(bed.bottom_m, bottom_m) - Math.max(bed.top_m, top_m));

/**
 * Transmissivity of a stretch of depth, m2/s: sum of K_i b_i over the beds in it; 0 where there are none.
 * For the wet part of a screen give the greater of its top and the level. Source: Freeze & Cherry 1979, eq 2.31 (from memory).
 * Worked value: 2 m of 1e-4 over 3 m of 1e-3 -> 3.2e-3.
 */
export function transmissivity_m2s(beds: readonly Bed[], top_m: number, bottom_m: number): number {
  let sum_m2s = 0;
  for (const bed of beds) sum_m2s += bed.K_ms * shared_m(bed, top_m, bottom_m);
  return sum_m2s;
}

/** K along the beds, m/s: Kh = sum K_i b_i / sum b_i; 0 where there are none. Source as above. Worked value: as above -> 6.4e-4. */
export function alongBeds_ms(beds: readonly Bed[], top_m: number, bottom_m: number): number {
  let thick_m = 0;
  for (const bed of beds) thick_m += shared_m(bed, top_m, bottom_m);
  return thick_m > 0 ? transmissivity_m2s(beds, top_m, bottom_m) / thick_m : 0;
}

/**
 * K across the beds, m/s: Kv = sum b_i / sum (b_i/K_i), never above Kh; 0 where there are none. K above 0.
 * Source: Freeze & Cherry 1979, eq 2.32 (from memory). Worked value: 2 m of 1e-4 over 3 m of 1e-3 -> 2.1739e-4.
 */
export function acrossBeds_ms(beds: readonly Bed[], top_m: number, bottom_m: number): number {
  let thick_m = 0;
  let resistance_s = 0;
  for (const bed of beds) {
    const part_m = shared_m(bed, top_m, bottom_m);
    thick_m += part_m;
    resistance_s += part_m / bed.K_ms;
  }
  return thick_m > 0 ? thick_m / resistance_s : 0;
}
