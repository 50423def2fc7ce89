// Balling: cut clay packs the bit when the flow cannot carry it away.

/** Balling after one tick, 0 to 1. */
export function ballingAfter(
  _balling_frac: number,
  _cutClay_m3s: number,
  _flow_m3s: number,
  _onBottom: boolean,
  _dt_s: number,
): number {
  throw new Error('not filled in yet');
}
