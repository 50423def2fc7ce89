// Flow in the ring between stem and wall, as a slot rolled round the stem.
import { ln } from '../numeric/functions';
import { setFrictionLaw } from './friction';
import { circleArea_m2, type Conduit, type LineFluid } from './pipe';

/** Pipe diameter with the laminar loss of a slot, as a share of its width w = hole - rod: sqrt(2/3); books round it to .816. */
export const SLOT_DIAMETER_ratio = Math.sqrt(2 / 3);

/** Cross-section of the annulus, m2. Worked value: .1 m, .0337 m -> .00696201. */
export const annulusArea_m2 = (hole_m: number, rod_m: number): number => circleArea_m2(hole_m) - circleArea_m2(rod_m);

/** Mean upward velocity in the annulus, m/s. Worked value: .025236 m3/s, .2159 m, .1143 m -> .9578. */
export const annulusVelocity_ms = (flow_m3s: number, hole_m: number, rod_m: number): number =>
  flow_m3s / annulusArea_m2(hole_m, rod_m);

/**
 * Shear rate at the wall of a slot, 1/s: (12 v / w)(2n+1)/(3n), w = hole diameter - rod diameter, m.
 * Laminar power law (textbook form; field form in Guo & Liu 2011). Worked value: v .3591, w .0663, n .7 -> 74.28.
 */
export function slotWallRate_1s(velocity_ms: number, width_m: number, n_ratio: number): number {
  return ((12 * velocity_ms) / width_m) * ((2 * n_ratio + 1) / (3 * n_ratio));
}

/**
 * ln of the Reynolds number in the annulus at 1 m3/s on the equivalent diameter: sqrt(2/3) times the slot's
 * rho w^n / (12^(n-1) K ((2n+1)/3n)^n) / A^(2-n); times Q^(2-n) at Q. Source: Metzner & Reed 1955 for the slot; equivalent
 * diameter as in Guo & Liu 2011 ex. 2.6. Worked value: rho 1258.2, K .02, n .8, w .10808, at .6623 m/s -> ln 8146 (book, rounded: 8117).
 */
function slotReynoldsLog(fluid: LineFluid, width_m: number, area_m2: number): number {
  const n = fluid.n_ratio;
  return (
    ln((12 * SLOT_DIAMETER_ratio * fluid.density_kgm3) / (fluid.K_Pasn * area_m2 * area_m2)) +
    n * ln((n * width_m * area_m2) / (4 * (2 * n + 1)))
  );
}

/** Sets a conduit up as the annulus; wall and rod count as smooth beside the width. */
export function setAnnulus(out: Conduit, length_m: number, hole_m: number, rod_m: number, fluid: LineFluid): void {
  const width_m = hole_m - rod_m;
  out.length_m = length_m;
  out.area_m2 = annulusArea_m2(hole_m, rod_m);
  out.diameter_m = SLOT_DIAMETER_ratio * width_m;
  out.density_kgm3 = fluid.density_kgm3;
  out.reynoldsLog = slotReynoldsLog(fluid, width_m, out.area_m2);
  setFrictionLaw(out.law, fluid.n_ratio, 0);
}

/** Shear stress at the wall of the annulus, Pa: gradient x w / 4. Worked value: 61.5 Pa/m, .0663 m -> 1.019. */
export const slotWallShear_Pa = (gradient_Pam: number, width_m: number): number => (gradient_Pam * width_m) / 4;
