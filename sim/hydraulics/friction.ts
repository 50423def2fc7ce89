// Friction factor of water and power-law fluids in pipes, over all regimes, without a jump.
import { exp, ln, log10, pow } from '../numeric/functions';

/** Lower and upper end of the transition band, as Reynolds numbers: 3470 - 1370 n and 4270 - 1370 n (API RP 13D, in Guo & Liu 2011). */
const LAMINAR_END = 3470;
const TURBULENT_START = 4270;
const BAND_SLOPE = 1370;

/** Last laminar Reynolds number for flow index n, .2 to 1. Source: API RP 13D, in Guo & Liu 2011 ex. 2.6. Worked value: n .8 -> 2374. */
export const laminarEnd = (n_ratio: number): number => LAMINAR_END - BAND_SLOPE * n_ratio;

/** First turbulent Reynolds number for flow index n, .2 to 1. Same source. Worked value: n .8 -> 3174. */
export const turbulentStart = (n_ratio: number): number => TURBULENT_START - BAND_SLOPE * n_ratio;

/** Haaland's part of the wall, (e/3.7)^1.11, e = roughness / diameter, 0 to .05. Worked value: 1e-4 -> 8.498e-6. */
export const wallPart = (roughness_ratio: number): number =>
  roughness_ratio > 0 ? pow(roughness_ratio / 3.7, 1.11) : 0;

/**
 * Darcy friction factor of turbulent Newtonian flow (Haaland 1983): 1/sqrt f = -1.8 log10[(e/3.7)^1.11 + 6.9/Re].
 * reynolds: 4e3 to 1e8; rough: wallPart(e). Worked value: Re 1e5, e 1e-4 -> .018265.
 */
export function haaland(reynolds: number, rough: number): number {
  const root = -1.8 * log10(rough + 6.9 / reynolds);
  return 1 / (root * root);
}

/**
 * Fanning friction factor of a power-law fluid in a smooth pipe, turbulent: a / Re^b, a = (log10 n + 3.93)/50,
 * b = (1.75 - log10 n)/7 (API RP 13D, in Guo & Liu 2011). reynolds: Metzner & Reed, above the band. n_ratio: .2 to 1.
 * Worked value: n .5, Re 1e4 -> .004884.
 */
export function smoothPowerLaw(reynolds: number, n_ratio: number): number {
  const tilt = log10(n_ratio);
  return ((tilt + 3.93) / 50) * pow(reynolds, (tilt - 1.75) / 7);
}

/** The friction law of one fluid in one line, with the parts that do not change with the flow worked out. */
export interface FrictionLaw {
  n_ratio: number;
  roughness_ratio: number;
  /** (e/3.7)^1.11 of Haaland; 0 for a smooth wall. */
  rough: number;
  laminarEnd: number;
  turbulentStart: number;
  /** What thinning makes of the smooth turbulent factor of water: thinned Re^thinning, 1 Re^0 for water. */
  thinned: number;
  thinning: number;
}

export const createFrictionLaw = (): FrictionLaw => ({
  n_ratio: 1,
  roughness_ratio: 0,
  rough: 0,
  laminarEnd: laminarEnd(1),
  turbulentStart: turbulentStart(1),
  thinned: 1,
  thinning: 0,
});

/** The smooth law of water at Re 1, to which that of a power-law fluid is compared. */
const SMOOTH_WATER = smoothPowerLaw(1, 1);

/** Sets the law up for a fluid of index n_ratio (.2 to 1) and a relative roughness (0 to .05). */
export function setFrictionLaw(law: FrictionLaw, n_ratio: number, roughness_ratio: number): void {
  law.n_ratio = n_ratio;
  // The wall of a line stays the same from second to second: its power is worked out when it changes.
  if (roughness_ratio !== law.roughness_ratio) {
    law.roughness_ratio = roughness_ratio;
    law.rough = wallPart(roughness_ratio);
  }
  law.laminarEnd = laminarEnd(n_ratio);
  law.turbulentStart = turbulentStart(n_ratio);
  law.thinned = n_ratio === 1 ? 1 : smoothPowerLaw(1, n_ratio) / SMOOTH_WATER;
  law.thinning = n_ratio === 1 ? 0 : log10(n_ratio) / 7;
}

/** haaland() on a smooth wall, from ln Re: without another logarithm. */
const HAALAND_LN = 1.8 / ln(10);
const HAALAND_LN_6_9 = ln(6.9);
function smoothHaaland(logReynolds: number): number {
  const root = HAALAND_LN * (logReynolds - HAALAND_LN_6_9);
  return 1 / (root * root);
}

/**
 * Turbulent Fanning factor. Water: Haaland. Power law: the smooth law scaled by Haaland(smooth)/Blasius-like a/Re^b at n = 1,
 * so that n = 1 is water without a jump, plus what roughness adds to water at the same Reynolds number (ASSUMED: no
 * published law joins the two).
 */
function turbulentFanning(law: FrictionLaw, logReynolds: number): number {
  const smoothWater = smoothHaaland(logReynolds) / 4;
  const smooth = law.n_ratio === 1 ? smoothWater : law.thinned * exp(law.thinning * logReynolds) * smoothWater;
  return law.rough > 0 ? smooth + haaland(exp(logReynolds), law.rough) / 4 - smoothWater : smooth;
}

/**
 * Fanning friction factor at the logarithm of a Metzner & Reed Reynolds number: 16/Re below the band, turbulent above it,
 * straight in Re across it. Continuous; the pressure loss rises with flow throughout. The logarithm, because the power-law
 * parts need it and the caller has it at hand. Worked value: water, Re 128 -> .125 (Darcy .5).
 */
export function fanningFactor(law: FrictionLaw, logReynolds: number): number {
  if (logReynolds >= SURELY_TURBULENT) return turbulentFanning(law, logReynolds);
  const reynolds = exp(logReynolds);
  if (reynolds <= law.laminarEnd) return 16 / reynolds;
  if (reynolds >= law.turbulentStart) return turbulentFanning(law, logReynolds);
  const share = (reynolds - law.laminarEnd) / (law.turbulentStart - law.laminarEnd);
  const first = 16 / law.laminarEnd;
  return first + share * (turbulentFanning(law, ln(law.turbulentStart)) - first);
}

/** No fluid has its band above this: its Reynolds number itself is not needed to know the regime. */
const SURELY_TURBULENT = ln(TURBULENT_START);

/**
 * Pressure gradient of friction, Pa/m: 2 f rho v^2 / D, f Fanning, D the diameter that f was found for, m.
 * Worked value: f .00833, rho 1258.2, v .6623, D .0881907 -> 104.3.
 */
export function frictionGradient_Pam(
  fanning: number,
  density_kgm3: number,
  velocity_ms: number,
  diameter_m: number,
): number {
  return (2 * fanning * density_kgm3 * velocity_ms * velocity_ms) / diameter_m;
}
