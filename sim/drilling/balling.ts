// Balling: cut clay packs the bit when the flow cannot carry it away.

/** Time to pack the bit, s; time constant of washing it clean off bottom, s; flow that one part of cut clay needs. ASSUMED. */
const PACKS_s = 120;
const WASHES_s = 60;
const FLOW_PER_CLAY = 60;

/**
 * Balling after one tick, 0 to 1: grows at 1/120 s while more clay is cut than a sixtieth of the flow, clears with a time
 * constant of 60 s off bottom with flow, else stays. onBottom: the bit stands on the bottom. Worked value: .5, off bottom, flow, 60 s -> .25.
 */
export function ballingAfter(
  balling_frac: number,
  cutClay_m3s: number,
  flow_m3s: number,
  onBottom: boolean,
  dt_s: number,
): number {
  if (onBottom && cutClay_m3s > flow_m3s / FLOW_PER_CLAY) return Math.min(1, balling_frac + dt_s / PACKS_s);
  if (!onBottom && flow_m3s > 0) return balling_frac / (1 + dt_s / WASHES_s);
  return balling_frac;
}
