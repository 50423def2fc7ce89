// What a body of fluid is made of, per litre of its water: all that its thickness, its weight and its cake follow from.
import { BENTONITE } from '../materials/bentonite';
import { saltKeeps_frac } from './bentonite';

export interface FluidMakeup {
  soaked_gL: number;
  /** All bentonite, swollen or not: it weighs. */
  bentonite_gL: number;
  salt_gL: number;
  /** Clay and silt as a volume fraction of the fluid. */
  fines_frac: number;
  /** Swollen bentonite that salt has left alone: it thickens and seals. */
  activeBentonite_gL: number;
  /** Clay and silt with all other bentonite: plain clay. */
  plainFines_frac: number;
}

export const createMakeup = (): FluidMakeup => ({
  soaked_gL: 0,
  bentonite_gL: 0,
  salt_gL: 0,
  fines_frac: 0,
  activeBentonite_gL: 0,
  plainFines_frac: 0,
});

/**
 * Fills out from masses, kg, the water they are in, m3, and the volume fraction of clay and silt. Bentonite that has not
 * swollen, or that salt has clotted, acts as plain clay. Without water only the fines count.
 * Worked value: 1 m3 with 40 kg swollen, 10 kg not, 8 kg of salt -> 20 g/L active, 30/2600 plain fines.
 */
export function makeupInto(
  out: FluidMakeup,
  soaked_kg: number,
  bentonite_kg: number,
  swelling_kg: number,
  salt_kg: number,
  water_m3: number,
  fines_frac: number,
): void {
  const perLitre = water_m3 > 0 ? 1 / water_m3 : 0;
  out.soaked_gL = soaked_kg * perLitre;
  out.salt_gL = salt_kg * perLitre;
  out.fines_frac = fines_frac;
  out.bentonite_gL = (bentonite_kg + swelling_kg) * perLitre;
  out.activeBentonite_gL = bentonite_kg > 0 ? bentonite_kg * perLitre * saltKeeps_frac(out.salt_gL) : 0;
  out.plainFines_frac = fines_frac + (out.bentonite_gL - out.activeBentonite_gL) / BENTONITE.grain_kgm3;
}
