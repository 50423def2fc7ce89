// A free water table sinks with pumping: less ground is left to bring water, so the level falls further than it would under cover.

/**
 * Drawdown under cover that matches one with a free table, m: s' = s - s^2/(2b). s 0 to b, b m the thickness of water at rest.
 * Source: Jacob 1944 (from memory). Worked value: s 1.5, b 6 -> 1.3125.
 */
export const coveredDrawdown_m = (free_m: number, thickness_m: number): number =>
  free_m - (free_m * free_m) / (2 * thickness_m);

/**
 * The inverse, m: s = b - sqrt(b^2 - 2 b s'). From s' = b/2 on the aquifer is dry at the well: b.
 * Source: Jacob 1944 (from memory). Worked value: s' 1.2, b 6 -> 1.35242.
 */
export function freeDrawdown_m(covered_m: number, thickness_m: number): number {
  const left_m2 = thickness_m * thickness_m - 2 * thickness_m * covered_m;
  return left_m2 > 0 ? thickness_m - Math.sqrt(left_m2) : thickness_m;
}
