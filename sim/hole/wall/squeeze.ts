// Squeeze: clay too weak for the weight above it comes into the hole.
import { exp, expm1 } from '../../numeric/functions';

/** Stiffness of clay against its strength, G/su. ASSUMED: 100. */
const RIGIDITY_ratio = 100;
/** Time constant of coming in, s. ASSUMED: half an hour. */
const COMES_IN_s = 1800;
/** Beyond this the hole is closed many times over: no more is reckoned. */
const MOST_RATIO = 12;

/** Stability ratio of clay (Broms & Bennermark 1967): (total stress - fluid pressure)/su. Worked value: 360 kPa, 206 kPa, su 25 kPa -> 6.16. */
export const overload_ratio = (total_Pa: number, fluid_Pa: number, su_kPa: number): number =>
  (total_Pa - fluid_Pa) / (1000 * su_kPa);

/**
 * Inward movement of the wall of a round hole in clay in the end, as a share of its radius: exp(N - 1)/(2 G/su), and N/(2 G/su) while the clay is elastic (N <= 1).
 * Source: closure of a cylinder in elastic, perfectly plastic ground (Gibson & Anderson 1961 turned round, from memory). N above -10.
 * Worked values: N 3 -> .0369; N 5 -> .273; N 6.3 -> 1.002 (closed).
 */
export function closure_ratio(N: number): number {
  if (N <= 0) return 0;
  return (N <= 1 ? N : exp(Math.min(N, MOST_RATIO) - 1)) / (2 * RIGIDITY_ratio);
}

/** Share of what is still to come that comes in dt_s. Worked value: 1800 s -> .632. */
export const comesIn_frac = (dt_s: number): number => -expm1(-dt_s / COMES_IN_s);
