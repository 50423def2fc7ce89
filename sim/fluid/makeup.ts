// What a body of fluid is made of, per litre of its water: all that its thickness, its weight and its cake follow from.
import { BENTONITE } from '../materials/bentonite';
import { NATIVE_CLAY } from '../materials/nativeClay';
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
  /** Clay and silt with all other bentonite, which acts as plain clay. */
  plainFines_frac: number;
  /** The same as thick as it acts: clay in flocs, silt in grains. */
  thickFines_frac: number;
}

export const createMakeup = (): FluidMakeup => ({
  soaked_gL: 0,
  bentonite_gL: 0,
  salt_gL: 0,
  fines_frac: 0,
  activeBentonite_gL: 0,
  plainFines_frac: 0,
  thickFines_frac: 0,
});

/**
 * Fills out from masses, kg, the water they are in, m3, and the volume fractions of clay and silt together
 * and of clay alone. Bentonite that has not
 * swollen, or that salt has clotted, acts as plain clay; plain clay
 * thickens like five times its volume. Without water only the fines count.
 * Worked value: 1 m3 with 40 kg swollen, 10 kg not, 8 kg of salt -> 20 g/L active, 30/2600 plain fines,
 * five times that thick.
 */
export function makeupInto(
  out: FluidMakeup,
  soaked_kg: number,
  bentonite_kg: number,
  swelling_kg: number,
  salt_kg: number,
  water_m3: number,
  fines_frac: number,
  clay_frac: number,
): void {
  const perLitre = water_m3 > 0 ? 1 / water_m3 : 0;
  out.soaked_gL = soaked_kg * perLitre;
  out.salt_gL = salt_kg * perLitre;
  out.fines_frac = fines_frac;
  out.bentonite_gL = (bentonite_kg + swelling_kg) * perLitre;
  out.activeBentonite_gL = bentonite_kg > 0 ? bentonite_kg * perLitre * saltKeeps_frac(out.salt_gL) : 0;
  const idle_frac = (out.bentonite_gL - out.activeBentonite_gL) / BENTONITE.grain_kgm3;
  out.plainFines_frac = fines_frac + idle_frac;
  out.thickFines_frac = out.plainFines_frac + (NATIVE_CLAY.floc_ratio - 1) * (clay_frac + idle_frac);
}
