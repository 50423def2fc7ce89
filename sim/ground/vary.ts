// One layer's own parameters: those of its kind, varied within what one kind of ground shows from place to place.
import { exp, ln } from '../numeric/functions';
import type { Stream } from '../numeric/stream';
import { SOILS, type ColourWord, type Soil, type SoilKind } from '../materials/soils';
import { layerConductivity_ms } from './conductivity';
import { fractionsOf } from './gradation';
import type { Layer } from './layer';

/** Factors between .7 and 1.4, evenly spread in their logarithm; porosity within .03 of the kind's. ASSUMED. */
const LEAST_ratio = 0.7;
const DOUBLE_LN = ln(2);
const POROSITY_HALF = 0.03;
/** How often the landscape's tint hides the kind's own colour. ASSUMED. */
const TINTED_frac = 0.8;

/** .7 * 2^u */
const factor = (u: number): number => LEAST_ratio * exp(u * DOUBLE_LN);

const scaled = (value: number | null, by: number): number | null => (value === null ? null : value * by);

/** Colour of the ground: what air has made of it above the lowest water level, grey (or the kind's own) below. */
export function colourOf(
  soil: Soil,
  aerated: boolean,
  tint: ColourWord | null,
  uTint: number,
  uKind: number,
): ColourWord {
  const own = aerated ? soil.oxidised : soil.reduced;
  if (aerated && tint !== null && own[0] !== 'black' && uTint < TINTED_frac) return tint;
  return own[Math.floor(uKind * own.length)];
}

/**
 * A layer of a kind between two depths. Draws six numbers, whatever the kind, so that one layer's kind does not shift the
 * draws of the next.
 */
export function variedLayer(
  kind: SoilKind,
  top_m: number,
  bottom_m: number,
  aerated: boolean,
  tint: ColourWord | null,
  stream: Stream,
): Layer {
  const soil = SOILS[kind];
  const size = factor(stream.uniform());
  const porosity_frac = soil.porosity_frac + POROSITY_HALF * (2 * stream.uniform() - 1);
  const strength = factor(stream.uniform());
  const energy = factor(stream.uniform());
  const uTint = stream.uniform();
  const uKind = stream.uniform();
  const sizes = {
    d10_mm: soil.d10_mm * size,
    d30_mm: soil.d30_mm * size,
    d50_mm: soil.d50_mm * size,
    d60_mm: soil.d60_mm * size,
    d85_mm: soil.d85_mm * size,
  };
  return {
    kind,
    top_m,
    bottom_m,
    ...sizes,
    porosity_frac,
    K_ms: layerConductivity_ms(soil, size),
    Sy_frac: soil.Sy_frac,
    su_kPa: scaled(soil.su_kPa, strength),
    suGrowth_ratio: soil.suGrowth_ratio,
    cAbove_kPa: soil.cAbove_kPa,
    cBelow_kPa: soil.cBelow_kPa,
    capillaryRise_m: soil.capillaryRise_m,
    phi_deg: soil.phi_deg,
    E_MPa: scaled(soil.E_MPa, energy),
    tauC_Pa: soil.tauC_Pa,
    swell_ratio: soil.swell_ratio,
    grainDensity_kgm3: soil.grainDensity_kgm3,
    colour: colourOf(soil, aerated, tint, uTint, uKind),
    ...fractionsOf(sizes),
  };
}
