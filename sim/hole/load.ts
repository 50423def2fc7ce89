// Weight of the fluid with what it carries.
import { mixtureDensity_kgm3 } from '../fluid/density';
import { BENTONITE } from '../materials/bentonite';
import { waterDensity_kgm3 } from '../materials/water';
import { GRAIN_kgm3 } from './slip';

/** Water of 20 C throughout the circuit: its density changes by .2 % over the temperatures of the trade. */
const WATER_kgm3 = waterDensity_kgm3(20);

/** Salt water weighs this much more for each g/L: sea water of 35 g/L 1025 kg/m3 at 20 C (standard value, from memory). */
const SALT_LIFT = 0.76;

/** Bentonite is too fine to count as a size class, but it weighs. */
const BENTONITE_LIFT = 1 - WATER_kgm3 / BENTONITE.grain_kgm3;

/** A paste stiffer than this, g of bentonite per litre of water, and a brine beyond saturation (20 C, standard value, from memory) weigh no more: a pit all but dry holds such. */
const PASTE_gL = 1000;
const BRINE_gL = 358;

/**
 * Density of water with grains, bentonite and salt, kg/m3. solids_frac c: grain volume fraction 0-1; bentonite_gL b: per litre of water,
 * whose place its grains take: rho_w + c (rho_s - rho_w) + b (1 - c)(1 - rho_w/2600),
 * and .76 for each g/L of salt s; b counts up to 1000, s to 358, so that no fluid is heavier than its grains. Worked values: .05, 0 -> 1080.8; 0, 60 -> 1035.2; 0, 0, 35 -> 1024.8.
 */
export const suspensionDensity_kgm3 = (solids_frac: number, bentonite_gL = 0, salt_gL = 0): number =>
  mixtureDensity_kgm3(WATER_kgm3, solids_frac, GRAIN_kgm3) +
  (1 - solids_frac) * (Math.min(PASTE_gL, bentonite_gL) * BENTONITE_LIFT + Math.min(BRINE_gL, salt_gL) * SALT_LIFT);
