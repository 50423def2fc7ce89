// What it takes to lift the stem, and the chance to free it.
import { exp, pow } from '../numeric/functions';
import type { Kit } from '../materials/kit';
import { hangingWeight_N } from './weight';

/** Drag of a bed round the stem, N/m and N/m2; share of the undrained strength that a tight clay hole grips with. ASSUMED. */
const BED_N_m = 300;
const BED_N_m2 = 1500;
const GRIP_frac = 0.3;
/** One try of working the stem lasts this long, s. ASSUMED: a minute of pulling and letting go. */
const TRY_s = 60;
/** Best chance of one try, and height of bed over which it falls to a third. ASSUMED. */
const BEST_CHANCE = 0.5;
const CHANCE_m = 0.5;

/** Force of a wall of clay that grips the bit's girth over a length, N: pi D L .3 su. ASSUMED. Worked value: .1 m, .3 m, 20 kPa -> 565.5. */
export function grip_N(bit_m: number, length_m: number, su_kPa: number): number {
  return Math.PI * bit_m * length_m * GRIP_frac * su_kPa * 1000;
}

/** What the rope bears beyond the stem's own weight, N: 300 h + 1500 h^2 for a bed h m high round it, and the grip. Worked value: h .5, no grip -> 525. */
export function drag_N(bed_m: number, gripped_N: number): number {
  return BED_N_m * bed_m + BED_N_m2 * bed_m * bed_m + gripped_N;
}

/**
 * Pull on the rope, N: weight + 300 h + 1500 h^2 for a bed h m high round the stem, + 2 pi r L .3 su where the hole is tighter
 * than the bit and holds it over L m (see grip.ts). ASSUMED. Worked value: default kit, 20 m, bed .5 m, 1000 kg/m3 -> 459.5 + 525 = 984.5.
 */
export function pull_N(
  kit: Kit,
  stemLength_m: number,
  density_kgm3: number,
  bed_m: number,
  tightLength_m: number,
  su_kPa: number,
): number {
  const gripped_N = grip_N(kit.bit_m, tightLength_m, su_kPa);
  return hangingWeight_N(kit, stemLength_m, density_kgm3) + drag_N(bed_m, gripped_N);
}

/** Chance that one try of working the stem frees it: .5 (Q/Q_nominal) exp(-h/.5), at most 1. ASSUMED. Worked value: full flow, bed 0 -> .5. */
export function freeingChance(flow_m3s: number, nominal_m3s: number, bed_m: number): number {
  return Math.min(1, ((BEST_CHANCE * flow_m3s) / nominal_m3s) * exp(-bed_m / CHANCE_m));
}

/** Chance that working the stem for time_s frees it: tries of a minute one after another, 1 - (1 - p)^(t/60). Worked value: p .5, 120 s -> .75. */
export function freeingChanceOver(chance: number, time_s: number): number {
  return 1 - pow(1 - Math.min(1, Math.max(0, chance)), time_s / TRY_s);
}

/** Share of what the crew can pull beyond the stem's weight that the drag takes; over 1 it holds. A crew knows what its stem weighs. Worked value: 525 N, 1500 N, 459.5 N -> .5046. */
export function dragShare(pulled_N: number, weight_N: number, limit_N: number): number {
  const left_N = limit_N - weight_N;
  return left_N > 0 ? (pulled_N - weight_N) / left_N : 2;
}
