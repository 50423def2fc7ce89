// How fast a single grain falls through a fluid.
import { exp, ln } from '../numeric/functions';
import { solveBracketed } from '../numeric/root';
import { GRAVITY_MS2 } from '../numeric/units';
import { apparentViscosity_Pas, fallingShear_1s } from '../fluid/apparent';
import type { Rheology } from '../fluid/rheology';
import { dragCoefficient, type DragLaw } from './drag';

/** Slowest and fastest fall looked for, m/s, as logarithms; the answer is found to one part in 1e9. */
const SLOWEST = ln(1e-12);
const FASTEST = ln(100);
const TOLERANCE = 1e-9;

/** Reynolds number of a grain falling at a speed, on the viscosity its fall and the stirring of the fluid leave it. */
export function grainReynolds(
  grain_m: number,
  fall_ms: number,
  density_kgm3: number,
  fluid: Rheology,
  ambient_1s: number,
): number {
  const viscosity_Pas = apparentViscosity_Pas(fluid, fallingShear_1s(fall_ms, grain_m, ambient_1s));
  return (density_kgm3 * fall_ms * grain_m) / viscosity_Pas;
}

/**
 * Terminal velocity, m/s: the w with Cd(Re) rho w^2 = 4/3 g d (rho_s - rho), Re on the apparent viscosity at the shear
 * rate sqrt((w/d)^2 + ambient^2) (Chien 1994 uses w/d). grain_m d: 1e-7 to .1; grain_kgm3 above density_kgm3; ambient_1s >= 0.
 * Worked value: sphere, d 70 um, grains 2600, fluid 1000 kg/m3, .001 Pa s -> .00396 (Perry's problem: .0041 by another drag law).
 */
export function terminalVelocity_ms(
  law: DragLaw,
  grain_m: number,
  grain_kgm3: number,
  density_kgm3: number,
  fluid: Rheology,
  ambient_1s: number,
): number {
  const drive = ((4 / 3) * GRAVITY_MS2 * grain_m * (grain_kgm3 - density_kgm3)) / density_kgm3;
  const excess = (logFall: number): number => {
    const fall_ms = exp(logFall);
    const reynolds = grainReynolds(grain_m, fall_ms, density_kgm3, fluid, ambient_1s);
    return dragCoefficient(law, reynolds) * fall_ms * fall_ms - drive;
  };
  return exp(solveBracketed(excess, SLOWEST, FASTEST, ln(0.01), TOLERANCE));
}
