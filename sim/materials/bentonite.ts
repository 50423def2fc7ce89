// Bentonite, the swelling clay sold in bags: how thick it makes water, how fast it swells, what its cake is like.
// ASSUMED throughout unless a source is named: laid through the few figures that handbooks agree on.

export const BENTONITE = {
  /** Density of its grains, kg/m3: clay minerals (API 13A tests with 2600, from memory). */
  grain_kgm3: 2600,
  /**
   * Consistency K = consistency_Pasn (c/reference_gL)^power, n = index - indexFall ln(c/reference_gL) within indexLeast..1, at
   * the temperature of the polymer's laws; c in g/L of swollen bentonite, 0-150. 40 g/L: K .02-.1, n .6-.75 (handbook values,
   * from memory); 64 g/L: 15 mPa s at 1022 1/s (API 13A, from memory).
   */
  reference_gL: 40,
  consistency_Pasn: 0.05,
  power: 5.84,
  index: 0.68,
  indexFall: 0.53,
  indexLeast: 0.35,
  /** Dose that a crew works with: 50 kg a cubic metre is the usual first mix. */
  workingDose_gL: 50,
  /** This share has swollen after this time at 25 C: 60 % in 30 min, best after 4-24 h; handbook values, from memory. */
  swollen_frac: 0.6,
  swollenAfter_s: 1800,
  /** Share of the solids in its filter cake by volume: it holds nine times its own volume of water. */
  cakeSolids_frac: 0.1,
  /** Hydraulic conductivity of its cake under about a metre of head. */
  cakeConductivity_ms: 1e-9,
} as const;

/** Share of the bentonite that stays in lumps when a bag is dumped in one go; lumps sink and act as plain clay. ASSUMED: half. */
export const BENTONITE_LUMPS_WHEN_DUMPED_frac = 0.5;

/** Salt in the water, g/L, that leaves half of the swollen bentonite working: about 1 %. ASSUMED. */
export const SALT_HALVES_gL = 8;
