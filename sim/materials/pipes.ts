// Plastic casing: sizes on offer, and what PVC of this kind bears.

export const CASING_NAMES = ['pvc50', 'pvc63', 'pvc63thin', 'pvc110'] as const;
export type CasingName = (typeof CASING_NAMES)[number];

export interface Casing {
  /** Outside diameter and wall. */
  readonly outside_m: number;
  readonly wall_m: number;
  /** From pushing a solvent joint in until it may be lowered with care. */
  readonly jointSets_s: number;
}

/**
 * Outside by wall as in the pipe table of DIN 8062, read in a public text: 50 x 2.4, 63 x 3.0 and 110 x 5.3 are rated 10 bar
 * (PN 10), 63 x 1.9 is rated 6. Which of them the kit offers is ASSUMED.
 * Joints: a maker's table for 16-38 C gives 5 min up to 63 mm and 30 min from 75 mm on; another maker two to six times as much,
 * so a scenario may give its own.
 */
export const CASINGS: Readonly<Record<CasingName, Casing>> = {
  pvc50: { outside_m: 0.05, wall_m: 0.0024, jointSets_s: 300 },
  pvc63: { outside_m: 0.063, wall_m: 0.003, jointSets_s: 300 },
  pvc63thin: { outside_m: 0.063, wall_m: 0.0019, jointSets_s: 300 },
  pvc110: { outside_m: 0.11, wall_m: 0.0053, jointSets_s: 1800 },
};

export const PVC = {
  density_kgm3: 1400,
  /** Stiffness over a short time at 21 C, and Poisson's ratio: ASTM F480 as quoted in a public text (4.0e5 psi, .33). */
  E_Pa: 2.758e9,
  poisson_ratio: 0.33,
  /** Hydrostatic design stress of PVC 1120, 2000 psi: Moser, Buried Pipe Design, table 4.5. */
  designStress_Pa: 13.8e6,
  /** Length of one piece. ASSUMED: the usual length that a cart carries. */
  piece_m: 3,
} as const;
