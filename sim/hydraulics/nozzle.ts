// The nozzles of the bit.
import { circleArea_m2 } from './pipe';

/** Velocity in the nozzles, m/s: Q / A. Worked value: 150 L/min, 1 x 12 mm -> 22.10. */
export function nozzleVelocity_ms(flow_m3s: number, nozzles: number, nozzle_m: number): number {
  return flow_m3s / (nozzles * circleArea_m2(nozzle_m));
}

/**
 * Pressure spent in the nozzles, Pa: rho v^2 / (2 Cd^2), Cd .95 by oilfield custom (1/Cd^2 = 1.108).
 * Worked value: rho 1010, v 22.10, Cd .95 -> 273.4 kPa.
 */
export function nozzlePressure_Pa(density_kgm3: number, velocity_ms: number, discharge_ratio: number): number {
  return (density_kgm3 * velocity_ms * velocity_ms) / (2 * discharge_ratio * discharge_ratio);
}
