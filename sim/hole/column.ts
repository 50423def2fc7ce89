// The column as it stands: room, steel and grains of every cell, and where the fluid's surface is.
import { CLASS_COUNT, FINE_CLASS_COUNT } from '../materials/sizes';
import type { Column } from './field';
import { cellVolume_m3, steelArea_m2, type HoleState, type StemPlace } from './hole';
import type { HoleWork } from './work';

/** A section narrower than this counts as this, m2: a closed cell passes fluid as fast as need be, but not at an infinite speed. */
const LEAST_SECTION_m2 = 1e-6;

/**
 * Sets room and free section of the cells in use from `start` on; work.column.bottom_m must be set. work.bitFace: the face at
 * the bit; a cell counts as ring where its middle lies above the bit.
 */
export function readRoom(hole: HoleState, work: HoleWork, place: StemPlace, start: number): void {
  const { volume_m3, section_m2 } = work;
  const { bottom_m } = work.column;
  const { dz_m, used, radius_m } = hole;
  const { bit_m } = place;
  const steel_m2 = steelArea_m2(place);
  let bitFace = start === 0 ? 0 : Math.min(work.bitFace, start);
  for (let i = start; i < used; i++) {
    const top_m = i * dz_m;
    const floor_m = i === used - 1 ? bottom_m : top_m + dz_m;
    const open_m2 = Math.PI * radius_m[i] * radius_m[i];
    const steel_m = bit_m <= top_m ? 0 : bit_m >= floor_m ? floor_m - top_m : bit_m - top_m;
    const inRing = (top_m + floor_m) / 2 < bit_m;
    if (inRing) bitFace = i + 1;
    volume_m3[i] = Math.max(0, open_m2 * (floor_m - top_m) - steel_m2 * steel_m);
    section_m2[i] = Math.max(LEAST_SECTION_m2, inRing ? open_m2 - steel_m2 : open_m2);
  }
  work.bitFace = bitFace;
}

/** Room of the whole hole, the bed's included, m3; readRoom must have been called for all cells in use. */
export function capacityOf_m3(hole: HoleState, work: HoleWork, place: StemPlace): number {
  let capacity_m3 = roomBelow_m3(hole, work.column.bottom_m, place);
  const { volume_m3 } = work;
  for (let i = 0; i < hole.used; i++) capacity_m3 += volume_m3[i];
  return capacity_m3;
}

/** Room of the hole from bottom_m, in the last cell in use, down to its depth. */
function roomBelow_m3(hole: HoleState, bottom_m: number, place: StemPlace): number {
  let room_m3 = 0;
  for (let i = hole.used - 1; i < hole.cells && i * hole.dz_m < hole.depth_m; i++) {
    room_m3 += cellVolume_m3(hole, i, Math.min((i + 1) * hole.dz_m, hole.depth_m), place);
  }
  // The last cell in use may end short of its place in the grid, or beyond it.
  return room_m3 - cellVolume_m3(hole, hole.used - 1, bottom_m, place);
}

/** Counts the grains, and the fines among them, of the cells in use from `start` on. */
export function countGrains(hole: HoleState, work: HoleWork, start: number): void {
  const { grains_m3, fines_m3 } = work;
  const { solids_m3, used, cells } = hole;
  for (let i = start; i < used; i++) {
    let grains = 0;
    let at = i;
    for (let k = 0; k < FINE_CLASS_COUNT; k++) {
      grains += solids_m3[at];
      at += cells;
    }
    fines_m3[i] = grains;
    for (let k = FINE_CLASS_COUNT; k < CLASS_COUNT; k++) {
      grains += solids_m3[at];
      at += cells;
    }
    grains_m3[i] = grains;
  }
}

/** Grains in the whole hole, bed included, m3; countGrains must have been called for all cells in use. */
export function grainsOf_m3(hole: HoleState, work: HoleWork): number {
  let grains_m3 = 0;
  const { grains_m3: inCell_m3 } = work;
  for (let i = 0; i < hole.used; i++) grains_m3 += inCell_m3[i];
  for (let k = 0; k < CLASS_COUNT; k++) grains_m3 += hole.bed_m3[k];
  return grains_m3;
}

/** First of `count` values from base on that is not 0, counted from base; count when all are. */
export function firstPresent(field: Float64Array, base: number, count: number): number {
  let i = 0;
  while (i < count && field[base + i] === 0) i++;
  return i;
}

/** The last one, -1 when all are 0. */
export function lastPresent(field: Float64Array, base: number, count: number): number {
  let i = count - 1;
  while (i >= 0 && field[base + i] === 0) i--;
  return i;
}

/**
 * Finds the surface when empty_m3 are missing at the top. Sets cell and depth of the column's top before (after = false) or
 * after the tick, and returns what that top cell holds. It is half a cell to one and a half high, as the last one is.
 */
export function findSurface(work: HoleWork, empty_m3: number, after: boolean): number {
  const { column, volume_m3 } = work;
  const n = column.cells;
  let left_m3 = empty_m3;
  let level_m = 0;
  let i = 0;
  if (left_m3 > 0) {
    while (i < n && left_m3 >= volume_m3[i]) left_m3 -= volume_m3[i++];
    const top_m = i * column.dz_m;
    const floor_m = i >= n - 1 ? column.bottom_m : top_m + column.dz_m;
    level_m = i >= n ? column.bottom_m : top_m + (left_m3 / volume_m3[i]) * (floor_m - top_m);
  }
  const cell = Math.min(n - 1, Math.round(level_m / column.dz_m));
  let held_m3 = -empty_m3;
  for (let j = 0; j <= cell; j++) held_m3 += volume_m3[j];
  if (after) {
    column.to = cell;
    column.to_m = level_m;
  } else {
    column.from = cell;
    column.from_m = level_m;
  }
  return Math.max(0, held_m3);
}

/** Lets the matter of cells above the surface join the column's first cell. */
export function foldTop(field: Float64Array, base: number, column: Column, first: number): void {
  for (let i = first; i < column.from; i++) {
    field[base + column.from] += field[base + i];
    field[base + i] = 0;
  }
}

/** Bottom of cell i of those in use, m. */
export const cellBottom_m = (hole: HoleState, i: number, bedTop_m: number): number =>
  i === hole.used - 1 ? bedTop_m : (i + 1) * hole.dz_m;
