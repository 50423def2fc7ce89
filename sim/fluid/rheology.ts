// How thick the fluid is: power-law K and n from soaked polymer, swollen bentonite, suspended fines and temperature.
import { clamp } from '../numeric/curve';
import { exp, ln } from '../numeric/functions';
import { POLYMER } from '../materials/polymer';
import { waterViscosity_Pas } from '../materials/water';
import { addBentonite } from './bentonite';
import type { FluidMakeup } from './makeup';

/** Power law: shear stress = K (shear rate)^n. */
export interface Rheology {
  K_Pasn: number;
  n_ratio: number;
}

const REFERENCE_Pas = waterViscosity_Pas(POLYMER.reference_C);

/** Packed volume fraction at which a suspension of fines stops flowing (Krieger & Dougherty 1959: .6-.64), and the most we let it reach. */
const PACKED_frac = 0.6;
const MOST_FINES_frac = 0.5;

/**
 * Times the viscosity grows through suspended clay and silt: (1 - phi/.6)^(-1.5), phi their volume fraction, 0-0.5
 * (held there); clay counts with the water in its flocs (makeup.ts). Krieger & Dougherty 1959, Trans. Soc. Rheol. 3:137, with
 * Einstein's 2.5 as slope at phi 0 (from memory). Worked value: phi .1 -> 1.3145.
 */
export function finesThickening_ratio(fines_frac: number): number {
  const loose = 1 - clamp(fines_frac, 0, MOST_FINES_frac) / PACKED_frac;
  return 1 / (loose * Math.sqrt(loose));
}

/**
 * Writes K and n of the fluid into out.
 * soaked_gL: soaked polymer per litre, 0-10 (higher values stay finite). bentonite_gL: swollen bentonite that salt has left
 * alone, 0-150. fines_frac: volume fraction of suspended silt and of clay with its flocs.
 * temperature_C: 0-40. The polymer's own part is Kp = .05 c^1.8 and n_p = .72 - .12 ln c within .35..1 at 25 C; it joins water as
 *   K = (mu(T)/mu(25)) (mu(25) + Kp) fines,   n = 1 - s (1 - n_p),   s = Kp/(mu(25) + Kp),
 * then bentonite's stress is added (bentonite.ts) before temperature and fines scale K,
 * so that c = 0 is exactly water (n = 1), nothing jumps, K rises and n falls with the dose, and the viscosity at any shear
 * rate up to 5e4 1/s never falls with the dose. Polymer law and join ASSUMED (calibration between guar and xanthan).
 * Worked value: 1.3 g/L, no fines, 25 C -> K .08107, n .6919.
 */
export function rheologyInto(
  out: Rheology,
  soaked_gL: number,
  bentonite_gL: number,
  fines_frac: number,
  temperature_C: number,
): Rheology {
  const thin_Pas = waterViscosity_Pas(temperature_C) * finesThickening_ratio(fines_frac);
  if (!(soaked_gL > 0) && !(bentonite_gL > 0)) {
    out.K_Pasn = thin_Pas;
    out.n_ratio = 1;
    return out;
  }
  polymerInto(out, soaked_gL);
  addBentonite(out, bentonite_gL);
  out.K_Pasn *= thin_Pas / REFERENCE_Pas;
  return out;
}

/** The same for a body of fluid. */
export const rheologyOf = (
  out: Rheology,
  { soaked_gL, activeBentonite_gL, thickFines_frac }: FluidMakeup,
  temperature_C: number,
): Rheology => rheologyInto(out, soaked_gL, activeBentonite_gL, thickFines_frac, temperature_C);

/** Water with polymer at the temperature of the laws. */
function polymerInto(out: Rheology, soaked_gL: number): void {
  if (!(soaked_gL > 0)) {
    out.K_Pasn = REFERENCE_Pas;
    out.n_ratio = 1;
    return;
  }
  // One logarithm serves both laws: c^1.8 is exp(1.8 ln c).
  const logDose = ln(soaked_gL);
  const polymer_Pasn = POLYMER.consistency_1gL * exp(POLYMER.power * logDose);
  const index = clamp(POLYMER.index_1gL - POLYMER.indexFall * logDose, POLYMER.indexLeast, 1);
  out.K_Pasn = REFERENCE_Pas + polymer_Pasn;
  out.n_ratio = 1 - (polymer_Pasn / out.K_Pasn) * (1 - index);
}
