// The heat of the drive motor: one lump of copper and iron, warmed by what it draws and cooled by the air.
import { exp } from '../numeric/functions';

/** Heat that the motor takes up, J/K. ASSUMED: 2 kg of copper and iron at .45 kJ/(kg K). */
const HEAT_JK = 900;
/** Heat that it gives off per degree, W/K, turning (its own fan) and standing. ASSUMED. */
const COOLS_TURNING_WK = 7;
const COOLS_STILL_WK = 2.5;
/** Share of the rated power that turns to heat in a motor running free. ASSUMED: brushes, gears and fan. */
const IDLE_HEAT_frac = 0.05;
/** It trips at this temperature, C, and can be started again below that one. The limit of class B insulation (IEC 60085, from memory); ASSUMED for restarting. */
export const DRIVE_HOT_C = 130;
export const DRIVE_COOL_C = 70;
/** Warm and hot to the hand on the housing, C. ASSUMED: the housing lags far behind the windings. */
export const DRIVE_WARM_C = 60;
export const DRIVE_SMELLS_C = 95;

/**
 * Heat that the motor makes, W: P (.05 + .95 x^2), x the torque as a share of the stall torque: the loss in the windings goes
 * with the square of the current and the current with the torque; a stalled motor turns all it draws into heat.
 * Worked value: 700 W, x 1 -> 700; x .5 -> 201.25.
 */
export function driveHeat_W(power_W: number, torque_ratio: number): number {
  const x = Math.min(1, Math.max(0, torque_ratio));
  return power_W * (IDLE_HEAT_frac + (1 - IDLE_HEAT_frac) * x * x);
}

/**
 * Temperature after dt_s, C: C dT/dt = heat - G (T - air), exact for a steady second. turning: the fan runs; a stalled motor
 * has no fan. Worked value: 25 C, air 25, 700 W, standing, 150 s -> 120.4.
 */
export function driveAfter_C(now_C: number, air_C: number, heat_W: number, fanRuns: boolean, dt_s: number): number {
  const cools_WK = fanRuns ? COOLS_TURNING_WK : COOLS_STILL_WK;
  const rest_C = air_C + heat_W / cools_WK;
  return rest_C + (now_C - rest_C) * exp((-cools_WK * dt_s) / HEAT_JK);
}
