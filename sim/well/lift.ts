// Whether a pump can draw the water: how deep it reaches, and how far the level may sink for it and for the screen.
import { waterDensity_kgm3, vapourPressure_Pa } from '../materials/water';
import type { WellPump } from '../materials/wellPumps';
import { airPressure_Pa, npshAvailable_m } from '../hydraulics/suction';

/** Share of the height that the air can push water which a hand pump on the surface really lifts: .7 (handbooks, from memory). */
const SUCTION_SHARE_frac = 0.7;

/**
 * Height that the air pushes water in a perfect pump, m: (p - p_v)/(rho g), at an altitude in m and a temperature in C.
 * Source: ISO 2533 for the air. Worked values: 20 C, 0 m -> 10.11; 2000 m -> 7.88.
 */
export const suctionCeiling_m = (altitude_m: number, temperature_C: number): number =>
  npshAvailable_m(airPressure_Pa(altitude_m), vapourPressure_Pa(temperature_C), waterDensity_kgm3(temperature_C), 0, 0);

/**
 * Deepest level a pump draws from, m below the pump: one that sucks .7 of the ceiling, at most its own figure; another its own figure.
 * Source: usual rule of 7 m at low altitude (handbooks, from memory; Shah 2024 6.40 m in the field).
 * Worked values: suction pump at 20 C, 0 m -> 7, 2000 m -> 5.52.
 */
export function deepestDraw_m(pump: WellPump, altitude_m: number, temperature_C: number): number {
  return pump.sucks
    ? Math.min(pump.deepest_m, SUCTION_SHARE_frac * suctionCeiling_m(altitude_m, temperature_C))
    : pump.deepest_m;
}

/** Most of a free table's thickness that a well may draw down: two thirds (Driscoll 1986, from memory). */
export const FREE_SHARE_frac = 2 / 3;
/** Where the screen's top stands dry or nearly so, the level may sink into this share of its wet part. ASSUMED: half the screen still gives water. */
const INTO_SCREEN_frac = 0.5;

/**
 * Drawdown that is allowed, m, 0 or more. The level stays above the screen's top (handbooks, from memory), or where little stands
 * over that, in the upper half of its wet part; with a free table within two thirds of its thickness; and within the pump's reach.
 * level_m, screen, deepest_m: depths from ground level; freeThickness_m 0: under cover.
 * Worked value: level 4, screen 12 to 18, free thickness 15, pump to 7.5 -> 3.5; without the pump's limit -> 8.
 */
export function allowedDrawdown_m(
  level_m: number,
  screenTop_m: number,
  screenBottom_m: number,
  freeThickness_m: number,
  deepest_m: number,
): number {
  const wet_m = screenBottom_m - Math.max(level_m, screenTop_m);
  if (!(wet_m > 0)) return 0;
  const inWell_m = Math.max(screenTop_m - level_m, INTO_SCREEN_frac * wet_m);
  const inGround_m = freeThickness_m > 0 ? FREE_SHARE_frac * freeThickness_m : Infinity;
  return Math.max(0, Math.min(inWell_m, inGround_m, deepest_m - level_m));
}
