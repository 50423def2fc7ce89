// Slip of each size class in a fluid, read from a grid of solved falls: a tick solves nothing.
import { exp, ln } from '../numeric/functions';
import { LEAST_SHEAR_1s } from '../fluid/apparent';
import { CLASS_COUNT, SIZE_CLASSES } from '../materials/sizes';
import { dragLawOf } from './drag';
import { grainReynolds, terminalVelocity_ms } from './fall';
import { hinderedExponent } from './hindered';

/** Cuttings are taken as grains of sphericity .8 (Guo & Liu 2011: a conservative value). */
export const CUTTINGS_SPHERICITY = 0.8;
/** Density of the grains, kg/m3: quartz and clay minerals. Peat is lighter; its few grains are let fall like the rest. */
export const GRAIN_kgm3 = 2650;

/** The grid is solved for this density; other densities are brought to it by similarity. */
const BASE_kgm3 = 1000;

/** Axes of the grid: ln K, n, ln of the ambient shear rate. Values beyond the ends count as the end. */
const K_AXIS = { first: -8, step: 0.25, count: 48 };
const N_AXIS = { first: 0.3, step: 0.05, count: 15 };
// One node lies on the least shear rate, where the curve bends.
const SHEAR_AXIS = { first: ln(LEAST_SHEAR_1s) - 1.5, step: 0.5, count: 22 };

const NODES = K_AXIS.count * N_AXIS.count * SHEAR_AXIS.count;
const law = dragLawOf(CUTTINGS_SPHERICITY);

// Solved nodes, filled when first asked for. A node's value depends on its place in the grid alone, never on what was
// asked before, so the grid is no part of a run's state. Zero marks a node not yet solved.
const logFall = new Float64Array(NODES * CLASS_COUNT);
const lone_ms = new Float64Array(NODES * CLASS_COUNT);
const exponent = new Float64Array(NODES * CLASS_COUNT);

function solveNode(node: number): void {
  const shearIndex = node % SHEAR_AXIS.count;
  const rest = (node - shearIndex) / SHEAR_AXIS.count;
  const nIndex = rest % N_AXIS.count;
  const kIndex = (rest - nIndex) / N_AXIS.count;
  const n_ratio = nIndex === N_AXIS.count - 1 ? 1 : N_AXIS.first + N_AXIS.step * nIndex;
  const fluid = { K_Pasn: exp(K_AXIS.first + K_AXIS.step * kIndex), n_ratio };
  const ambient_1s = exp(SHEAR_AXIS.first + SHEAR_AXIS.step * shearIndex);
  for (let k = 0; k < CLASS_COUNT; k++) {
    const grain_m = SIZE_CLASSES[k].d_mm / 1000;
    const fall_ms = terminalVelocity_ms(law, grain_m, GRAIN_kgm3, BASE_kgm3, fluid, ambient_1s);
    logFall[node * CLASS_COUNT + k] = ln(fall_ms);
    lone_ms[node * CLASS_COUNT + k] = fall_ms;
    exponent[node * CLASS_COUNT + k] = hinderedExponent(grainReynolds(grain_m, fall_ms, BASE_kgm3, fluid, ambient_1s));
  }
}

interface Axis {
  readonly first: number;
  readonly step: number;
  readonly count: number;
}

/** Place of a value on an axis in steps, held within it. */
function placeOn(axis: Axis, value: number): number {
  const place = (value - axis.first) / axis.step;
  return place <= 0 ? 0 : place >= axis.count - 1 ? axis.count - 1 : place;
}

/** e^x within 2e-6 for x -1 to 1, by products alone: neighbours in the grid differ by less. The square of the series at x/2. */
function expNearNought(x: number): number {
  const y = x / 2;
  const root = 1 + y * (1 + (y / 2) * (1 + (y / 3) * (1 + (y / 4) * (1 + (y / 5) * (1 + y / 6)))));
  return root * root;
}

const corners = new Int32Array(8);
const weights = new Float64Array(8);

/**
 * Slip of each class, m/s, and its hindering exponent, into two arrays of CLASS_COUNT.
 * K_Pasn 3e-4 to 40, n_ratio .3 to 1, density_kgm3 below 2600, ambient_1s .02 to 600 (nearer end beyond).
 * Another density rho is brought to 1000 kg/m3 by exact similarity of the drag law: speeds scale with
 * s = sqrt(D rho0 / (D0 rho)), D = 2650 - rho, and K with s^(2-n) rho / rho0. Logarithms are interpolated linearly:
 * within 2 % of the solved fall in a stirred fluid, 8 % in one all but still. Worked value: water of 20 C, class of 1.1 mm -> .1464.
 */
export function slipInto(
  slip_ms: Float64Array,
  hinder: Float64Array,
  K_Pasn: number,
  n_ratio: number,
  density_kgm3: number,
  ambient_1s: number,
): void {
  const lift = ((GRAIN_kgm3 - density_kgm3) * BASE_kgm3) / ((GRAIN_kgm3 - BASE_kgm3) * density_kgm3);
  const scale = Math.sqrt(lift);
  const logScale = 0.5 * ln(lift);
  const logK = ln((K_Pasn * BASE_kgm3) / density_kgm3) + (n_ratio - 2) * logScale;
  const kPlace = placeOn(K_AXIS, logK);
  const nPlace = n_ratio === 1 ? N_AXIS.count - 1 : placeOn(N_AXIS, n_ratio);
  // Without a power law the stirring of the fluid changes nothing: one column of the grid serves.
  const shearPlace = n_ratio === 1 ? 0 : placeOn(SHEAR_AXIS, ln(Math.max(1e-6, ambient_1s / scale)));
  const k0 = Math.min(K_AXIS.count - 2, Math.floor(kPlace));
  const n0 = Math.min(N_AXIS.count - 2, Math.floor(nPlace));
  const s0 = Math.min(SHEAR_AXIS.count - 2, Math.floor(shearPlace));
  let used = 0;
  for (let i = 0; i < 8; i++) {
    const kUp = i & 1;
    const nUp = (i >> 1) & 1;
    const sUp = i >> 2;
    const weight =
      (kUp ? kPlace - k0 : 1 - kPlace + k0) *
      (nUp ? nPlace - n0 : 1 - nPlace + n0) *
      (sUp ? shearPlace - s0 : 1 - shearPlace + s0);
    if (weight === 0) continue;
    const node = ((k0 + kUp) * N_AXIS.count + n0 + nUp) * SHEAR_AXIS.count + s0 + sUp;
    if (logFall[node * CLASS_COUNT] === 0) solveNode(node);
    corners[used] = node * CLASS_COUNT;
    weights[used++] = weight;
  }
  const first = corners[0];
  for (let k = 0; k < CLASS_COUNT; k++) {
    const from = logFall[first + k];
    let beyond = 0;
    let power = weights[0] * exponent[first + k];
    for (let i = 1; i < used; i++) {
      beyond += weights[i] * (logFall[corners[i] + k] - from);
      power += weights[i] * exponent[corners[i] + k];
    }
    slip_ms[k] = scale * lone_ms[first + k] * expNearNought(beyond);
    hinder[k] = power;
  }
}
