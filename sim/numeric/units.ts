// Conversions between the people's units and the SI units used inside, and the standard gravity of the model.

/** Acceleration of gravity, m/s2. The reference rows use 9.81, so the model does too. */
export const GRAVITY_MS2 = 9.81;

export const LITRES_PER_M3 = 1000;
export const SECONDS_PER_MINUTE = 60;
export const SECONDS_PER_HOUR = 3600;
export const SECONDS_PER_DAY = 86400;

/** mm -> m */
export const metres = (length_mm: number): number => length_mm / 1000;
/** L -> m3 */
export const cubicMetres = (volume_L: number): number => volume_L / LITRES_PER_M3;
/** m3 -> L */
export const litres = (volume_m3: number): number => volume_m3 * LITRES_PER_M3;
/** L/min -> m3/s */
export const flow_m3s = (flow_Lmin: number): number => flow_Lmin / (LITRES_PER_M3 * SECONDS_PER_MINUTE);
/** m3/s -> L/min */
export const flow_Lmin = (flow_m3s: number): number => flow_m3s * LITRES_PER_M3 * SECONDS_PER_MINUTE;
/** kg in m3 -> g/L (0 when there is no volume) */
export const dose_gL = (mass_kg: number, volume_m3: number): number => (volume_m3 > 0 ? mass_kg / volume_m3 : 0);
