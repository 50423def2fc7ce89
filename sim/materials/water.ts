// Properties of fresh water between 0 and 40 C, read off standard tables.
import { alongLine, alongLogY } from '../numeric/curve';

/** Temperatures of the tables, C. */
const AT_C = [0, 5, 10, 15, 20, 25, 30, 35, 40] as const;

/** Dynamic viscosity, Pa s. Standard water tables; 10, 20 and 30 C as in the reference rows, the rest from memory. */
const VISCOSITY_Pas = [1.792e-3, 1.519e-3, 1.307e-3, 1.138e-3, 1.002e-3, 0.8904e-3, 0.7975e-3, 0.7194e-3, 0.6529e-3];
/** Density, kg/m3. Standard water tables. */
const DENSITY_KGM3 = [999.8, 1000.0, 999.7, 999.1, 998.2, 997.0, 995.7, 994.0, 992.2];
/** Vapour pressure, Pa. Standard water tables. */
const VAPOUR_Pa = [611, 872, 1228, 1705, 2339, 3169, 4246, 5628, 7384];

/**
 * Dynamic viscosity of water, Pa s, at a temperature in C; log-linear between table values, flat outside 0-40 C.
 * Source: standard water tables (1.307, 1.002, 0.7975 mPa s at 10, 20, 30 C). Worked value: 20 C -> 1.002e-3.
 */
export const waterViscosity_Pas = (temperature_C: number): number => alongLogY(AT_C, VISCOSITY_Pas, temperature_C);

/** Density of water, kg/m3, at a temperature in C; linear between table values, flat outside 0-40 C. Worked value: 20 C -> 998.2. */
export const waterDensity_kgm3 = (temperature_C: number): number => alongLine(AT_C, DENSITY_KGM3, temperature_C);

/** Vapour pressure of water, Pa, at a temperature in C; log-linear between table values. Worked value: 20 C -> 2339. */
export const vapourPressure_Pa = (temperature_C: number): number => alongLogY(AT_C, VAPOUR_Pa, temperature_C);
