// Grains as points that drift: how many there are follows the state, where they go follows the speed of fluid and
// fall. No drawing here, so that it can be tested without a screen.

import { DENSER, grainSize_px } from './grainSize';
import { radiusAt } from './holeShape';
import { scatter } from './scatter';
import type { CutawayView, ShownHole } from './shown';

export interface Drift {
  readonly room: number;
  /** Grains in use stand first. */
  count: number;
  readonly depth_m: Float64Array;
  /** Place across the gap: -1 at the left wall, 0 at the steel, 1 at the right wall. */
  readonly across: Float64Array;
  readonly sizeClass: Uint8Array;
  /** Number that a grain keeps for life: its look. */
  readonly mark: Int32Array;
  next: number;
  /** How many grains that should be drawn one drawn grain stands for; 1 where the room suffices. */
  thinning: number;
  /** Depths between which grains are followed, m: the whole hole, or what a lens shows of it. */
  from_m: number;
  to_m: number;
}

/** Coarser than silt: what is drawn grain by grain. */
const FIRST_CLASS = 2;

export function createDrift(room: number): Drift {
  return {
    room,
    count: 0,
    depth_m: new Float64Array(room),
    across: new Float64Array(room),
    sizeClass: new Uint8Array(room),
    mark: new Int32Array(room),
    next: 1,
    thinning: 1,
    from_m: 0,
    to_m: Infinity,
  };
}

function remove(drift: Drift, i: number): void {
  const last = --drift.count;
  drift.depth_m[i] = drift.depth_m[last];
  drift.across[i] = drift.across[last];
  drift.sizeClass[i] = drift.sizeClass[last];
  drift.mark[i] = drift.mark[last];
}

function add(drift: Drift, k: number, depth_m: number): void {
  if (drift.count >= drift.room) return;
  const i = drift.count++;
  const mark = drift.next++;
  drift.depth_m[i] = depth_m;
  const u = 2 * scatter(mark, 2) - 1;
  drift.across[i] = u;
  drift.sizeClass[i] = k;
  drift.mark[i] = mark;
}

/** Ends of the fluid of a cell that is followed, m. */
const fluidTop_m = (drift: Drift, hole: ShownHole, i: number): number =>
  Math.max(i * hole.dz_m, hole.level_m, drift.from_m);
const fluidBottom_m = (drift: Drift, hole: ShownHole, i: number): number =>
  Math.min((i + 1) * hole.dz_m, hole.depth_m - hole.bed_m, drift.to_m);

/** Drawn area of the fluid in a cell, the gap between steel and wall or the whole width below the bit, times DENSER, px2. */
function grainField_px2(drift: Drift, i: number, view: CutawayView, depth_pxm: number, across_pxm: number): number {
  const hole = view.hole!;
  const middle_m = (i + 0.5) * hole.dz_m;
  const steel_m = middle_m < view.stem.bit_m ? view.kit.rodOutside_m / 2 : 0;
  const wide_px = 2 * Math.max(0, hole.radius_m[i] - steel_m) * across_pxm;
  const bottom_m = fluidBottom_m(drift, hole, i);
  const top_m = fluidTop_m(drift, hole, i);
  return bottom_m > top_m ? DENSER * wide_px * (bottom_m - top_m) * depth_pxm : 0;
}

const wanted = new Float64Array(2048);
const present = new Int32Array(2048);

/**
 * Brings the number of grains of every class into line with the state: the share of the drawn fluid that grains cover
 * is DENSER times the share of the fluid's volume that they take. Shortfall and surplus are carried from cell to cell upwards, so
 * that even a class with less than one grain a cell has its true number over the whole hole.
 */
export function reconcile(drift: Drift, view: CutawayView, depth_pxm: number, across_pxm: number): void {
  const { hole } = view;
  if (!hole || hole.cells === 0) {
    drift.count = 0;
    return;
  }
  const cells = Math.min(hole.cells, wanted.length);
  const first = Math.max(0, Math.floor(drift.from_m / hole.dz_m));
  const end = Math.min(cells, Math.ceil(drift.to_m / hole.dz_m));
  for (let g = drift.count - 1; g >= 0; g--) {
    if (drift.depth_m[g] < drift.from_m || drift.depth_m[g] > drift.to_m) remove(drift, g);
  }
  let total = 0;
  for (let k = FIRST_CLASS; k < view.kit.grain_m.length; k++) {
    const d = grainSize_px(k, view.kit.grain_m[k], across_pxm);
    for (let i = first; i < end; i++) {
      const share = hole.solids_frac[k * hole.stride + i];
      if (share > 0) total += (share * grainField_px2(drift, i, view, depth_pxm, across_pxm)) / (0.785 * d * d);
    }
  }
  drift.thinning = Math.max(1, total / (drift.room * 0.92));
  for (let k = FIRST_CLASS; k < view.kit.grain_m.length; k++) {
    const d = grainSize_px(k, view.kit.grain_m[k], across_pxm);
    present.fill(0, 0, cells);
    for (let g = 0; g < drift.count; g++) {
      if (drift.sizeClass[g] !== k) continue;
      const i = Math.floor(drift.depth_m[g] / hole.dz_m);
      if (i >= 0 && i < cells) present[i] = present[i] + 1;
    }
    for (let i = first; i < end; i++) {
      const share = hole.solids_frac[k * hole.stride + i];
      wanted[i] =
        share > 0
          ? (share * grainField_px2(drift, i, view, depth_pxm, across_pxm)) / (0.785 * d * d * drift.thinning)
          : 0;
    }
    settle(drift, hole, k, first, end);
  }
}

/** Spawns and removes grains of one class so that the running sums of wanted and present never part by one or more. */
function settle(drift: Drift, hole: ShownHole, k: number, first: number, end: number): void {
  let gap = 0;
  for (let i = end - 1; i >= first; i--) {
    gap += wanted[i] - present[i];
    while (gap >= 1 && drift.count < drift.room) {
      const bottom_m = fluidBottom_m(drift, hole, i);
      const top_m = Math.min(bottom_m, fluidTop_m(drift, hole, i));
      add(drift, k, top_m + (bottom_m - top_m) * scatter(drift.next, 3));
      gap -= 1;
    }
    if (gap <= -1) gap += removeFrom(drift, hole, k, i, Math.floor(-gap));
  }
}

function removeFrom(drift: Drift, hole: ShownHole, k: number, cell: number, most: number): number {
  let removed = 0;
  for (let g = drift.count - 1; g >= 0 && removed < most; g--) {
    if (drift.sizeClass[g] !== k || Math.floor(drift.depth_m[g] / hole.dz_m) !== cell) continue;
    remove(drift, g);
    removed++;
  }
  return removed;
}

/**
 * Moves every grain by its own speed: that of the fluid where it is, less its fall. Those that leave are taken away; where
 * a lens shows a stretch of the hole, those that leave it in the fluid make room for others like them at its other end.
 */
export function advance(drift: Drift, view: CutawayView, time_s: number): void {
  const { hole } = view;
  if (!hole) return;
  const bottom_m = hole.depth_m - hole.bed_m;
  const low_m = Math.min(bottom_m, drift.to_m);
  const long_m = low_m - Math.max(hole.level_m, drift.from_m);
  const stretch = drift.to_m < Infinity && long_m > 0;
  for (let g = drift.count - 1; g >= 0; g--) {
    const k = drift.sizeClass[g];
    const at_m = drift.depth_m[g];
    const i = Math.max(0, Math.min(hole.cells - 1, Math.floor(at_m / hole.dz_m)));
    const up_ms = hole.up_ms[i] - hole.slip_ms[k * hole.stride + i];
    let depth_m = at_m - up_ms * time_s;
    if (stretch) depth_m = low_m - ((((low_m - depth_m) % long_m) + long_m) % long_m || 1e-6);
    if (depth_m <= hole.level_m || depth_m > bottom_m) remove(drift, g);
    else drift.depth_m[g] = depth_m;
  }
}

/** Where a grain stands across the hole, px from the axis. */
export function acrossOf_px(
  drift: Drift,
  g: number,
  view: CutawayView,
  hole: ShownHole,
  size_px: number,
  across_pxm: number,
): number {
  const depth_m = drift.depth_m[g];
  const wall_px = radiusAt(hole, depth_m) * across_pxm - size_px / 2 - 1;
  const u = drift.across[g];
  if (depth_m > view.stem.bit_m) return u * Math.max(0, wall_px);
  const steel_px = (view.kit.rodOutside_m / 2) * across_pxm + size_px / 2 + 0.5;
  const side = u < 0 ? -1 : 1;
  if (wall_px <= steel_px) return side * ((steel_px + wall_px) / 2);
  return side * (steel_px + Math.abs(u) * (wall_px - steel_px));
}
