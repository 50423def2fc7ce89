// The bit: load, torque and rate of penetration.

export interface BitInput {
  /** Share of the stem's weight let on the bit. */
  feed_frac: number;
  stemLength_m: number;
  turning: boolean;
  bit_m: number;
  turns_rpm: number;
  stallTorque_Nm: number;
  /** Ground at the bit: specific energy (null: refuses the bit), strength of clay (null: none), what flow it resists. */
  E_MPa: number | null;
  su_kPa: number | null;
  tauC_Pa: number;
  balling_frac: number;
  /** Bed round the bit, m; grain volume fraction just above it. */
  bed_m: number;
  load_frac: number;
  flow_m3s: number;
  density_kgm3: number;
  nozzleVelocity_ms: number;
  nozzle_m: number;
}

export interface BitResult {
  weightOnBit_N: number;
  torque_Nm: number;
  stalled: boolean;
  rate_ms: number;
}

export const createBitResult = (): BitResult => ({ weightOnBit_N: 0, torque_Nm: 0, stalled: false, rate_ms: 0 });

/** Rate of penetration when the bit stands on the bottom. The caller limits it to one cell a tick. */
export function drillInto(_out: BitResult, _input: BitInput): void {
  throw new Error('not filled in yet');
}
