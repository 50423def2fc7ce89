// The suction side: how high the air can push the water, and what is left at the pump.
import { pow } from '../numeric/functions';
import { GRAVITY_MS2 } from '../numeric/units';

/** Air pressure of the standard atmosphere at sea level, Pa, and its fall with altitude (ISO 2533). */
const SEA_LEVEL_Pa = 101325;
const FALL_1m = 2.25577e-5;
const FALL_POWER = 5.25588;

/**
 * Suction head at the eye below which the pump draws no more, m: 2.5 m needed by a small pump (ASSUMED; 2-3 m usual) and the
 * margin of .5 m over it (supplier FAQ). It puts the practical lift at sea level at 7 m.
 */
export const NPSH_LIMIT_m = 2.5 + 0.5;

/** Air pressure, Pa, 0-4000 m: 101325 (1 - 2.25577e-5 h)^5.25588. Worked value: 1609 m -> 83428. */
export function airPressure_Pa(altitude_m: number): number {
  return SEA_LEVEL_Pa * pow(1 - FALL_1m * Math.max(0, altitude_m), FALL_POWER);
}

/**
 * Net positive suction head available at the pump, m: (air - vapour)/(rho g) - lift - friction.
 * lift_m: pump's eye above the fluid in the pit; friction_m: hose and strainer. Source: supplier FAQ (standard form).
 * Worked value: 101325 Pa, 2339 Pa, 998.2 kg/m3, lift 6.7, friction 0 -> 3.41.
 */
export function npshAvailable_m(
  air_Pa: number,
  vapour_Pa: number,
  density_kgm3: number,
  lift_m: number,
  friction_m: number,
): number {
  return (air_Pa - vapour_Pa) / (density_kgm3 * GRAVITY_MS2) - lift_m - friction_m;
}

/** Times the loss of the clean strainer grows when a share of it is blocked: 1/(1-b)^2. Worked value: b .5 -> 4. */
export function strainerLossGrowth_ratio(blockage_frac: number): number {
  const open = 1 - Math.min(0.995, Math.max(0, blockage_frac));
  return 1 / (open * open);
}
