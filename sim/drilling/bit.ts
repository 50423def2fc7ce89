// The bit: load, torque and rate of penetration.
import type { Kit } from '../materials/kit';
import { jetErosion_ms, jetWallShear_Pa } from './jet';
import { bedTorque_Nm, bitTorque_Nm } from './torque';
import { hangingWeight_N, weightOnBit_N } from './weight';

export interface BitInput {
  kit: Kit;
  /** Share of the stem's weight let on the bit. */
  feed_frac: number;
  stemLength_m: number;
  turning: boolean;
  /** Ground at the bit: specific energy (null: refuses the bit), strength of clay (null: none), what flow it resists. */
  E_MPa: number | null;
  su_kPa: number | null;
  tauC_Pa: number;
  /** Torque of a wall that grips the bit, N m. */
  grip_Nm: number;
  balling_frac: number;
  /** Bed round the bit, m; grain volume fraction just above it. */
  bed_m: number;
  load_frac: number;
  flow_m3s: number;
  density_kgm3: number;
  nozzleVelocity_ms: number;
}

export interface BitResult {
  weightOnBit_N: number;
  torque_Nm: number;
  stalled: boolean;
  rate_ms: number;
  /** The ground takes no bite: too hard for any bit of this kind, or for the weight on it. */
  refused: boolean;
}

export const createBitResult = (): BitResult => ({
  weightOnBit_N: 0,
  torque_Nm: 0,
  stalled: false,
  rate_ms: 0,
  refused: false,
});

/** A bed this high keeps the bit off the ground, m; a load above the bit of this volume fraction slows it, and of that one stops it. ASSUMED. */
const BED_STOPS_m = 0.15;
const LOAD_SLOWS_frac = 0.05;
const LOAD_STOPS_frac = 0.1;
/** Times the specific energy grows when the bit is packed with clay. ASSUMED. */
const BALLED_GROWTH = 4;
/** Most weight that the ground takes, as a share of E A: beyond it the law of Teale has no meaning. */
const MOST_WEIGHT_frac = 0.5;
/** With less weight than this share of E A the wings rub and do not bite. ASSUMED: a rate of some five centimetres an hour, which no crew waits for. */
const LEAST_WEIGHT_frac = 1e-4;
/** From the nozzles to the ground, m. ASSUMED: the length of the wings. */
const STAND_OFF_m = 0.1;

const clip = (x: number): number => (x < 0 ? 0 : x > 1 ? 1 : x);

/**
 * Rate of penetration from the work done, m/s: 2 pi N T / (E A - W) (Teale 1965, MSE = W/A + 2 pi N T/(A R) with MSE = E).
 * turns_1s N, torque_Nm T, E_Pa, area_m2 A, weightOnBit_N W held to half of E A. Throws nothing.
 * Worked value: 30 rpm, 40 N m, .5 MPa, .1 m bit, W 0 -> .0320 m/s (115 m/h).
 */
export function tealeRate_ms(
  turns_1s: number,
  torque_Nm: number,
  E_Pa: number,
  area_m2: number,
  weightOnBit_N: number,
): number {
  const resistance_N = E_Pa * area_m2;
  return (
    (2 * Math.PI * turns_1s * torque_Nm) / (resistance_N - Math.min(weightOnBit_N, MOST_WEIGHT_frac * resistance_N))
  );
}

/** Share of the rate left by a bed under the bit and by the load above it. Worked value: bed .075 m, load .075 -> .25. */
export const fillFactor = (bed_m: number, load_frac: number): number =>
  clip(1 - bed_m / BED_STOPS_m) * clip((LOAD_STOPS_frac - load_frac) / (LOAD_STOPS_frac - LOAD_SLOWS_frac));

/** Does the ground refuse the bit? Null energy always; else while the weight is under a ten-thousandth of E A. Worked value: 80 MPa, .1 m bit: refuses below 62.8 N. */
export function groundRefuses(E_MPa: number | null, bit_m: number, weightOnBit_N: number): boolean {
  if (E_MPa === null) return true;
  return weightOnBit_N < LEAST_WEIGHT_frac * E_MPa * 1e6 * (Math.PI / 4) * bit_m * bit_m;
}

/**
 * Weight on the bit, torque and rate of penetration of a bit that stands on the bottom. Jets help in cohesive ground only; in
 * sand the work of the wings decides. A stalled drive cuts nothing. The caller limits the advance to one cell a tick.
 */
export function drillInto(out: BitResult, input: BitInput): void {
  const { kit } = input;
  const weight_N = hangingWeight_N(kit, input.stemLength_m, input.density_kgm3);
  out.weightOnBit_N = weightOnBit_N(kit, input.feed_frac, weight_N);
  out.torque_Nm = 0;
  out.stalled = false;
  out.rate_ms = 0;
  out.refused = false;
  if (!input.turning) return;
  const cutting_Nm = bitTorque_Nm(out.weightOnBit_N, kit.bit_m);
  out.torque_Nm = cutting_Nm + bedTorque_Nm(input.bed_m) + input.grip_Nm;
  if (out.torque_Nm >= kit.stallTorque_Nm) {
    out.torque_Nm = kit.stallTorque_Nm;
    out.stalled = true;
    return;
  }
  if (out.weightOnBit_N <= 0) return;
  out.refused = groundRefuses(input.E_MPa, kit.bit_m, out.weightOnBit_N);
  if (input.E_MPa === null || out.refused) return;
  const area_m2 = (Math.PI / 4) * kit.bit_m * kit.bit_m;
  const E_Pa = input.E_MPa * 1e6 * (1 + BALLED_GROWTH * clip(input.balling_frac));
  let rate_ms = tealeRate_ms(kit.turning_rpm / 60, cutting_Nm, E_Pa, area_m2, out.weightOnBit_N);
  if (input.su_kPa !== null && input.flow_m3s > 0) {
    const shear_Pa = jetWallShear_Pa(input.density_kgm3, input.nozzleVelocity_ms, kit.nozzle_m, STAND_OFF_m);
    rate_ms += jetErosion_ms(shear_Pa, input.tauC_Pa);
  }
  out.rate_ms = rate_ms * fillFactor(input.bed_m, input.load_frac);
}
