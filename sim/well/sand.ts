// Sand and cloudiness of the water that comes out: what passes slot, cloth and pack, and whether it ever stops.
import { passing_frac, staysLoose_frac } from '../completion/passing';
import type { Ground } from '../ground/ground';
import { barrierOf, closesIn } from './cellSkin';
import { layerOf } from './intake';
import { HAND_PUMP_M3S } from './need';
import type { ScreenRing } from './ring';
import { screenCells, type Standing } from './standing';
import { mudToCome_frac } from './washing';

/** Sand that a screen which does not hold its ground goes on giving, g/L: least, and more at the usual rate of a hand pump (50-300 mg/L ASSUMED). */
const LOOSE_gL = 0.05;
const LOOSE_MORE_gL = 0.25;
/** The same through the gap of a snapped pipe, and up an open lower end in ground that does not stand. ASSUMED. */
const SNAPPED_gL = 0.5;
const OPEN_END_gL = 0.1;
/** First sand of a screen that will hold, all of it passing, g/L; it goes with the loose fines. ASSUMED. */
const FIRST_gL = 1;

/** Cloudiness: clear ground water, all the mud of a working fluid still to come, fines of a silt, and for each g/L of sand, NTU. ASSUMED. */
const CLEAR_NTU = 0.8;
const MUD_NTU = 250;
const FINES_NTU = 400;
const SAND_NTU = 40;
/** Grains below this cloud the water. */
const CLOUDING_CLASSES = 2;

/** Sand in the water at a rate, g/L, by the share of the flow of each cell. The same cells give the clouding fines. */
export interface Carried {
  sand_gL: number;
  /** That part of it which never stops. */
  forEver_gL: number;
  turbidity_NTU: number;
}

/**
 * Sand and cloudiness at a rate. Cell by cell: s x (.05 + .25 Q/17 L/min) g/L for ever, s the share that stays loose behind the opening; and
 * at first p (1 - s)(1 - washed)^2 g/L, p the share that passes. Cloudiness from mud still to come, loose fines, and the sand.
 * Worked value: slot that holds, half passing, nothing washed -> .5 g/L; all washed -> 0.
 */
export function carriedAt(standing: Standing, ring: ScreenRing, ground: Ground, flow_m3s: number): Carried {
  const { first } = screenCells(standing);
  let first_gL = 0;
  let loose_frac = 0;
  let mud = 0;
  let fines = 0;
  for (let i = 0; i < ring.count; i++) {
    const share = ring.flow_frac[i];
    if (!(share > 0)) continue;
    const layer = layerOf(ground, ring, i);
    const passing = passing_frac(layer, barrierOf(standing, standing.fill[first + i]));
    const stays = closesIn(layer) ? staysLoose_frac(passing) : 0;
    const left = 1 - ring.washed_frac[i];
    first_gL += share * FIRST_gL * passing * (1 - stays) * left * left;
    loose_frac += share * stays;
    mud += share * mudToCome_frac(ring.mud_frac[i], ring.dose_ratio[i]);
    for (let k = 0; k < CLOUDING_CLASSES; k++) fines += share * layer.fractions[k] * left * left;
  }
  const rate_ratio = Math.max(0, flow_m3s) / HAND_PUMP_M3S;
  let forEver_gL = loose_frac * (LOOSE_gL + LOOSE_MORE_gL * Math.min(1, rate_ratio));
  if (ring.count > 0) {
    const lowest = layerOf(ground, ring, ring.count - 1);
    if (standing.snapped) forEver_gL += SNAPPED_gL;
    if (!standing.capped && closesIn(lowest)) forEver_gL += OPEN_END_gL;
  }
  const sand_gL = forEver_gL + first_gL;
  return { sand_gL, forEver_gL, turbidity_NTU: CLEAR_NTU + MUD_NTU * mud + FINES_NTU * fines + SAND_NTU * sand_gL };
}

/** Share by size class of the sand that passes in cell i: for the balance of grains. Grains finer than the opening, as the layer has them. */
export function sandByClass(standing: Standing, ring: ScreenRing, ground: Ground, into: Float64Array): void {
  const { first } = screenCells(standing);
  into.fill(0);
  let total = 0;
  for (let i = 0; i < ring.count; i++) {
    const layer = layerOf(ground, ring, i);
    const passing = passing_frac(layer, barrierOf(standing, standing.fill[first + i]));
    let left = passing;
    for (let k = 0; k < into.length && left > 0; k++) {
      const part = Math.min(left, layer.fractions[k]);
      left -= part;
      into[k] += ring.flow_frac[i] * part;
      total += ring.flow_frac[i] * part;
    }
  }
  if (total > 0) for (let k = 0; k < into.length; k++) into[k] /= total;
  else into[2] = 1;
}
