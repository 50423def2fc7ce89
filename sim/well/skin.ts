// Rings of other ground round the screen: mud in the sand, gravel, sand washed clean. Each counts as a skin.
import { ln } from '../numeric/functions';

/**
 * Skin of one ring, no unit: sigma = (K/K_ring - 1) ln(outer/inner); above 0 it costs drawdown, below 0 it saves some.
 * K of the ground, K_ring of the ring, both above 0; radii m, outer not below inner. Skins of ring upon ring add up.
 * Source: Hawkins 1956 (from memory). Worked values: K/K_ring 10, .055 to .10 m -> 5.381; 1/20 -> -.5679.
 */
export const ringSkin_ratio = (K_ms: number, ring_ms: number, inner_m: number, outer_m: number): number =>
  (K_ms / ring_ms - 1) * ln(outer_m / inner_m);

/** The least that is left of a cell's way in, as ln(reach/radius), however well its ring leads. Keeps 1/0 out. */
const LEAST_WAY = 0.1;

/**
 * One skin for a screen whose cells differ, no unit. Each cell draws T_i/(L + sigma_i) in parallel, L = ln(reach/radius); sigma is the one
 * that gives the same sum: a cell that is choked costs little where its neighbours are clean. wayLog: see wayLogOf.
 * The first `count` entries; cells without T are passed over; 0 where none has any. Source: derived from Thiem in parallel layers.
 * Worked value: T 1 and 1, sigma 0 and 6, L 6 -> 2.
 */
export function sharedSkin_ratio(T_m2s: Float64Array, skin_ratio: Float64Array, count: number, wayLog: number): number {
  let whole_m2s = 0;
  let drawn_m2s = 0;
  for (let i = 0; i < count; i++) {
    whole_m2s += T_m2s[i];
    drawn_m2s += T_m2s[i] / Math.max(LEAST_WAY, wayLog + skin_ratio[i]);
  }
  return drawn_m2s > 0 ? whole_m2s / drawn_m2s - wayLog : 0;
}
