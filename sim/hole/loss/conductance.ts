// How fast one metre of wall drinks, or gives, at a difference of head: round the hole a ring that holds the lost fluid, ground
// water outside it, a cake on the wall.
import { exp, expm1, ln } from '../../numeric/functions';
import { waterViscosity_Pas } from '../../materials/water';
import { REACH_m } from './front';

/** Unit weight of water, N/m3: heads are in metres of fresh water. */
export const WATER_Nm3 = 9810;
/** K is the conductivity to water of this viscosity, Pa s. */
const REFERENCE_Pas = waterViscosity_Pas(20);
const LOG_2PI = ln(2 * Math.PI);
/** An index this close to 1 is taken for 1: the two laws agree there to fourteen digits. */
const NEWTONIAN = 1e-12;
/** The search ends with a step below this share of the flow: what is left is its square. */
const SETTLED_ratio = 1e-2;
const MOST_STEPS = 60;

/** What the law asks for. The logarithms are of numbers that seldom change, and so are not worked out anew for each look. */
export interface LossLaw {
  radius_m: number;
  K_ms: number;
  /** reachLog, poreLog, frontLog, indexLog: see the functions below and frontRadius_m: ln(front/r). */
  reachLog: number;
  poreLog: number;
  frontLog: number;
  indexLog: number;
  K_Pasn: number;
  n_ratio: number;
  /** Thickness over conductivity of the cake, s. */
  cake_s: number;
}

export const createLossLaw = (): LossLaw => ({
  radius_m: 0.05,
  K_ms: 0,
  reachLog: 0,
  poreLog: 0,
  frontLog: 0,
  indexLog: 0,
  K_Pasn: REFERENCE_Pas,
  n_ratio: 1,
  cake_s: 0,
});

/** Intrinsic permeability, m2: K mu/(rho g), mu of water at 20 C. Worked value: 1e-4 m/s -> 1.0214e-11. */
export const permeability_m2 = (K_ms: number): number => (K_ms * REFERENCE_Pas) / WATER_Nm3;

/** ln(R/r): the whole ring from the wall to the radius of influence; 0 in a hole as wide as that. Worked value: .05 m -> 4.6052. */
export const reachLogOf = (radius_m: number): number => (radius_m < REACH_m ? ln(REACH_m / radius_m) : 0);

/**
 * ln(r sqrt(8 k phi)/4): turns flow per metre into the shear rate in the pores, 4 v/sqrt(8 k phi), v the Darcy velocity (bundle of
 * equal tubes; Bird, Stewart & Lightfoot, from memory). Worked value: .05 m, 1e-4 m/s, .42 -> -16.4297.
 */
export const poreLogOf = (radius_m: number, K_ms: number, porosity_frac: number): number =>
  ln((radius_m * Math.sqrt(8 * permeability_m2(K_ms) * porosity_frac)) / 4);

/** ln(4n/(3n+1)): a power law shears faster at the wall of a tube than water does (Rabinowitsch). Worked value: .5 -> -.22314. */
export const indexLogOf = (n_ratio: number): number => (n_ratio === 1 ? 0 : ln((4 * n_ratio) / (3 * n_ratio + 1)));

/**
 * Flow per metre of wall, m2/s, at head_m above 0 (metres of water; for flow into the hole give the amount and turn the sign):
 *   rho g dh = (q/2pi)^n C (r_i^(1-n) - r^(1-n))/(1-n) + q rho g [ln(R/r_i)/(2 pi K) + delta/(2 pi r K_c)],
 *   C = K_pl [(3n+1)/(4n) 4/sqrt(8 k phi)]^(n-1)/k:
 * a power-law fluid in the ring r to r_i (Bird, Stewart & Lightfoot, from memory), ground water from there to R (Thiem 1906), the
 * cake's resistance. n .3-1; at n = 1 the first term is q (K_pl/mu) ln(r_i/r)/(2 pi K). guess_m2s: flow of the look before, 0 for
 * none. Right to 5e-5 of itself. Newton steps; the left side is concave in q, so after one step they rise to the answer.
 * Worked value: K 1e-4 m/s, r .05, no ring, no cake, 1 m -> 2 pi 1e-4/ln(100) = 1.3644e-4.
 */
export function flowPerMetre_m2s(head_m: number, law: LossLaw, guess_m2s: number): number {
  const { frontLog, n_ratio, cake_s } = law;
  const ground_sm = 1 / (2 * Math.PI * law.K_ms);
  const outerLog = law.reachLog > frontLog ? law.reachLog - frontLog : 0;
  const straight = outerLog * ground_sm + cake_s / (2 * Math.PI * law.radius_m);
  const thick_ratio = law.K_Pasn / REFERENCE_Pas;
  const thinning = 1 - n_ratio;
  if (thinning < NEWTONIAN) return head_m / (straight + thick_ratio * frontLog * ground_sm);
  if (!(frontLog > 0)) return head_m / straight;
  const ring = ((thick_ratio / law.K_ms) * expm1(thinning * frontLog)) / thinning;
  const shift = thinning * (law.poreLog + law.indexLog) - n_ratio * LOG_2PI;
  let q = guess_m2s > 0 ? guess_m2s : head_m / (straight + thick_ratio * frontLog * ground_sm);
  for (let step = 0; step < MOST_STEPS; step++) {
    const inRing_m = ring * exp(n_ratio * ln(q) + shift);
    const whole_m = inRing_m + straight * q;
    const share = head_m / whole_m;
    // Neither bound lies above the answer: head grows with the flow at most as fast as the flow, at least as its n-th power.
    const least = share > 1 ? q * share : q * share * share * share * share;
    const newton = q + (head_m - whole_m) / ((n_ratio * inRing_m) / q + straight);
    const next = newton > least ? newton : least;
    const settled = Math.abs(next - q) <= SETTLED_ratio * q;
    q = next;
    if (settled) break;
  }
  return q;
}
