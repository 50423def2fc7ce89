// How much outside pressure a pipe stands before its wall folds in.
import { PVC, type Casing } from '../materials/pipes';
import { GRAVITY_MS2 } from '../numeric/units';
import type { Slots } from './slots';

/** Share of it that slots leave. ASSUMED: the middle of the .5 to .7 of practice (handbooks, from memory). */
const SLOTTED_ratio = 0.6;

/** Safety that is asked for: 2 to 3 in practice (handbooks, from memory). */
export const COLLAPSE_SAFETY_ratio = 2;

/** 2E/(1 - nu^2), Pa. */
const wallStiffness_Pa = (poisson_ratio: number): number => (2 * PVC.E_Pa) / (1 - poisson_ratio * poisson_ratio);

/**
 * Collapse pressure of a long round pipe, Pa: 2E/(1 - nu^2) / ((D/t)(D/t - 1)^2). D outside, t wall, D/t above 1, a short time,
 * 21 C. Source: ASTM F480 as quoted in a public text. Worked value: 63 x 3.0, nu .33 -> 737e3.
 */
export function collapse_Pa(pipe: Casing, poisson_ratio: number = PVC.poisson_ratio): number {
  const slender = pipe.outside_m / pipe.wall_m;
  return wallStiffness_Pa(poisson_ratio) / (slender * (slender - 1) * (slender - 1));
}

/** The cautious form, Pa: .75 x 2E/((1 - nu^2)(D/t - 1)^3), source as above. Worked value: 63 x 3.0 -> 580e3. */
export function collapseCautious_Pa(pipe: Casing): number {
  const slender = pipe.outside_m / pipe.wall_m - 1;
  return (0.75 * wallStiffness_Pa(PVC.poisson_ratio)) / (slender * slender * slender);
}

/**
 * Share of the collapse pressure that a slotted pipe keeps: .6 of the wall between the slots, 1 - w/s. ASSUMED form: slots
 * lie round the pipe and take their width out of the ring. Worked value: .8 mm every 10 mm -> .552.
 */
export const slottedCollapse_ratio = (slots: Slots): number =>
  SLOTTED_ratio * Math.max(0, 1 - slots.slotWidth_mm / slots.slotSpacing_mm);

/**
 * Height of a heavier fluid outside at which the pipe folds, m: Pc/((rho_out - rho_in) g), rho_in that of what stands as high
 * inside, 0 for air. No end where it is no heavier. Worked value: 63 x 1.9 in fresh cement of 1876, water inside -> 21.0; empty -> 9.8.
 */
export function collapseHead_m(pressure_Pa: number, outside_kgm3: number, inside_kgm3: number): number {
  return outside_kgm3 > inside_kgm3 ? pressure_Pa / ((outside_kgm3 - inside_kgm3) * GRAVITY_MS2) : Infinity;
}

/** Pressure on the pipe at a depth when it is bailed dry, Pa: rho g (z - level). Worked value: 15 m of water -> 147e3. */
export const emptied_Pa = (depth_m: number, level_m: number, density_kgm3: number): number =>
  density_kgm3 * GRAVITY_MS2 * Math.max(0, depth_m - level_m);
