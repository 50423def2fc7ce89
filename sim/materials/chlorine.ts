// Chlorine: the powder it comes in, how fast it breaks polymer, how much that uses up, how fast it goes by itself.
// ASSUMED unless a source is named: laid through the doses and contact times of handbooks.

export const CHLORINE = {
  /** Free chlorine in the powder, calcium hypochlorite: 65-70 % (UNHCR 1997 reckons with 70 %). */
  strength_frac: 0.7,
  /**
   * Polymer broken per second and per kg/m3 of each, at 25 C: with 500 mg/L a tenth is left after 40 minutes. Handbooks wait
   * 1-12 h at 500-1000 mg/L, from memory, which counts the way into the wall.
   */
  breaks_m3kgs: 2e-3,
  /** Chlorine used up for each part of polymer broken: 50-100 mg/L break the rest of a working fluid, more a thick one (handbooks, from memory). */
  used_ratio: 0.05,
  /** Half of it is gone by itself after this time at 25 C in clean fluid: light, air, organic matter. */
  halfLife_s: 12 * 3600,
  /** This volume fraction of clay and silt doubles the pace: dirt uses chlorine up (WHO, from memory, without a figure). */
  dirtDoubles_frac: 0.01,
  /** Both go this many times faster for 10 degrees more. */
  Q10: 2,
} as const;
