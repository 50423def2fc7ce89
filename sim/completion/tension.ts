// What pull, push and jerk along its length a pipe stands.
import { PVC, type Casing } from '../materials/pipes';
import { clamp } from '../numeric/curve';
import { GRAVITY_MS2 } from '../numeric/units';

/**
 * Force with which a crew of two works a hung casing, N. ASSUMED: two people throw their weight on it.
 * The ends of a slot raise the stress: strength of a slotted pipe beside its section left. ASSUMED: sharp saw cuts halve it.
 * A joint reaches its full strength after so many times the setting time: 30 min for 5 min (a maker's table).
 */
export const WORKING_N = 1200;
const NOTCH_ratio = 0.5;
const CURED_ratio = 6;

/** Section of the wall, m2: pi t (D - t). Worked value: 63 x 3.0 -> 565e-6. */
export const wallArea_m2 = ({ outside_m, wall_m }: Casing): number => Math.PI * wall_m * (outside_m - wall_m);

/** Strength of the plain pipe along its length, N: design stress x wall area (Moser, table 4.5). Worked value: 63 x 3.0 -> 7800. */
export const axial_N = (pipe: Casing): number => PVC.designStress_Pa * wallArea_m2(pipe);

/** Strength at the slots, N: section left, halved by the notches; section_frac 1 is a plain pipe. Worked value: 63 x 1.9, .3937 -> 991. */
export function slotted_N(pipe: Casing, section_frac: number): number {
  return axial_N(pipe) * (section_frac < 1 ? NOTCH_ratio * section_frac : 1);
}

/**
 * Share of the pipe's strength that a solvent joint has after so long, 0 to 1: even growth to all of it at six setting times.
 * ASSUMED form; cured joints held strings of over 300 m (Kurt and Pate 1981). Worked value: 5 min old, sets in 5 -> .1667.
 */
export const jointStrength_frac = (age_s: number, sets_s: number): number =>
  clamp(age_s / (CURED_ratio * sets_s), 0, 1);

/** Weight of the dry pipe, N/m. Worked value: 63 x 3.0, .792 kg/m -> 7.77. */
export const pipeWeight_N = (pipe: Casing, length_m: number): number =>
  PVC.density_kgm3 * wallArea_m2(pipe) * length_m * GRAVITY_MS2;
