// Flow in a round pipe: hoses and stem.
import { ln } from '../numeric/functions';
import { createFrictionLaw, fanningFactor, frictionGradient_Pam, setFrictionLaw, type FrictionLaw } from './friction';

/** A fluid as the losses feel it. */
export interface LineFluid {
  density_kgm3: number;
  K_Pasn: number;
  n_ratio: number;
}

/** Area of a circle, m2, of diameter_m. Worked value: .1 -> .00785398. */
export const circleArea_m2 = (diameter_m: number): number => (Math.PI / 4) * diameter_m * diameter_m;

/**
 * ln of the Reynolds number of Metzner & Reed 1955 at 1 m3/s: rho D^n / (8^(n-1) K ((3n+1)/4n)^n) / A^(2-n); times Q^(2-n) at Q.
 * Powers are taken together, so that two logarithms do.
 */
function pipeReynoldsLog(fluid: LineFluid, diameter_m: number, area_m2: number): number {
  const n = fluid.n_ratio;
  return (
    ln((8 * fluid.density_kgm3) / (fluid.K_Pasn * area_m2 * area_m2)) +
    n * ln((n * diameter_m * area_m2) / (2 * (3 * n + 1)))
  );
}

/** A conduit with one fluid in it, ready to be asked for its loss at many flows. Also serves the annulus, by its equivalent diameter. */
export interface Conduit {
  length_m: number;
  area_m2: number;
  /** Diameter of the friction law. */
  diameter_m: number;
  density_kgm3: number;
  /** ln of the Reynolds number at 1 m3/s. */
  reynoldsLog: number;
  law: FrictionLaw;
}

export const createConduit = (): Conduit => ({
  length_m: 0,
  area_m2: 1,
  diameter_m: 1,
  density_kgm3: 0,
  reynoldsLog: 0,
  law: createFrictionLaw(),
});

/** Sets a conduit up as a pipe. */
export function setPipe(out: Conduit, length_m: number, bore_m: number, roughness_m: number, fluid: LineFluid): void {
  out.length_m = length_m;
  out.area_m2 = circleArea_m2(bore_m);
  out.diameter_m = bore_m;
  out.density_kgm3 = fluid.density_kgm3;
  out.reynoldsLog = pipeReynoldsLog(fluid, bore_m, out.area_m2);
  setFrictionLaw(out.law, fluid.n_ratio, roughness_m / bore_m);
}

/**
 * ln of the Reynolds number in a conduit at ln of a flow, m3/s: rho v^(2-n) D^n / (8^(n-1) K ((3n+1)/4n)^n) in a pipe
 * (Metzner & Reed 1955; rho v D / mu for water), sqrt(2/3) times that of the slot in an annulus. n .2 to 1. In logarithms,
 * the power is a product, and the conduits of a circuit share the logarithm of their flow.
 * Worked value: pipe, rho 1258.2, K .020, n .8, v 2.5516 m/s, D .09718 m -> ln 43304.
 */
export const conduitReynoldsLog = (conduit: Conduit, logFlow: number): number =>
  conduit.reynoldsLog + (2 - conduit.law.n_ratio) * logFlow;

/**
 * Friction loss of a conduit, Pa, at a flow, m3/s (0 at no flow); logFlow its logarithm, where the caller has it at hand.
 * Worked value: water 20 C, 27.2 mm, roughness .045 mm, 1.5 m, 150 L/min -> 12.2 kPa.
 */
export function conduitLoss_Pa(conduit: Conduit, flow_m3s: number, logFlow = ln(flow_m3s)): number {
  if (!(flow_m3s > 0) || conduit.length_m <= 0) return 0;
  const fanning = fanningFactor(conduit.law, conduitReynoldsLog(conduit, logFlow));
  const velocity_ms = flow_m3s / conduit.area_m2;
  return conduit.length_m * frictionGradient_Pam(fanning, conduit.density_kgm3, velocity_ms, conduit.diameter_m);
}

/**
 * Loss of a fitting, Pa: zeta rho v^2 / 2, v in a bore_m wide line. Worked value: zeta 1, 1000 kg/m3, .002 m3/s, .032 m -> 3092.
 */
export function fittingLoss_Pa(zeta_ratio: number, density_kgm3: number, flow_m3s: number, bore_m: number): number {
  const velocity_ms = flow_m3s / circleArea_m2(bore_m);
  return 0.5 * zeta_ratio * density_kgm3 * velocity_ms * velocity_ms;
}
