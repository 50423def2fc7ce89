// Bentonite in the fluid: how it swells, what salt leaves of it, how thick it makes the rest.
import { clamp } from '../numeric/curve';
import { exp, ln, pow } from '../numeric/functions';
import { BENTONITE, SALT_HALVES_gL } from '../materials/bentonite';
import { POLYMER } from '../materials/polymer';
import type { Rheology } from './rheology';

/**
 * Time constant of swelling, s, at a temperature in C: 60 % after 30 min at 25 C, twice as long for 15 C less, as for polymer
 * (ASSUMED). Worked value: 25 C -> 1964.4.
 */
export function swellTime_s(temperature_C: number): number {
  const at25_s = BENTONITE.swollenAfter_s / -ln(1 - BENTONITE.swollen_frac);
  return at25_s * pow(2, (POLYMER.reference_C - temperature_C) / POLYMER.soakDoubling_C);
}

/**
 * Share of the swollen bentonite that still works in water with salt_gL of salt, 0-1: 1/(1 + (s/8)^2). The rest has clotted into
 * plain clay. Smooth, 1 without salt. ASSUMED, between fresh water (all) and sea water (next to nothing): handbooks, from memory.
 * Worked value: 8 g/L -> .5.
 */
export function saltKeeps_frac(salt_gL: number): number {
  const share = Math.max(0, salt_gL) / SALT_HALVES_gL;
  return 1 / (1 + share * share);
}

/** The power law of fluid and bentonite is drawn through their stresses at these two shear rates: still pit and funnel. */
const LOW_SHEAR_1s = 0.1;
const HIGH_SHEAR_1s = 3000;
const LOW_LOG = ln(LOW_SHEAR_1s);
const HIGH_LOG = ln(HIGH_SHEAR_1s);
const CONSISTENCY_LOG = ln(BENTONITE.consistency_Pasn);

/**
 * Adds the stress of swollen bentonite to a fluid's power law, in place, at 25 C. Bentonite alone has K = .05 (c/40)^5.84 and
 * n = .68 - .53 ln(c/40) within .35..1; the two stresses are added at .1 and 3000 1/s, and one power law is drawn through both.
 * Nothing changes without bentonite, nothing jumps, and between those shear rates no fluid gets thinner with more (ASSUMED:
 * clay and polymer do not act on each other). bentonite_gL 0-150; higher stays finite.
 * Worked value: water (.00089, 1) and 64 g/L -> K .7965, n .4409.
 */
export function addBentonite(fluid: Rheology, bentonite_gL: number): void {
  if (!(bentonite_gL > 0)) return;
  const log = ln(bentonite_gL / BENTONITE.reference_gL);
  const index = clamp(BENTONITE.index - BENTONITE.indexFall * log, BENTONITE.indexLeast, 1);
  const logK = CONSISTENCY_LOG + BENTONITE.power * log;
  const low_Pa = fluid.K_Pasn * exp(fluid.n_ratio * LOW_LOG) + exp(logK + index * LOW_LOG);
  const high_Pa = fluid.K_Pasn * exp(fluid.n_ratio * HIGH_LOG) + exp(logK + index * HIGH_LOG);
  const n_ratio = Math.min(1, ln(high_Pa / low_Pa) / (HIGH_LOG - LOW_LOG));
  fluid.n_ratio = n_ratio;
  fluid.K_Pasn = low_Pa * exp(-n_ratio * LOW_LOG);
}
