// What hinders the water in one cell on its way into the screen, as a skin: pack, mud in the ground, cake on the wall, cloth, bridged grains.
import { clothLeft_frac } from '../completion/cloth';
import { passing_frac, staysLoose_frac, type Barrier } from '../completion/passing';
import type { Layer } from '../ground/layer';
import { PACKS } from '../materials/packs';
import { ln } from '../numeric/functions';
import type { ScreenRing } from './ring';
import { ringSkin_ratio } from './skin';
import type { RingFill, Standing } from './standing';

/** K of the ground over that of the ring that polymer has closed, at a working dose (Hawkins' ring; ASSUMED, between 5 and 20 of handbooks). */
export const MUD_RING_ratio = 10;
/** Broken or rotten polymer still leaves this share of the harm, until it is washed out: 5-10 % (ASSUMED between). */
export const BROKEN_LEFT_frac = 0.08;
/** A void by the screen: water runs through it. ASSUMED, as cobbles. */
const VOID_MS = 0.1;
/** Bridged grains cost so much skin where they close all of the way. ASSUMED: as a ring of a third of K, half a hole thick. */
const BRIDGE_SKIN = 1.5;
/** Ground from which the fines have gone leads so many times better for each share that could go, so far out. ASSUMED. */
const WASHED_GAIN_ratio = 2;
const WASHED_REACH_m = 0.03;

/**
 * How much worse the invaded ground leads, K/K_s: 1 + 9 x dose x mud left x (.08 + .92 x share whole), dose at most 1.
 * Worked values: dose 1, all there and whole -> 10; all broken -> 1.72; dose 0 -> 1.
 */
export const mudRing_ratio = (dose_ratio: number, mud_frac: number, whole_frac: number): number =>
  1 +
  (MUD_RING_ratio - 1) * Math.min(1, dose_ratio) * mud_frac * (BROKEN_LEFT_frac + (1 - BROKEN_LEFT_frac) * whole_frac);

/** Skin of a whole cake on the wall: it loses v R_c of head, v = q/(2 pi r). sigma = K R_c/r. Worked value: K 3e-4, 1e4 s, .05 m -> 60. */
export const cakeSkin_ratio = (K_ms: number, cake_s: number, hole_m: number): number => (K_ms * cake_s) / hole_m;

/** Share of the wall that is still shut: of the cake that is there, the clay and the polymer that is whole. */
export const shutWall_frac = (ring: ScreenRing, i: number): number =>
  ring.caked_frac[i] * (ring.clay_frac[i] + (1 - ring.clay_frac[i]) * ring.whole_frac[i]);

/**
 * Skin of a cake that covers only a share of the wall: covered and bare parts draw side by side, each by its own way in.
 * sigma = 1/(c/(L + sigma_c) + (1 - c)/L) - L. way_ratio L above 0. Worked value: L 6, sigma_c 60, c .5 -> 5.
 */
export function patchedSkin_ratio(cake_ratio: number, covered_frac: number, way_ratio: number): number {
  const covered = covered_frac / (way_ratio + cake_ratio);
  const bare = (1 - covered_frac) / way_ratio;
  return 1 / (covered + bare) - way_ratio;
}

/** Skin of a cloth of a permittivity, kept to a share of its flow. sigma = K/(r psi left). Worked value: 3e-4, .0315, .5, 1 -> .019. */
export const clothSkin_ratio = (K_ms: number, screen_m: number, permittivity_1s: number, left_frac: number): number =>
  K_ms / (screen_m * permittivity_1s * left_frac);

/** What stands between the ground of a cell and the bore. */
export function barrierOf(standing: Standing, fill: RingFill): Barrier {
  const { slots, cloth } = standing;
  // A pack that fills less than half of the cell's ring leaves the sand a way past it.
  const packed = fill.pack !== null && fill.pack_frac > 0.5;
  return {
    slotWidth_mm: slots.slotWidth_mm,
    ...(cloth && { cloth_mm: cloth.O95_mm }),
    ...(packed && { pack: PACKS[fill.pack!] }),
  };
}

/** Ground that will not stand closes on a bare screen when the level drops. */
export const closesIn = (layer: Layer): boolean => layer.su_kPa === null;

/** K of the ring between screen and wall, radially: what lies above each other in the cell in parallel. */
export function ringFill_ms(fill: RingFill, layer: Layer): number {
  const { pack_frac, pack, clogged_frac, seal_frac, seal_ms, ground_frac } = fill;
  const void_frac = Math.max(0, 1 - pack_frac - seal_frac - ground_frac);
  const pack_ms = pack ? PACKS[pack].K_ms * (1 - clogged_frac) : 0;
  const bare_ms = closesIn(layer) ? layer.K_ms : VOID_MS;
  return pack_frac * pack_ms + seal_frac * seal_ms + ground_frac * layer.K_ms + void_frac * bare_ms;
}

/** A ring that is shut all but for this share of K still counts as that much: keeps 1/0 out. */
const SHUT_ratio = 1e-9;

/** Skin of the pack, or of what is there instead, between screen and wall. Nothing where the hole is no wider than the screen. */
export function fillSkin_ratio(fill: RingFill, layer: Layer, screen_m: number, hole_m: number): number {
  if (!(hole_m > screen_m)) return 0;
  return ringSkin_ratio(layer.K_ms, Math.max(SHUT_ratio * layer.K_ms, ringFill_ms(fill, layer)), screen_m, hole_m);
}

/** Share of the loose fines that can leave, and that leave a filter behind: those that pass, where coarser grains hold the rest. */
export function washable_frac(layer: Layer, barrier: Barrier): number {
  const passing = passing_frac(layer, barrier);
  return passing * (1 - staysLoose_frac(passing));
}

/** Whole skin of cell i of the ring in this ground. whole: as if no mud, no cake, no bridge had come and nothing were washed. */
export function cellSkin_ratio(
  standing: Standing,
  ring: ScreenRing,
  i: number,
  layer: Layer,
  fill: RingFill,
  wayLog: number,
  whole: boolean,
): number {
  const { K_ms } = layer;
  const screen_m = standing.pipe.outside_m / 2;
  const hole_m = Math.max(screen_m, ring.hole_m[i]);
  let skin = fillSkin_ratio(fill, layer, screen_m, hole_m);
  const { cloth } = standing;
  if (cloth) skin += clothSkin_ratio(K_ms, screen_m, cloth.permittivity_1s, clothLeft_frac(cloth, layer));
  if (whole) return skin;
  const invaded_m = Math.max(hole_m, ring.invaded_m[i]);
  const worse = mudRing_ratio(ring.dose_ratio[i], ring.mud_frac[i], ring.whole_frac[i]);
  skin += (worse - 1) * ln(invaded_m / hole_m);
  const cake = cakeSkin_ratio(K_ms, ring.cake_s[i], hole_m);
  skin += patchedSkin_ratio(cake, shutWall_frac(ring, i), wayLog) + BRIDGE_SKIN * ring.bridged_frac[i];
  const gain = 1 + WASHED_GAIN_ratio * ring.washed_frac[i] * washable_frac(layer, barrierOf(standing, fill));
  return skin + ringSkin_ratio(K_ms, K_ms * gain, hole_m, hole_m + WASHED_REACH_m);
}
