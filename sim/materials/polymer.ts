// The powder polymer of the demo kit: how thick it makes water, how fast it soaks and rots.
// ASSUMED throughout unless a source is named: laid between published ranges for guar and xanthan.

export const POLYMER = {
  /** Consistency K = consistency_1gL c^power, Pa s^n, at reference_C; c in g/L of soaked powder, 0-10. */
  consistency_1gL: 0.05,
  power: 1.8,
  /** Flow index n = index_1gL - indexFall ln c, kept in indexLeast..1. */
  index_1gL: 0.72,
  indexFall: 0.12,
  indexLeast: 0.35,
  /** Temperature at which the two laws hold; elsewhere K follows the viscosity of water. */
  reference_C: 25,
  /** Dose that a crew works with, and the dose from which it is too thick to settle in the pit. */
  workingDose_gL: 1.3,
  thickDose_gL: 2.5,
  /** 95 % is soaked after this time at reference_C: a quarter of an hour, common practice, no single source. */
  soaked95_s: 900,
  /** Soaking takes twice as long for this many degrees less: cold water (10 C) doubles it. Handbook statement, from memory. */
  soakDoubling_C: 15,
  /** Half-life against rot at reference_C: guar 2-3 d, from memory. */
  halfLife_s: 2.5 * 86400,
  /** Rot goes this many times faster for 10 degrees more. From memory. */
  Q10: 2,
  /** Its membrane in the wall: volume laid down per volume of filtrate at the working dose, and its hydraulic conductivity. */
  cakePerFiltrate_ratio: 0.01,
  cakeConductivity_ms: 1e-7,
} as const;

/** Share of the powder that clots into fish-eyes and never soaks when a sack is dumped in one go; sprinkled, none does. ASSUMED: about a third. */
export const CLUMPS_WHEN_DUMPED_frac = 0.35;
