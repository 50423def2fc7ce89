// A cloth over the slots: which openings hold a sand, and how it clogs.
import { finerThan_frac, type Gradation } from '../ground/gradation';
import { uniformity_ratio } from '../ground/conductivity';
import type { Cloth } from '../materials/cloths';

/** Size below which a grain counts as a fine for cloths, mm (AASHTO M288). */
const FINE_mm = 0.075;
/** AASHTO M288 via UFGS: up to this share of fines, openings at most this, permittivity at least this. */
const M288_fines_frac = [0.15, 0.5, 1];
const M288_O95_mm = [0.43, 0.25, 0.22];
const M288_permittivity_1s = [0.5, 0.2, 0.1];

/**
 * Grains between a third of the opening and the opening lodge in it. ASSUMED: with all of the sand that size nine tenths of the
 * cloth are shut.
 */
const LODGE_ratio = 1 / 3;
const SHUT_frac = 0.9;

/**
 * Factor B of the retention rule O95 <= B d85 (Christopher and Holtz, FHWA; from memory): 1 for Cu up to 2 or from 8 on, Cu/2 from
 * 2 to 4, 8/Cu from 4 to 8. Worked value: Cu 3 -> 1.5; 5 -> 1.6; 1.8 -> 1.
 */
export function retentionFactor_ratio(cu_ratio: number): number {
  if (cu_ratio <= 2 || cu_ratio >= 8) return 1;
  return cu_ratio <= 4 ? 0.5 * cu_ratio : 8 / cu_ratio;
}

/** Widest openings that hold the sand, mm: B d85. Worked value: d85 .30, Cu 3 -> .45. */
export const widestCloth_mm = (sand: Gradation): number =>
  retentionFactor_ratio(uniformity_ratio(sand.d60_mm, sand.d10_mm)) * sand.d85_mm;

/** What AASHTO M288 asks of a cloth against ground with a share of fines below .075 mm. Worked value: 10 % -> .43 mm, .5 per second. */
export function standardCloth(fines_frac: number): { O95_mm: number; permittivity_1s: number } {
  const at = fines_frac < M288_fines_frac[0] ? 0 : fines_frac <= M288_fines_frac[1] ? 1 : 2;
  return { O95_mm: M288_O95_mm[at], permittivity_1s: M288_permittivity_1s[at] };
}

/** Share of the ground that counts as fines for a cloth. */
export const clothFines_frac = (sand: Gradation): number => finerThan_frac(sand, FINE_mm);

/**
 * Share of its flow that the cloth keeps once sand lies on it, .1 to 1: less .9 of the share of grains between a third of its
 * opening and the opening. ASSUMED. Worked value: no grain of that size -> 1.
 */
export function clothLeft_frac(cloth: Cloth, sand: Gradation): number {
  const lodging = finerThan_frac(sand, cloth.O95_mm) - finerThan_frac(sand, LODGE_ratio * cloth.O95_mm);
  return 1 - SHUT_frac * lodging;
}
