// Cement slurry that stands on a bare pack runs into its pores.
import { GRAVITY_MS2 } from '../numeric/units';
import { alongLogY } from '../numeric/curve';
import { PACKS, type Pack } from '../materials/packs';
import { cellRoom_m3, standing_m3, type AnnulusState, type Standpipe } from './annulus';
import { FILL_NAMES } from './fills';

/** Stress at which neat slurry stops flowing, Pa. ASSUMED: 5 to 40 for fresh neat cement (from memory), the runny end. */
const YIELD_Pa = 5;
/** Size that 85 % of the cement is finer than, mm. ASSUMED: ordinary Portland cement. */
const CEMENT_D85_mm = 0.06;
/**
 * A pack whose d15 is so many times that size lets cement in freely; up to so many it keeps it out: groutability ratio (Mitchell 1981:
 * above 24 it can be grouted, below 11 it cannot; from memory).
 */
const FREELY_ratio = 24;
const NOT_ratio = 11;

/** d15 of a pack, mm, straight in the logarithm between d10 and d30. Worked value: pack1 -> 1.108. */
export const d15_mm = (pack: Pack): number => alongLogY([0.1, 0.3], [pack.d10_mm, pack.d30_mm], 0.15);

/** Share of the slurry's way that the size of the pores leaves it, 0 to 1. Worked value: pack1 -> .574; pack2 -> 1. */
export const groutable_frac = (pack: Pack): number =>
  Math.min(1, Math.max(0, (d15_mm(pack) / CEMENT_D85_mm - NOT_ratio) / (FREELY_ratio - NOT_ratio)));

/**
 * How deep slurry runs into a pack, m, for so much pressure over the fluid in it: until the yield stress on the walls of the pores
 * carries it, L = dp r/(2 tau_0), r = n d10/(3 (1 - n)) twice the hydraulic radius, times the share that the pores' size leaves.
 * Balance of forces on a plug in a tube (Bingham); for a bed of grains ASSUMED. Worked value: pack2, 8590 Pa (1 m of slurry in water) -> .4085.
 */
export function entryDepth_m(pack: Pack, pressure_Pa: number): number {
  const n = pack.porosity_frac;
  const pore_m = (n * pack.d10_mm) / 1000 / (3 * (1 - n));
  return (groutable_frac(pack) * pressure_Pa * pore_m) / (2 * YIELD_Pa);
}

const packs = FILL_NAMES.map((name) => (name in PACKS ? PACKS[name as keyof typeof PACKS] : null));

/** A pack of which less than this share is pack is not bare: what is mixed with it keeps the slurry out. ASSUMED. */
const BARE_frac = 0.5;

/** The pack that cell i is filled with, slurry f apart, or -1. */
function packIn(annulus: AnnulusState, i: number, f: number): number {
  const { cells, fill_m3 } = annulus;
  const others_m3 = standing_m3(annulus, i) - fill_m3[f * cells + i];
  for (let p = 0; p < packs.length; p++) {
    const here_m3 = fill_m3[p * cells + i];
    if (packs[p] && here_m3 > 0 && here_m3 >= BARE_frac * others_m3) return p;
  }
  return -1;
}

/** Takes so much slurry off the top of its column. Returns what there was, m3. */
function takeSlurry(annulus: AnnulusState, f: number, volume_m3: number): number {
  let left_m3 = volume_m3;
  for (let i = 0; i < annulus.used && left_m3 > 0; i++) {
    const at = f * annulus.cells + i;
    const part_m3 = Math.min(left_m3, annulus.fill_m3[at]);
    annulus.fill_m3[at] -= part_m3;
    left_m3 -= part_m3;
  }
  return volume_m3 - left_m3;
}

/**
 * Lets the slurry f that stands on a pack run into it, as deep as its present height presses it; what has gone in is gone from the
 * column. slurry_kgm3: its density. Nothing happens where it stands on something else.
 */
export function enterPack(annulus: AnnulusState, f: number, slurry_kgm3: number, pipe: Standpipe): void {
  const { cells, fill_m3, dz_m, used, clogged_frac } = annulus;
  let height_m = 0;
  let lowest = -1;
  for (let i = 0; i < used; i++) {
    if (!(fill_m3[f * cells + i] > 0)) continue;
    height_m += (fill_m3[f * cells + i] / cellRoom_m3(annulus, i, pipe)) * dz_m;
    lowest = i;
  }
  if (lowest < 0) return;
  let way_m = 0;
  // The cell that holds the foot of the slurry may hold the head of the pack as well.
  for (let i = packIn(annulus, lowest, f) >= 0 ? lowest : lowest + 1; i < used; i++) {
    const p = packIn(annulus, i, f);
    if (p < 0) return;
    const pack = packs[p]!;
    const deep_m = entryDepth_m(pack, (slurry_kgm3 - annulus.density_kgm3) * GRAVITY_MS2 * height_m);
    const here_m3 = fill_m3[p * cells + i];
    const length_m = (here_m3 / cellRoom_m3(annulus, i, pipe)) * dz_m;
    const wanted_frac = Math.min(1, Math.max(0, (deep_m - way_m) / length_m));
    if (!(wanted_frac > 0)) return;
    if (wanted_frac > clogged_frac[i]) {
      const pores_m3 = here_m3 * pack.porosity_frac;
      const entered_m3 = takeSlurry(annulus, f, (wanted_frac - clogged_frac[i]) * pores_m3);
      clogged_frac[i] += entered_m3 / pores_m3;
      annulus.entered_m3 += entered_m3;
    }
    way_m += length_m;
  }
}
