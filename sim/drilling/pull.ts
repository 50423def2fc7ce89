// What it takes to lift the stem, and the chance to free it.
import { exp } from '../numeric/functions';
import type { Kit } from '../materials/kit';
import { hangingWeight_N } from './weight';

/** Drag of a bed round the stem, N/m and N/m2; share of the undrained strength that a tight clay hole grips with. ASSUMED. */
const BED_N_m = 300;
const BED_N_m2 = 1500;
const GRIP_frac = 0.3;
/** Best chance of one try, and height of bed over which it falls to a third. ASSUMED. */
const BEST_CHANCE = 0.5;
const CHANCE_m = 0.5;

/**
 * Pull on the rope, N: weight + 300 h + 1500 h^2 for a bed h m high round the stem, + 2 pi r L .3 su where the hole is tighter
 * than the bit over L m. ASSUMED. Worked value: default kit, 20 m, bed .5 m, 1000 kg/m3 -> 459.5 + 525 = 984.5.
 */
export function pull_N(
  kit: Kit,
  stemLength_m: number,
  density_kgm3: number,
  bed_m: number,
  tightLength_m: number,
  su_kPa: number,
): number {
  const bed_N = BED_N_m * bed_m + BED_N_m2 * bed_m * bed_m;
  const grip_N = Math.PI * kit.bit_m * tightLength_m * GRIP_frac * su_kPa * 1000;
  return hangingWeight_N(kit, stemLength_m, density_kgm3) + bed_N + grip_N;
}

/** Chance that one try of working the stem frees it: .5 (Q/Q_nominal) exp(-h/.5), at most 1. ASSUMED. Worked value: full flow, bed 0 -> .5. */
export function freeingChance(flow_m3s: number, nominal_m3s: number, bed_m: number): number {
  return Math.min(1, ((BEST_CHANCE * flow_m3s) / nominal_m3s) * exp(-bed_m / CHANCE_m));
}
