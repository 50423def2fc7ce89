// The viscosity a power-law fluid shows at one shear rate, and the shear rate around a falling grain.
import { pow } from '../numeric/functions';
import type { Rheology } from './rheology';

/** Below this the power law would grow without bound; real fluids level off. ASSUMED. */
export const LEAST_SHEAR_1s = 0.1;

/**
 * Apparent viscosity K g^(n-1), Pa s, at shear rate g, 1/s (held at .1 or more).
 * Worked value: K .5, n .5, g 4 -> .25.
 */
export function apparentViscosity_Pas(fluid: Rheology, shear_1s: number): number {
  if (fluid.n_ratio === 1) return fluid.K_Pasn;
  return fluid.K_Pasn * pow(shear_1s > LEAST_SHEAR_1s ? shear_1s : LEAST_SHEAR_1s, fluid.n_ratio - 1);
}

/**
 * Shear rate around a grain, 1/s: its own fall w/d and the stirring of the fluid, added as squares (ASSUMED; Chien 1994 uses w/d).
 * fall_ms: speed through the fluid; grain_m: diameter, above 0; ambient_1s: shear rate of the fluid without the grain.
 * Worked value: .03 m/s, .01 m, 4 1/s -> 5.
 */
export function fallingShear_1s(fall_ms: number, grain_m: number, ambient_1s: number): number {
  const own = fall_ms / grain_m;
  return Math.sqrt(own * own + ambient_1s * ambient_1s);
}
