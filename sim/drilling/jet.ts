// What the jets wear off firm clay, beside the cutting edges.
import { erodibility_m3Ns } from '../hole/wall/washout';

/** Coefficients of wall stress and of the length of a jet's core (Hanson & Cook 1997, from memory). */
const STRESS = 0.00416;
const CORE = 6.3;

/**
 * Peak shear stress of a jet on a wall, Pa: Cf rho (Cd U d0/J)^2, at most Cf rho U^2 within the core (J < 6.3 d0).
 * velocity_ms U at the nozzle, nozzle_m d0, distance_m J above 0. Worked value: 1000 kg/m3, 10 m/s, 8 mm, .1 m -> 105.7.
 */
export function jetWallShear_Pa(
  density_kgm3: number,
  velocity_ms: number,
  nozzle_m: number,
  distance_m: number,
): number {
  const share = Math.min(1, (CORE * nozzle_m) / distance_m);
  return STRESS * density_kgm3 * (velocity_ms * share) * (velocity_ms * share);
}

/**
 * Erosion of cohesive ground by excess shear, m/s: kd (tau - tau_c), kd = .2 tau_c^-.5 cm3/(N s); 0 below tau_c.
 * tauC_Pa above 0. Worked value: tau 101, tau_c 1 -> 2.0e-5.
 */
export function jetErosion_ms(shear_Pa: number, tauC_Pa: number): number {
  if (shear_Pa <= tauC_Pa) return 0;
  return erodibility_m3Ns(tauC_Pa) * (shear_Pa - tauC_Pa);
}
