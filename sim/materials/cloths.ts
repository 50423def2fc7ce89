// Cloth sleeves drawn over the slots of a screen.

export const CLOTH_NAMES = ['fine', 'medium', 'coarse'] as const;
export type ClothName = (typeof CLOTH_NAMES)[number];

export interface Cloth {
  /** Apparent opening size: 95 % of its openings are smaller. */
  readonly O95_mm: number;
  /** Flow per area and head of the clean cloth, (m/s)/m. */
  readonly permittivity_1s: number;
}

/**
 * ASSUMED: woven polyester in three grades that sit at the limits of the standard for cloth behind drains (AASHTO M288:
 * openings up to .22 / .25 / .43 mm, permittivity from .1 / .2 / .5 per second), the fine one well below them for fine sand.
 */
export const CLOTHS: Readonly<Record<ClothName, Cloth>> = {
  fine: { O95_mm: 0.12, permittivity_1s: 0.2 },
  medium: { O95_mm: 0.25, permittivity_1s: 0.5 },
  coarse: { O95_mm: 0.43, permittivity_1s: 1 },
};
