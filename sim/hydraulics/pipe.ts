// Flow in a round pipe: hoses and stem.
import { pow } from '../numeric/functions';
import { createFrictionLaw, fanningFactor, frictionGradient_Pam, setFrictionLaw, type FrictionLaw } from './friction';

/** A fluid as the losses feel it. */
export interface LineFluid {
  density_kgm3: number;
  K_Pasn: number;
  n_ratio: number;
}

/** Area of a circle, m2, of diameter_m. Worked value: .1 -> .00785398. */
export const circleArea_m2 = (diameter_m: number): number => (Math.PI / 4) * diameter_m * diameter_m;

/** Reynolds number of Metzner & Reed 1955 at 1 m/s: rho D^n / (8^(n-1) K ((3n+1)/4n)^n); times v^(2-n) at v. */
function pipeReynoldsFactor(fluid: LineFluid, diameter_m: number): number {
  const n = fluid.n_ratio;
  if (n === 1) return (fluid.density_kgm3 * diameter_m) / fluid.K_Pasn;
  return (fluid.density_kgm3 * pow((4 * n * diameter_m) / (3 * n + 1), n) * pow(8, 1 - n)) / fluid.K_Pasn;
}

/** A conduit with one fluid in it, ready to be asked for its loss at many flows. Also serves the annulus, by its equivalent diameter. */
export interface Conduit {
  length_m: number;
  area_m2: number;
  /** Diameter of the friction law. */
  diameter_m: number;
  density_kgm3: number;
  reynoldsFactor: number;
  law: FrictionLaw;
}

export const createConduit = (): Conduit => ({
  length_m: 0,
  area_m2: 1,
  diameter_m: 1,
  density_kgm3: 0,
  reynoldsFactor: 0,
  law: createFrictionLaw(),
});

/** Sets a conduit up as a pipe. */
export function setPipe(out: Conduit, length_m: number, bore_m: number, roughness_m: number, fluid: LineFluid): void {
  out.length_m = length_m;
  out.area_m2 = circleArea_m2(bore_m);
  out.diameter_m = bore_m;
  out.density_kgm3 = fluid.density_kgm3;
  out.reynoldsFactor = pipeReynoldsFactor(fluid, bore_m);
  setFrictionLaw(out.law, fluid.n_ratio, roughness_m / bore_m);
}

/**
 * Reynolds number in a conduit at a velocity above 0, m/s: rho v^(2-n) D^n / (8^(n-1) K ((3n+1)/4n)^n) in a pipe
 * (Metzner & Reed 1955; rho v D / mu for water), sqrt(2/3) times that of the slot in an annulus. n .2 to 1.
 * Worked value: pipe, rho 1258.2, K .020, n .8, v 2.5516 m/s, D .09718 m -> 43304.
 */
export function conduitReynolds(conduit: Conduit, velocity_ms: number): number {
  const { n_ratio } = conduit.law;
  return conduit.reynoldsFactor * (n_ratio === 1 ? velocity_ms : pow(velocity_ms, 2 - n_ratio));
}

/**
 * Friction loss of a conduit, Pa, at a flow, m3/s (0 at no flow).
 * Worked value: water 20 C, 27.2 mm, roughness .045 mm, 1.5 m, 150 L/min -> 12.2 kPa.
 */
export function conduitLoss_Pa(conduit: Conduit, flow_m3s: number): number {
  if (!(flow_m3s > 0) || conduit.length_m <= 0) return 0;
  const velocity_ms = flow_m3s / conduit.area_m2;
  const reynolds = conduitReynolds(conduit, velocity_ms);
  if (!(reynolds > 0)) return 0;
  const fanning = fanningFactor(conduit.law, reynolds);
  return conduit.length_m * frictionGradient_Pam(fanning, conduit.density_kgm3, velocity_ms, conduit.diameter_m);
}

/**
 * Loss of a fitting, Pa: zeta rho v^2 / 2, v in a bore_m wide line. Worked value: zeta 1, 1000 kg/m3, .002 m3/s, .032 m -> 3092.
 */
export function fittingLoss_Pa(zeta_ratio: number, density_kgm3: number, flow_m3s: number, bore_m: number): number {
  const velocity_ms = flow_m3s / circleArea_m2(bore_m);
  return 0.5 * zeta_ratio * density_kgm3 * velocity_ms * velocity_ms;
}
