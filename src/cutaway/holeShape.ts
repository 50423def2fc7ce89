// The hole's outline in pixels from the cells' radii: straight between the middles of neighbouring cells.

import { halfOf, yOf, type Place } from './place';
import type { ShownHole } from './shown';

/** Radius at a depth, m, between the middles of the cells. */
export function radiusAt(hole: ShownHole, depth_m: number): number {
  return betweenCells(hole, hole.radius_m, depth_m);
}

/** A figure of the cells at a depth: straight between the cells' middles. */
export function betweenCells(hole: ShownHole, values: Float64Array, depth_m: number): number {
  const at = depth_m / hole.dz_m - 0.5;
  const last = Math.max(0, hole.cells - 1);
  const i = Math.max(0, Math.min(last, Math.floor(at)));
  const j = Math.min(last, i + 1);
  const share = Math.max(0, Math.min(1, at - i));
  const a = values[i];
  return a + ((values[j] ?? a) - a) * share;
}

/** Depths at which the outline has a corner, between two depths: both ends and the cells' middles between. */
export function cornersInto(out: number[], hole: ShownHole, top_m: number, bottom_m: number): number {
  let count = 0;
  out[count++] = top_m;
  const first = Math.ceil(top_m / hole.dz_m - 0.5 + 1e-9);
  for (let i = first; i < hole.cells; i++) {
    const depth_m = (i + 0.5) * hole.dz_m;
    if (depth_m >= bottom_m) break;
    if (depth_m > top_m) out[count++] = depth_m;
  }
  out[count++] = bottom_m;
  return count;
}

/** A wide place in the wall is drawn no wider than to the ruler's figures. */
export function halfWall_px(place: Place, radius_m: number): number {
  const half = halfOf(place, radius_m);
  return place.zoom > 1 ? half : Math.min(half, place.axis_x - 2.2 * place.text_px - place.hole_x);
}

const corners: number[] = [];

/** Closed outline of the hole between two depths, pixels rounded down the picture so that slices meet without a seam. */
export function slicePolygon(hole: ShownHole, place: Place, top_m: number, bottom_m: number): number[] {
  const count = cornersInto(corners, hole, top_m, bottom_m);
  const points: number[] = [];
  for (let i = 0; i < count; i++) {
    const depth_m = corners[i];
    points.push(place.hole_x - halfWall_px(place, radiusAt(hole, depth_m)), Math.round(yOf(place, depth_m)));
  }
  for (let i = count - 1; i >= 0; i--) {
    const depth_m = corners[i];
    points.push(place.hole_x + halfWall_px(place, radiusAt(hole, depth_m)), Math.round(yOf(place, depth_m)));
  }
  return points;
}
