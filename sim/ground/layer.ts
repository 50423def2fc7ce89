// One layer of a ground profile with all its own parameters: behaviour follows from these, never from the kind's name.
import type { ColourWord, SoilKind } from '../materials/soils';

export type { ColourWord, SoilKind };

export interface Layer {
  kind: SoilKind;
  top_m: number;
  bottom_m: number;
  d10_mm: number;
  d30_mm: number;
  d50_mm: number;
  d60_mm: number;
  d85_mm: number;
  porosity_frac: number;
  /** Hydraulic conductivity to water at 20 C. */
  K_ms: number;
  Sy_frac: number;
  /** Undrained shear strength at its shallowest; null: drained ground. */
  su_kPa: number | null;
  suGrowth_ratio: number;
  cAbove_kPa: number;
  cBelow_kPa: number;
  capillaryRise_m: number;
  phi_deg: number | null;
  /** Specific energy of drilling; null: refuses the bit. */
  E_MPa: number | null;
  tauC_Pa: number;
  swell_ratio: number;
  grainDensity_kgm3: number;
  colour: ColourWord;
  /** Share of the grains, by volume, in each of the eight size classes; with cobble_frac they add up to 1. */
  fractions: number[];
  cobble_frac: number;
}
