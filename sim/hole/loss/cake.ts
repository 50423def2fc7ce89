// The cake or membrane that the lost fluid leaves on the wall: how it grows, and what takes it off again.
import { exp, ln } from '../../numeric/functions';

/** Thickest cake, m. ASSUMED: it is then as good as tight, and the stem rubs it. */
export const MOST_CAKE_m = 0.003;

/** Grain size d15 up to which the wall holds back all that makes cake, mm: Filz et al. 1997. */
const CAKE_D15_mm = 0.4;
/** Here it holds back little. ASSUMED: half as coarse again, so that nothing jumps. */
const COARSE_D15_mm = 0.6;
/** From here on the pores are open gravel and hold nothing back. ASSUMED. */
const OPEN_D15_mm = 1;
/** Share held back by coarse ground. ASSUMED. */
const COARSE_CAPTURE_frac = 0.15;

/** Shear stress of the stream at the wall above which it erodes the cake, Pa. ASSUMED. */
const ERODING_Pa = 5;
/** Time in which a stream of twice that stress takes the cake down to a half, s. ASSUMED. */
const ERODED_s = 120;
/** Time in which clean water takes it down to a half, s. ASSUMED: polymer dissolves as fast as it soaks. */
const WASHED_s = 600;
/** A fluid that makes this much cake per filtrate washes nothing off. ASSUMED: the working dose. */
const KEEPING_ratio = 0.01;
/** Half-life of a cake that ground water pushes off from behind, s. ASSUMED. */
const LIFT_OFF_s = 10;
/** Share that turning rods strip in an hour. ASSUMED. */
const STRIPPED_frac = 0.1;
const LOG_2 = ln(2);
/** The same in halvings per second. */
const STRIPPED_1s = -ln(1 - STRIPPED_frac) / (LOG_2 * 3600);

/**
 * Share of the cake-making matter that stays at the wall, 0-1, by the ground's d15, mm: 1 up to .4 (Filz et al. 1997: a cake forms
 * where d15 is below .4 mm), .15 at .6, 0 from 1 on; straight in the logarithm of d15 between. Worked value: sqrt(.24) -> .575.
 */
export function capture_frac(d15_mm: number): number {
  if (d15_mm <= CAKE_D15_mm) return 1;
  if (d15_mm >= OPEN_D15_mm) return 0;
  if (d15_mm < COARSE_D15_mm)
    return 1 - ((1 - COARSE_CAPTURE_frac) * ln(d15_mm / CAKE_D15_mm)) / ln(COARSE_D15_mm / CAKE_D15_mm);
  return (COARSE_CAPTURE_frac * ln(OPEN_D15_mm / d15_mm)) / ln(OPEN_D15_mm / COARSE_D15_mm);
}

/**
 * Resistance of the cake, thickness over conductivity, s, after dt_s of filtration: the cake grows by c for each volume that goes
 * through, and the flow falls as it grows, dS/dt = (c/K_c) dh/(rho + S), so
 *   (rho + S)^2 = (rho + S_0)^2 + 2 c dh dt/K_c.
 * before_s: S_0; ground_s: rho, head per Darcy velocity at the wall without cake, s; head_m above 0; perFiltrate_ratio: c;
 * conductivity_ms: K_c above 0. With rho = S_0 = 0 it grows with sqrt(t), as filter presses show (API RP 13B, from memory).
 * Worked value: 0, 256 s, 1 m, .01, 1e-7, 300 s -> 7494.2.
 */
export function grownResistance_s(
  before_s: number,
  ground_s: number,
  head_m: number,
  perFiltrate_ratio: number,
  conductivity_ms: number,
  dt_s: number,
): number {
  const whole_s = ground_s + before_s;
  const grown = Math.sqrt(whole_s * whole_s + (2 * perFiltrate_ratio * head_m * dt_s) / conductivity_ms) - ground_s;
  return grown > before_s ? grown : before_s;
}

/** The resistance grown from before_s to grown_s, or less where the cake, cake_m thick before, comes to its limit; s. */
export function limitedResistance_s(
  before_s: number,
  grown_s: number,
  cake_m: number,
  conductivity_ms: number,
): number {
  const most_s = before_s + Math.max(0, MOST_CAKE_m - cake_m) / conductivity_ms;
  return grown_s < most_s ? grown_s : most_s;
}

/**
 * Share of the cake that the fluid leaves in dt_s: 2^(-dt x sum of rates), the rates in halvings per second. shear_Pa: of the stream at
 * the wall, (tau/5 - 1)/120 above 5 Pa; turning: rods beside it take 10 % an hour; perFiltrate_ratio: what the fluid would lay down, 0
 * for clean water, (1 - c/.01)/600 below c = .01. ASSUMED, all of them. Worked value: clean still water, 600 s -> .5.
 */
export function keptCake_frac(shear_Pa: number, turning: boolean, perFiltrate_ratio: number, dt_s: number): number {
  let halvings_1s = turning ? STRIPPED_1s : 0;
  if (shear_Pa > ERODING_Pa) halvings_1s += (shear_Pa / ERODING_Pa - 1) / ERODED_s;
  if (perFiltrate_ratio < KEEPING_ratio) halvings_1s += (1 - perFiltrate_ratio / KEEPING_ratio) / WASHED_s;
  return halvings_1s > 0 ? exp(-LOG_2 * halvings_1s * dt_s) : 1;
}

/** Share that ground water leaves that comes in behind it for dt_s: half of it goes in 10 s. ASSUMED. Worked value: 20 s -> .25. */
export const keptByInflow_frac = (dt_s: number): number => exp((-LOG_2 * dt_s) / LIFT_OFF_s);
