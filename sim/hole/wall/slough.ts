// Sloughing: a wall with too little support falls in, ring by ring, and its void climbs when it gets too wide.
import { FINE_CLASS_COUNT } from '../../materials/sizes';
import type { HoleState } from '../hole';
import { DRAINED_kPa, type WallGround } from '../wallGround';
import { addFallen, type Fallen } from './fallen';

/** How fast an unsupported wall of clean sand or gravel retreats, of silty ground, and how much faster ground with cohesion that falls in lumps, m/s. ASSUMED. */
const CLEAN_ms = 2e-4;
const SILTY_ms = 5e-5;
const LUMPS_ms = 5e-5;
/** From this share of silt and clay on, ground counts as silty; with this cohesion it falls in lumps, kPa. ASSUMED. */
const SILTY_frac = 0.15;
const LUMPS_kPa = 1;

/**
 * Speed at which the wall retreats at F = 0, m/s: from clean sand (2e-4) to silty (5e-5) with the share of silt and clay,
 * and up to 5e-5 more with cohesion. ASSUMED. Worked values: no fines -> 2e-4; fines .3, c' 0 -> 5e-5; fines .3, c' 1 kPa -> 1e-4.
 */
export function retreat_ms(fines_frac: number, cohesion_kPa: number): number {
  const clean = Math.max(0, 1 - fines_frac / SILTY_frac);
  return SILTY_ms + (CLEAN_ms - SILTY_ms) * clean + LUMPS_ms * (1 - clean) * Math.min(1, cohesion_kPa / LUMPS_kPa);
}

/** The speed of every cell, for the ground of one site. */
export function createRetreat(ground: WallGround): Float64Array {
  const speed_ms = new Float64Array(ground.cells);
  for (let i = 0; i < ground.cells; i++) {
    let fines = 0;
    for (let k = 0; k < FINE_CLASS_COUNT; k++) fines += ground.fractions[k * ground.cells + i];
    speed_ms[i] = retreat_ms(fines, ground.cohesion_kPa[i]);
  }
  return speed_ms;
}

/** A wall that has begun to fall stops only at this stability. ASSUMED: 5 % more than it began at. */
const STOPS_ratio = 1.05;
/** Retreat grows with what is wanting in F up to this. */
const MOST_WANTING = 3;

/** What is wanting in the stability of a wall, 0 to 3: 1 - F, or 1.05 - F once it falls. Worked values: F .4, standing -> .6; F 1.02, falling -> .03. */
export function wanting_ratio(F: number, falling: boolean): number {
  if (!falling && F >= 1) return 0;
  const short = (falling ? STOPS_ratio : 1) - F;
  return short <= 0 ? 0 : short < MOST_WANTING ? short : MOST_WANTING;
}

/** Height of cell i that there is a hole in, m. */
export const openHeight_m = (hole: HoleState, i: number): number => Math.min(hole.dz_m, hole.depth_m - i * hole.dz_m);

/** A void no wider than this many times the bit; then its roof falls instead. ASSUMED. */
export const ROOF_ratio = 4;
/** The ring of cake comes away with this thickness of fallen ground, m. ASSUMED. */
const CAKE_RING_m = 0.003;

/** Widens the wall of cell i to radius_m: the fallen ring takes its water-filled pores and its cake along. Returns its volume, m3. */
function widen(hole: HoleState, ground: WallGround, fallen: Fallen, i: number, radius_m: number): number {
  const before_m = hole.radius_m[i];
  const ring_m2 = Math.PI * (radius_m * radius_m - before_m * before_m);
  if (!(ring_m2 > 0)) return 0;
  const volume_m3 = ring_m2 * openHeight_m(hole, i);
  hole.radius_m[i] = radius_m;
  const { wall } = hole;
  wall.lost_m2[i] = Math.max(0, wall.lost_m2[i] - ground.porosity_frac[i] * ring_m2);
  const kept = Math.max(0, 1 - (radius_m - before_m) / CAKE_RING_m);
  wall.cake_m[i] *= kept;
  wall.cakeResistance_s[i] *= kept;
  // The loss looks at a new wall at once.
  wall.conductance_ms[i] = 0;
  addFallen(fallen, ground, i, volume_m3);
  return volume_m3;
}

/**
 * Takes depth_m off the wall of cell i. Where the void would grow wider than four times the bit, what is left over comes from
 * the roof: the cell above, and on upwards, as long as the ground there has no undrained strength to bridge. Returns the volume of ground fallen, m3.
 */
export function takeOff(
  hole: HoleState,
  ground: WallGround,
  fallen: Fallen,
  i: number,
  depth_m: number,
  bitWidth_m: number,
): number {
  const most_m = (ROOF_ratio * bitWidth_m) / 2;
  let wanted_m = hole.radius_m[i] + depth_m;
  let volume_m3 = 0;
  for (let j = i; ; j--) {
    volume_m3 += widen(hole, ground, fallen, j, Math.min(wanted_m, most_m));
    if (wanted_m <= most_m || j === 0 || ground.su_kPa[j - 1] !== DRAINED_kPa) return volume_m3;
    const over_m3 = Math.PI * (wanted_m * wanted_m - most_m * most_m) * openHeight_m(hole, j);
    const above_m = hole.radius_m[j - 1];
    wanted_m = Math.sqrt(above_m * above_m + over_m3 / (Math.PI * hole.dz_m));
  }
}
