// The petrol engine loses power in thin air, and the pump speed with it.
import { pow } from '../numeric/functions';

/** Power lost per 305 m (1000 ft) of altitude: 3.5 % (trade article). */
const LOSS_PER_M = 0.035 / 305;
const LEAST_POWER = 0.3;

/** Share of the sea-level power left at an altitude, 0-4000 m. Source: trade article, 3.5 % per 1000 ft. Worked value: 1000 m -> .885. */
export function enginePower_frac(altitude_m: number): number {
  return Math.max(LEAST_POWER, 1 - LOSS_PER_M * Math.max(0, altitude_m));
}

/**
 * Share of the full speed that the engine keeps at an altitude: cube root of its power, since a pump asks for
 * power as speed cubed (affinity law). Worked value: 2000 m -> .9167.
 */
export function engineSpeed_frac(altitude_m: number): number {
  return altitude_m > 0 ? pow(enginePower_frac(altitude_m), 1 / 3) : 1;
}
