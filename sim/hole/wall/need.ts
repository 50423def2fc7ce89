// How much support a round hole needs from its fluid so that the ground round it does not fall in.
import { expm1, ln } from '../../numeric/functions';
import { tanOf } from '../../numeric/angle';
import type { WallGround } from '../wallGround';

/** The parts of the need that the ground alone decides, by cell; all 0 where undrained strength rules instead. */
export interface NeedTable {
  /** Unit weight times the root of Ka, Pa/m. */
  weight_Pam: Float64Array;
  Ka_ratio: Float64Array;
  /** m - 1 of Berezantzev. */
  power: Float64Array;
  /** How far beyond the wall the failing body reaches, z sqrt(Ka), m. */
  reach_m: Float64Array;
  cot_ratio: Float64Array;
  /** The last answer by cell and the radius it belongs to: asked again for the same radius, it costs nothing. */
  radius_m: Float64Array;
  logRadius: Float64Array;
  friction_Pa: Float64Array;
  cohesionShare_ratio: Float64Array;
}

/** Active earth pressure ratio of Rankine 1857, tan^2(45 - phi/2); phi 0 to 60 degrees. Worked value: 30 -> .3333. */
export function activePressure_ratio(phi_deg: number): number {
  const t = tanOf(45 - phi_deg / 2);
  return t * t;
}

/** Berezantzev's m = 2 tan(phi) tan(45 + phi/2); phi 0 to 60 degrees. Worked value: 30 -> 2. */
export const archingPower = (phi_deg: number): number => 2 * tanOf(phi_deg) * tanOf(45 + phi_deg / 2);

/** Works out the table for the ground of one site: each cell at the depth of its middle. */
export function createNeedTable(ground: WallGround, dz_m: number): NeedTable {
  const array = (): Float64Array => new Float64Array(ground.cells);
  const table: NeedTable = {
    weight_Pam: array(),
    Ka_ratio: array(),
    power: array(),
    reach_m: array(),
    cot_ratio: array(),
    radius_m: array(),
    logRadius: array(),
    friction_Pa: array(),
    cohesionShare_ratio: array(),
  };
  for (let i = 0; i < ground.cells; i++) {
    if (!(ground.phi_deg[i] > 0)) continue;
    const Ka = activePressure_ratio(ground.phi_deg[i]);
    const rootKa = Math.sqrt(Ka);
    table.weight_Pam[i] = ground.unitWeight_Nm3[i] * rootKa;
    table.Ka_ratio[i] = Ka;
    table.power[i] = archingPower(ground.phi_deg[i]) - 1;
    table.reach_m[i] = (i + 0.5) * dz_m * rootKa;
    table.cot_ratio[i] = 1 / tanOf(ground.phi_deg[i]);
  }
  return table;
}

/**
 * Sets table.friction_Pa[i] and table.cohesionShare_ratio[i] for a hole of this radius, m (above 0):
 *   friction = gamma r sqrt(Ka) (1 - x^(m-1))/(m-1),  cohesion share = cot(phi) (1 - Ka x^m),  x = r/(r + z sqrt(Ka)),
 * so that the pressure wanted at the wall is friction - c' times the share. At m = 1 the first is gamma r sqrt(Ka) ln(1/x).
 * Source: Berezantzev 1958, axial symmetric problem of the limit equilibrium theory of earthy medium (from memory).
 * Worked value: fine sand, 9388 N/m3, phi 30, r .05, z 5 -> 266.7 Pa (271 Pa at great depth).
 */
export function readNeed(table: NeedTable, i: number, radius_m: number): void {
  if (table.radius_m[i] === radius_m) return;
  table.radius_m[i] = radius_m;
  const x = radius_m / (radius_m + table.reach_m[i]);
  const logX = ln(x);
  table.logRadius[i] = ln(radius_m);
  const power = table.power[i];
  // x^(m-1) - 1: exact near m = 1 as well.
  const fall = power === 0 ? 0 : expm1(power * logX);
  table.friction_Pa[i] = table.weight_Pam[i] * radius_m * (power === 0 ? -logX : -fall / power);
  table.cohesionShare_ratio[i] = table.cot_ratio[i] * (1 - table.Ka_ratio[i] * x * (1 + fall));
}

/** Capillary water lets go this long after the hole has wetted the ground, s. ASSUMED: about 10 minutes. */
export const CAPILLARY_s = 600;

/** Cohesion of a cell, Pa, after it has been wetted from the hole for so many seconds: the capillary part fades in a straight line. */
export function cohesion_Pa(ground: WallGround, i: number, wetted_s: number): number {
  const capillary_kPa = ground.capillary_kPa[i];
  if (capillary_kPa <= 0) return 1000 * ground.cohesion_kPa[i];
  return 1000 * (ground.cohesion_kPa[i] + capillary_kPa * Math.max(0, 1 - wetted_s / CAPILLARY_s));
}
