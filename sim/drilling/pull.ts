// What it takes to lift the stem.

/** Pull on the rope, N: weight, the bed round the bit, a tight hole (wall of undrained strength su over tightLength_m). */
export function pull_N(
  _stemLength_m: number,
  _bed_m: number,
  _tightLength_m: number,
  _su_kPa: number,
  _radius_m: number,
): number {
  throw new Error('not filled in yet');
}

/** Chance that one try of working the stem frees it, 0 to 1. */
export function freeingChance(_flow_m3s: number, _nominal_m3s: number, _bed_m: number): number {
  throw new Error('not filled in yet');
}
