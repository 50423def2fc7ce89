// Balling: cut clay packs the bit when the flow cannot carry it away.

/** Time to pack the bit, s; time constant of washing it clean off bottom, s. ASSUMED. */
const PACKS_s = 120;
const WASHES_s = 60;
/**
 * Flow that one part of cut clay needs. ASSUMED: with the stream of a small pump a bit in soft clay packs from some 3 m/h on, among
 * what crews make in it, so that half a flow or all the weight of a long stem packs it, and a short stem never does.
 */
const FLOW_PER_CLAY = 800;

/**
 * Balling after one tick, 0 to 1: grows at 1/120 s while more clay is cut than an eight-hundredth of the flow past the bit, clears with a time
 * constant of 60 s off bottom with flow, else stays. Clay between the wings takes the way of its share of the flow: so a bit that was fed
 * half as much again packs a little and cuts less, one that was fed more packs to the end. onBottom: the bit stands on the bottom. Worked value: .5, off bottom, flow, 60 s -> .25.
 */
export function ballingAfter(
  balling_frac: number,
  cutClay_m3s: number,
  flow_m3s: number,
  onBottom: boolean,
  dt_s: number,
): number {
  if (onBottom && cutClay_m3s > (flow_m3s * (1 - balling_frac)) / FLOW_PER_CLAY)
    return Math.min(1, balling_frac + dt_s / PACKS_s);
  if (!onBottom && flow_m3s > 0) return balling_frac / (1 + dt_s / WASHES_s);
  return balling_frac;
}
