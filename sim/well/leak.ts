// Dirty water from the surface: down along the casing, or down through the ground beside it.
import { acrossBeds_ms, shared_m, type Bed } from './transmissivity';

/** K of a ring left open or filled with stones only: as of cobbles. ASSUMED: water falls through it within minutes. */
export const OPEN_RING_MS = 0.1;

/** How water gets down: its flow and how long it takes. */
export interface LeakPath {
  flow_m3s: number;
  /** Infinity where nothing flows. */
  time_s: number;
}

/** The ring round the casing as cells from the surface down to the top of the screen: their fill, K and section. */
export interface RingCells {
  readonly count: number;
  readonly height_m: Float64Array;
  readonly area_m2: Float64Array;
  readonly K_ms: Float64Array;
  readonly porosity_frac: Float64Array;
}

/**
 * Water along the casing: Darcy through the cells in a row, and the time that it takes to pass their pores, sum(n A dz)/Q. What stands over
 * a cell drives the water, what lies under it only drains and does not suck: Q is the least of (pond + z)/sum(dz/(K A)) down to any depth
 * z. Of one section and one K that is K A i and sum(n dz)/(K i), i = (pond + L)/L. pond_m: flood water over the mouth; 0: unit gradient.
 * Cells without section or K shut the way. Source: Darcy 1856; the least: derived.
 * Worked value: 3 m of K 1e-9, n .5, .01455 m2, pond 0 -> 1.455e-11 m3/s (.001257 L/d), 1.5e9 s (48 years).
 */
export function ringLeak(cells: RingCells, pond_m: number): LeakPath {
  let depth_m = 0;
  let resistance_sm2 = 0;
  let pores_m3 = 0;
  let flow_m3s = Infinity;
  for (let i = 0; i < cells.count; i++) {
    const height_m = cells.height_m[i];
    depth_m += height_m;
    resistance_sm2 += height_m / (cells.K_ms[i] * cells.area_m2[i]);
    pores_m3 += cells.porosity_frac[i] * cells.area_m2[i] * height_m;
    flow_m3s = Math.min(flow_m3s, (pond_m + depth_m) / resistance_sm2);
  }
  return { flow_m3s, time_s: flow_m3s > 0 ? pores_m3 / flow_m3s : Infinity };
}

/** A bed with its pores. */
export interface PorousBed extends Bed {
  readonly porosity_frac: number;
}

/**
 * Water straight down through the beds, s, from one depth to another: sum(n dz)/q, all pores full; q is the least of Kv i, i = (pond + z)/z,
 * down to the floor of any bed (see ringLeak). Beds from the top down.
 * 0 where there is no way to go; Infinity where the beds end before it. Source: Darcy 1856, Kv of beds across.
 * Worked value: 2 m of 1e-6, n .45, over 3 m of 3e-4, n .39, pond 0 -> 2.07e6.
 */
export function groundPath_s(beds: readonly PorousBed[], from_m: number, to_m: number, pond_m: number): number {
  const length_m = to_m - from_m;
  if (!(length_m > 0)) return 0;
  let pores_m = 0;
  let found_m = 0;
  let q_ms = Infinity;
  for (const bed of beds) {
    const part_m = shared_m(bed, from_m, to_m);
    if (part_m === 0) continue;
    found_m += part_m;
    pores_m += bed.porosity_frac * part_m;
    const gradient = (pond_m + found_m) / found_m;
    q_ms = Math.min(q_ms, acrossBeds_ms(beds, from_m, from_m + found_m) * gradient);
  }
  return found_m < length_m * (1 - 1e-9) ? Infinity : pores_m / q_ms;
}
