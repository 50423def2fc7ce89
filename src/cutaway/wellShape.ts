// Where the pieces of the well stand in the picture: half widths of the pipe, and the gap between pipe and wall.

import { halfWall_px, radiusAt } from './holeShape';
import { halfOf, yOf, type Place } from './place';
import type { CutawayView, ShownAnnulus, ShownCasing } from './shown';

/** Half the drawn width of the pipe outside and inside: never so thin that it cannot be seen. */
export function pipeHalf_px(place: Place, casing: ShownCasing): { out: number; inner: number } {
  const out = Math.max(5, halfOf(place, casing.outside_m / 2));
  return { out, inner: Math.max(2, Math.min(out - 3.4, halfOf(place, casing.bore_m / 2))) };
}

/** Half the drawn width of the hole at a depth: true where it is shown, as wide as the bit where nobody sees it. */
export function wallHalf_px(view: CutawayView, place: Place, depth_m: number): number {
  return halfWall_px(place, view.hole ? radiusAt(view.hole, depth_m) : view.kit.bit_m / 2);
}

/** Upper end of the pipe as far as the picture reaches. */
export const pipeTop_px = (place: Place, casing: ShownCasing): number =>
  Math.max(place.ground_y - place.sky_px + 26 * place.gear_px, yOf(place, casing.top_m));

/** Share of a cell that all fills together take at rest. */
export function restShare(annulus: ShownAnnulus, cell: number): number {
  let sum = 0;
  for (let f = 0; f < annulus.fills.length; f++) sum += annulus.rest_frac[f * annulus.stride + cell]!;
  return Math.min(1, sum);
}

/** The fill that takes the most of a cell at rest, by row; -1 where nothing stands. */
export function mostOf(annulus: ShownAnnulus, cell: number): number {
  let most = -1;
  let share = 0.02;
  for (let f = 0; f < annulus.fills.length; f++) {
    const here = annulus.rest_frac[f * annulus.stride + cell]!;
    if (here > share) {
      share = here;
      most = f;
    }
  }
  return most;
}

/** From this share on a cell counts as full: grains never settle quite even. */
const FULL_frac = 0.93;

export interface Band {
  /** Row of the fill. */
  fill: number;
  from_m: number;
  to_m: number;
}

/** The fills from above downwards, neighbouring cells of one fill as one band; voids between them are left out. */
export function bandsOf(annulus: ShownAnnulus): Band[] {
  const bands: Band[] = [];
  for (let i = 0; i < annulus.cells; i++) {
    const fill = mostOf(annulus, i);
    if (fill < 0) continue;
    const share = restShare(annulus, i);
    const to_m = Math.min(annulus.depth_m, (i + 1) * annulus.dz_m);
    const from_m = to_m - (share >= FULL_frac ? 1 : share) * (to_m - i * annulus.dz_m);
    const last = bands.at(-1);
    if (last && last.fill === fill && Math.abs(last.to_m - from_m) < 1e-6) last.to_m = to_m;
    else bands.push({ fill, from_m, to_m });
  }
  return bands;
}

/** Stretches below the uppermost fill where nothing stands, m. */
export function voidsOf(annulus: ShownAnnulus, bands: readonly Band[] = bandsOf(annulus)): [number, number][] {
  const voids: [number, number][] = [];
  for (let i = 1; i < bands.length; i++) {
    const gap: [number, number] = [bands[i - 1]!.to_m, bands[i]!.from_m];
    if (gap[1] - gap[0] > 0.02) voids.push(gap);
  }
  const last = bands.at(-1);
  const bottom_m = annulus.depth_m;
  if (last && bottom_m - last.to_m > annulus.dz_m * 0.6) voids.push([last.to_m, bottom_m]);
  return voids;
}
