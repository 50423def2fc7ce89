// Drag on a falling grain.
import { exp, pow } from '../numeric/functions';

/** Cd = 24/Re (1 + a Re^b) + c/(1 + d/Re). */
export interface DragLaw {
  readonly a: number;
  readonly b: number;
  readonly c: number;
  readonly d: number;
}

/** Best fit for spheres (Haider & Levenspiel 1989). */
const SPHERE: DragLaw = { a: 0.1806, b: 0.6459, c: 0.4251, d: 6880.95 };

/**
 * Drag law of grains of a sphericity, .3 to 1 (surface of the sphere of equal volume / surface of the grain);
 * 1 is the sphere's own fit. Haider & Levenspiel 1989, Powder Technol. 58:63 (non-sphere form from memory).
 * Worked value: sphericity .8 -> a .31628, b .54160.
 */
export function dragLawOf(sphericity_ratio: number): DragLaw {
  if (sphericity_ratio >= 1) return SPHERE;
  return {
    a: 8.1716 * exp(-4.0655 * sphericity_ratio),
    b: 0.0964 + 0.5565 * sphericity_ratio,
    c: 73.69 * exp(-5.0748 * sphericity_ratio),
    d: 5.378 * exp(6.2122 * sphericity_ratio),
  };
}

/**
 * Drag coefficient at a grain Reynolds number rho w d / mu, 1e-6 to 2.6e5.
 * Source: Haider & Levenspiel 1989. Worked value: sphere, Re .002 -> 12039.141.
 */
export function dragCoefficient(law: DragLaw, reynolds: number): number {
  return (24 / reynolds) * (1 + law.a * pow(reynolds, law.b)) + law.c / (1 + law.d / reynolds);
}
