// The water that stands in the casing: it is drawn before the ground's, and hides the ground in the first minutes of a test.

/**
 * When the water of the casing no longer tells, s: 25 r_c^2/T, r_c m the inside radius, T m2/s above 0.
 * Source: Papadopulos & Cooper 1967 (from memory). Worked value: .0315 m, 6e-4 -> 41.3.
 */
export const storageEnd_s = (casing_m: number, T_m2s: number): number => (25 * casing_m * casing_m) / T_m2s;

/** One second or longer of a well with its casing's water: what goes in. */
export interface CasingTick {
  /** Taken out of the well, m3/s; negative: poured in. */
  pumped_m3s: number;
  /** Drawdown in the well when the tick begins. */
  drawdown_m: number;
  /** Drawdown that the ground would show at the end of the tick, were its rate to stay as it was, without skin and well loss. */
  earlier_m: number;
  /** The ground's rate in the tick before. */
  before_m3s: number;
  /** Fall for each m3/s that the ground gives more: W(u of one tick)/(4 pi T). */
  response_sm2: number;
  /** What skins cost for each m3/s: sigma/(2 pi T). */
  skin_sm2: number;
  /** C of the well loss. */
  loss_s2m5: number;
  /** Section of the water in the casing, above 0. */
  section_m2: number;
}

/**
 * What the ground gives in a tick, m3/s (negative: it drinks). The level that the casing's water leaves, s0 + (Qp - Q) dt/A, must be the
 * one the ground asks for, e + a (Q - Q0) + b Q + C Q |Q|: a square with one root that counts. The new drawdown is s0 + (Qp - Q) dt/A.
 * Source: balance of the casing with Theis by superposition, implicit in the tick.
 * Worked value: Qp 3e-4, all else 0 but a 1000, A .003, dt 1 -> 7.5e-5.
 */
export function groundRate_m3s(tick: CasingTick, tick_s: number): number {
  const fill = tick_s / tick.section_m2;
  const slope = tick.response_sm2 + tick.skin_sm2 + fill;
  const drive_m = tick.drawdown_m + tick.pumped_m3s * fill - tick.earlier_m + tick.response_sm2 * tick.before_m3s;
  const size_m = Math.abs(drive_m);
  const root = Math.sqrt(slope * slope + 4 * tick.loss_s2m5 * size_m);
  return (2 * drive_m) / (slope + root);
}
