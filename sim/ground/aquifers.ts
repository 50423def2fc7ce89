// Where the water of each permeable stretch of the profile would stand in an open pipe.
import type { Stream } from '../numeric/stream';
import type { Head } from './ground';
import type { Layer } from './layer';
import type { Surroundings } from './surroundings';

/** Ground that lets water through more easily than this belongs to an aquifer, m/s. ASSUMED: between silt and silty sand. */
const AQUIFER_MS = 1.5e-6;
/** Tight ground at least this thick parts two aquifers, m. ASSUMED. */
const PARTING_m = 1;
/** Water of a confined aquifer stays at least this far below ground: no hole of this plain flows by itself. ASSUMED. */
const LEAST_HEAD_m = 0.3;
/** Perched water fills at most this share of the layer that holds it. ASSUMED. */
const PERCHED_MOST_frac = 0.6;

interface Stretch {
  top_m: number;
  bottom_m: number;
  /** Tight ground between the stretch above (or the surface) and this one. */
  tightAbove_m: number;
  lyingOnTight: boolean;
}

/** Neighbouring permeable layers taken together, from the top down. */
function permeableStretches(layers: readonly Layer[]): Stretch[] {
  const stretches: Stretch[] = [];
  let open: Stretch | null = null;
  let tight_m = 0;
  for (const layer of layers) {
    if (layer.K_ms < AQUIFER_MS) {
      if (open) open.lyingOnTight = true;
      open = null;
      tight_m += layer.bottom_m - layer.top_m;
    } else if (open) {
      open.bottom_m = layer.bottom_m;
    } else {
      open = { top_m: layer.top_m, bottom_m: layer.bottom_m, tightAbove_m: tight_m, lyingOnTight: false };
      stretches.push(open);
      tight_m = 0;
    }
  }
  return stretches;
}

const centimetres = (depth_m: number): number => Math.round(depth_m * 100) / 100;

/**
 * Heads of all stretches that hold water: at the table where the table lies in it or nothing tight parts it from such a one;
 * raised or lowered where tight ground confines it; perched above the table, by chance, where it lies on tight ground.
 * Three draws a stretch.
 */
export function headsOf(layers: readonly Layer[], waterTable_m: number, around: Surroundings, stream: Stream): Head[] {
  const heads: Head[] = [];
  const [least, most] = around.confinedRise_m;
  let confining_m = 0;
  let above_m = waterTable_m;
  for (const { top_m, bottom_m, tightAbove_m, lyingOnTight } of permeableStretches(layers)) {
    const uRise = stream.uniform();
    const uPerched = stream.uniform();
    const uFill = stream.uniform();
    confining_m += tightAbove_m;
    if (bottom_m <= waterTable_m) {
      confining_m = 0;
      if (lyingOnTight && uPerched < around.perched_frac) {
        const filled_m = (bottom_m - top_m) * PERCHED_MOST_frac * uFill;
        heads.push({ top_m, bottom_m, head_m: centimetres(bottom_m - filled_m) });
      }
      continue;
    }
    if (top_m > waterTable_m && confining_m >= PARTING_m) {
      const rise_m = least + (most - least) * uRise;
      // A confined head that fell below the top of its own aquifer would no longer be one.
      above_m = centimetres(Math.max(LEAST_HEAD_m, Math.min(top_m, waterTable_m - rise_m)));
      confining_m = 0;
    }
    heads.push({ top_m, bottom_m, head_m: above_m });
  }
  return heads;
}
