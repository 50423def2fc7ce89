// The ground as a crew writes it down: samples by their labels, a new layer halfway between two names; and what of it could hold a screen.

import type { KindWord, Senses } from '$sim';
import { does, type Deed } from './crew';
import { nameOf } from './naming';

export interface OwnLayer {
  readonly from_m: number;
  readonly to_m: number;
  readonly kind: KindWord;
}

/** Ground that a screen may stand in. */
const COARSE: readonly KindWord[] = ['mediumSand', 'coarseSand', 'gravel'];
export const isCoarse = (kind: KindWord): boolean => COARSE.includes(kind);

const toDecimetre = (depth_m: number): number => Math.round(depth_m * 10) / 10;

/** Layers from the top down to the bottom of the hole; none without a sample. */
export function ownLayers({ tray, stem }: Senses): OwnLayer[] {
  const samples = [...tray].sort((a, b) => a.label_m - b.label_m);
  const layers: { from_m: number; to_m: number; kind: KindWord }[] = [];
  let last_m = 0;
  for (const sample of samples) {
    const kind = sample.named?.main ?? nameOf(sample);
    const open = layers.at(-1);
    if (open === undefined) layers.push({ from_m: 0, to_m: stem.bottom_m, kind });
    else if (open.kind !== kind) {
      const between_m = toDecimetre((last_m + sample.label_m) / 2);
      open.to_m = between_m;
      layers.push({ from_m: between_m, to_m: stem.bottom_m, kind });
    }
    last_m = sample.label_m;
  }
  return layers.filter(({ from_m, to_m }) => to_m > from_m);
}

/** The next layer into the book, where the job wants a log; undefined when it is written. */
export function logDeed(memory: { readonly log: boolean; booked: number }, senses: Senses): Deed | undefined {
  const layer = memory.log ? ownLayers(senses)[memory.booked] : undefined;
  if (layer === undefined) return undefined;
  memory.booked++;
  return does('logLayer', { ...layer });
}

/** A stretch of coarse ground under water. */
export interface Stretch {
  readonly from_m: number;
  readonly to_m: number;
}

/** Stretches of coarse ground below a depth, by the book, the longest first; of two alike the deeper. */
export function coarseBelow(layers: readonly OwnLayer[], below_m: number): Stretch[] {
  const stretches: { from_m: number; to_m: number }[] = [];
  let open: { from_m: number; to_m: number } | null = null;
  for (const { from_m, to_m, kind } of layers) {
    if (!isCoarse(kind)) open = null;
    else if (open) open.to_m = to_m;
    else stretches.push((open = { from_m, to_m }));
  }
  return stretches
    .map(({ from_m, to_m }) => ({ from_m: Math.max(from_m, below_m), to_m }))
    .filter(({ from_m, to_m }) => to_m > from_m)
    .sort((a, b) => b.to_m - b.from_m - (a.to_m - a.from_m) || b.from_m - a.from_m);
}

/** Median size that the eye gives to each class of the tray, mm. */
const SIZE_mm = [0.001, 0.02, 0.12, 0.35, 1, 3.5, 11, 35];

const MEDIUM_SAND_CLASS = 3;

/** The finest middle grain of the samples between two depths, mm, old fine sand left out; that of coarse sand where none was caught there. */
export function finestGrain_mm({ tray }: Senses, from_m: number, to_m: number): number {
  let finest_mm = Infinity;
  for (const { label_m, shares } of tray) {
    if (label_m < from_m - 0.3 || label_m > to_m + 0.3) continue;
    let half = 0;
    for (let k = MEDIUM_SAND_CLASS; k < SIZE_mm.length; k++) half += shares[k]! / 2;
    let below = 0;
    for (let k = MEDIUM_SAND_CLASS; k < SIZE_mm.length; k++) {
      below += shares[k]!;
      if (below < half || half === 0) continue;
      // Between the class below and this one, by how far the middle lies in it.
      const into = shares[k]! > 0 ? 1 - (below - half) / shares[k]! : 0.5;
      finest_mm = Math.min(finest_mm, SIZE_mm[k]! * (0.6 + 0.8 * into));
      break;
    }
  }
  return finest_mm === Infinity ? SIZE_mm[4]! : finest_mm;
}
