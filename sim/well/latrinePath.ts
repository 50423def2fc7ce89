// From the floor of a latrine to the screen: down to the water, along with it, down to the screen.
import { groundPath_s, type PorousBed } from './leak';
import { travelTime_s } from './latrine';
import { acrossBeds_ms, alongBeds_ms, shared_m } from './transmissivity';

/** Fall of the water table of a plain, m/m. ASSUMED: .01, the slope of the ARGOSS examples; plains are often flatter. */
export const TABLE_SLOPE = 0.01;

/** Where the latrine and the screen are: depths from ground level, m, and how far apart. */
export interface LatrineLegs {
  readonly pitBottom_m: number;
  /** The water at rest. */
  readonly level_m: number;
  readonly screenTop_m: number;
  readonly screenBottom_m: number;
  readonly distance_m: number;
  /** Drawdown at the well in daily use. */
  readonly drawdown_m: number;
}

/** Pores of the beds in a stretch, as metres of water. */
function pores_m(beds: readonly PorousBed[], top_m: number, bottom_m: number): number {
  let sum_m = 0;
  for (const bed of beds) sum_m += bed.porosity_frac * shared_m(bed, top_m, bottom_m);
  return sum_m;
}

/**
 * Time that the water takes, s: down through the beds to the water with unit gradient, then along the beds of the screen,
 * n L/(Kh i), and across those between the water and the screen, sum(n dz)/(Kv i), i = .01 + drawdown/distance. Infinity where it never comes.
 * Source: Darcy; ARGOSS 2001, with legs up and down. The germs that cling to grains take longer; a leaking ring is quicker.
 * Worked value: sand of K 3e-4, n .39 throughout, pit 2, water 4, screen 12-15, 30 m apart, drawdown 1 -> 1.1426e6 (13 days).
 */
export function latrinePath_s(beds: readonly PorousBed[], legs: LatrineLegs): number {
  const { pitBottom_m, level_m, screenTop_m, screenBottom_m, distance_m, drawdown_m } = legs;
  const gradient = TABLE_SLOPE + Math.max(0, drawdown_m) / distance_m;
  const water_m = Math.max(pitBottom_m, level_m);
  const entry_m = Math.max(water_m, screenTop_m);
  const screen_m = screenBottom_m - entry_m;
  if (!(screen_m > 0)) return Infinity;
  const porosity_frac = pores_m(beds, entry_m, screenBottom_m) / screen_m;
  const along_s = travelTime_s(porosity_frac, distance_m, alongBeds_ms(beds, entry_m, screenBottom_m), gradient);
  const across_ms = acrossBeds_ms(beds, water_m, entry_m) * gradient;
  const across_s = entry_m > water_m ? pores_m(beds, water_m, entry_m) / across_ms : 0;
  return groundPath_s(beds, pitBottom_m, water_m, 0) + along_s + across_s;
}
