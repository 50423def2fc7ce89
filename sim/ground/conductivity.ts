// Hydraulic conductivity of a layer from its grain sizes.
import type { Soil } from '../materials/soils';

/** Hazen's coefficient at its usual value C = 100 (K in cm/s, d10 in cm). */
const HAZEN_C = 100;
/** Where Hazen's rule is meant for: loose clean sand of these d10, mm, and Cu below this (Carrier 2003 for d10; Cu from memory). */
const LEAST_D10_mm = 0.1;
const MOST_D10_mm = 2.5;
const MOST_CU = 5;

/** Coefficient of uniformity Cu = d60/d10 (ISO 14688-2). Diameters in one unit, above 0. Worked value: 1.3, .66 -> 1.970. */
export const uniformity_ratio = (d60_mm: number, d10_mm: number): number => d60_mm / d10_mm;

/**
 * Hazen: K = C d10^2, K in cm/s, d10 in cm, C = 100; here K in m/s, d10 in mm: K = .01 d10^2. Valid for d10 .1-2.5 mm.
 * Source: Hazen 1892, 1911; Carrier 2003, J. Geotech. Geoenv. Eng. 129:1054, eq 1. Worked value: .2 mm -> 4e-4.
 */
export function hazenConductivity_ms(d10_mm: number): number {
  const d10_cm = d10_mm / 10;
  return (HAZEN_C * d10_cm * d10_cm) / 100;
}

/**
 * K of a layer, m/s, whose grains are size_ratio times those of its kind: Hazen's rule where it is meant to hold,
 * else the kind's own K times size_ratio^2 (pores scale with the grains; Darcy flow through them with their square).
 */
export function layerConductivity_ms(soil: Soil, size_ratio: number): number {
  const d10_mm = soil.d10_mm * size_ratio;
  const cleanSand =
    uniformity_ratio(soil.d60_mm, soil.d10_mm) < MOST_CU && d10_mm >= LEAST_D10_mm && d10_mm <= MOST_D10_mm;
  return cleanSand ? hazenConductivity_ms(d10_mm) : soil.K_ms * size_ratio * size_ratio;
}
