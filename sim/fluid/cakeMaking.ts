// What the fluid lays on the wall as it soaks into the ground: how much cake, and how tight.
import { BENTONITE } from '../materials/bentonite';
import { NATIVE_CLAY } from '../materials/nativeClay';
import { POLYMER } from '../materials/polymer';

export interface CakeMaking {
  /** Volume of cake laid down per volume of water that goes through it; 0: clean water. */
  perFiltrate_ratio: number;
  /** Hydraulic conductivity of that cake, m/s, to water. */
  conductivity_ms: number;
}

/** The cake takes up at most this share of the fluid that comes to the wall: beyond it the fluid is itself a paste. ASSUMED. */
const MOST_PACKED_frac = 0.9;

/**
 * Cake per filtrate, x/(1 - x), x = sum of phi/f: solids of volume fraction phi pack to f and keep the rest of the cake's
 * volume as pore water (balance of solids, textbook: f_sm/(f_sc - f_sm) for one kind). packed_frac x 0-.9, held there.
 * Worked value: 5 % of solids that pack to 60 % -> 1/11.
 */
export function cakePerFiltrate_ratio(packed_frac: number): number {
  const packed = packed_frac < MOST_PACKED_frac ? Math.max(0, packed_frac) : MOST_PACKED_frac;
  return packed / (1 - packed);
}

/**
 * Cake of a fluid into out. soaked_gL, bentonite_gL: soaked polymer and swollen bentonite, g/L; fines_frac: suspended clay and
 * silt, volume fraction. Bentonite and fines pack by balance of solids; polymer lays down .01 of the filtrate at the working
 * dose, in proportion. Resistances add, as if each lay in a layer of its own:
 *   perFiltrate/conductivity = sum of the same for polymer, bentonite and fines (ASSUMED),
 * so that more of anything never seals less, and nothing jumps. Without anything in the water, perFiltrate is 0 and the
 * conductivity that of the polymer's membrane. Worked value: 1.3 g/L of polymer alone -> .01, 1e-7.
 */
export function cakeMakingInto(
  out: CakeMaking,
  soaked_gL: number,
  bentonite_gL: number,
  fines_frac: number,
): CakeMaking {
  const membrane = POLYMER.cakePerFiltrate_ratio * (Math.max(0, soaked_gL) / POLYMER.workingDose_gL);
  const bentonite = Math.max(0, bentonite_gL) / (BENTONITE.grain_kgm3 * BENTONITE.cakeSolids_frac);
  const fines = Math.max(0, fines_frac) / NATIVE_CLAY.cakeSolids_frac;
  const packed = bentonite + fines;
  if (!(membrane + packed > 0)) {
    out.perFiltrate_ratio = 0;
    out.conductivity_ms = POLYMER.cakeConductivity_ms;
    return out;
  }
  const mineral = cakePerFiltrate_ratio(packed);
  let resistance = membrane / POLYMER.cakeConductivity_ms;
  if (packed > 0) {
    const layers = bentonite / BENTONITE.cakeConductivity_ms + fines / NATIVE_CLAY.cakeConductivity_ms;
    resistance += (mineral / packed) * layers;
  }
  out.perFiltrate_ratio = membrane + mineral;
  out.conductivity_ms = out.perFiltrate_ratio / resistance;
  return out;
}
