// Pumps that can be fitted to the finished well, and how deep each can draw from.

export const WELL_PUMP_NAMES = ['suction', 'deepPiston', 'submersible'] as const;
export type WellPumpName = (typeof WELL_PUMP_NAMES)[number];

export interface WellPump {
  /** Stands above ground and sucks: its lift shrinks with the air pressure, `deepest_m` is at sea level. */
  readonly sucks: boolean;
  /** Deepest water level while it draws, below its own height. */
  readonly deepest_m: number;
  /** What it gives in steady use. */
  readonly flow_m3s: number;
  /** It needs casing of at least this bore. */
  readonly leastBore_m: number;
}

/**
 * Suction: at most 7 m to the moving level is the usual rule (handbooks, from memory); a bench test lifted 8.08 m, a field pump
 * 6.40 m (Shah 2024). Flow 17 L/min: the Sphere planning figure for a hand pump. Deep piston: 11 to 17 L/min at 45 m (Practical
 * Action). The submersible and the bores are ASSUMED: a motor of four inches.
 */
export const WELL_PUMPS: Readonly<Record<WellPumpName, WellPump>> = {
  suction: { sucks: true, deepest_m: 7, flow_m3s: 17 / 60000, leastBore_m: 0.03 },
  deepPiston: { sucks: false, deepest_m: 45, flow_m3s: 14 / 60000, leastBore_m: 0.055 },
  submersible: { sucks: false, deepest_m: 60, flow_m3s: 60 / 60000, leastBore_m: 0.098 },
};
