// Where the matter at each face of the column was a tick ago.
import type { Column, FieldWork } from './field';

/** A share of a cell below this is rounding. */
const NO_SHARE = 1e-12;

function setOrigin(f: number, j: number, at: number, work: FieldWork): void {
  work.cell[f] = j;
  work.part[f] = at < NO_SHARE ? 0 : at;
}

/** Goes down from place p0 of cell j for `time` of the tick, against matter that rises, and sets face f to where it ends. */
function walkDown(f: number, start: number, p0: number, time: number, last: number, work: FieldWork): void {
  const { way } = work;
  let j = start;
  let at = p0;
  let left = time;
  while (j <= last && way[j] > 0) {
    const reach = at + way[j] * left;
    if (reach < 1) {
      setOrigin(f, j, reach, work);
      return;
    }
    left -= (1 - at) / way[j];
    at = 0;
    j++;
    if (left <= 0) break;
  }
  setOrigin(f, j, at, work);
}

/** Goes up from face f against matter that sinks. */
function walkUp(f: number, first: number, work: FieldWork): void {
  const { way } = work;
  let j = f - 1;
  let left = 1;
  while (j >= first && way[j] < 0 && left > 0) {
    const reach = -way[j] * left;
    if (reach < 1) {
      setOrigin(f, j, 1 - reach, work);
      return;
    }
    left += 1 / way[j];
    j--;
  }
  setOrigin(f, j + 1, 0, work);
}

/** A face at depth_m where the column had none before the tick: above its surface, or within its first cell. */
function traceNearTop(
  f: number,
  depth_m: number,
  column: Column,
  height_m: number,
  last: number,
  work: FieldWork,
): void {
  const { from } = column;
  const way = work.way[from];
  const inside = (depth_m - column.from_m) / height_m;
  if (way > 0) {
    const time = inside < 0 ? 1 + inside / way : 1;
    if (time > 0) walkDown(f, from, Math.max(0, inside), time, last, work);
    else setOrigin(f, from, 0, work);
  } else setOrigin(f, from, Math.max(0, inside + way), work);
}

/** Faces from lo down to the upper edge of cell from: below the surface after the tick, above or within the first cell before it. */
function traceTop(column: Column, last: number, lo: number, hi: number, height_m: number, work: FieldWork): number {
  const { from, to } = column;
  let f = lo;
  if (f === to && column.to_m > 0) {
    // Nothing lies above the fluid's surface.
    setOrigin(f, from, 0, work);
    f++;
  }
  for (; f <= from && f <= hi; f++) {
    const depth_m = f * column.dz_m;
    if (f === from && depth_m === column.from_m && work.way[f] > 0) walkDown(f, f, 0, 1, last, work);
    else traceNearTop(f, depth_m, column, height_m, last, work);
  }
  return f;
}

/**
 * Traces the faces lo to hi back over the tick, through cells whose matter has one speed each: work.way, its upward way in
 * heights of a whole cell, here brought to those of the cells. Matter stops at the edge of a cell that moves against it; faces never cross. first and last: outside these
 * cells there is nothing to be found.
 */
export function traceFaces(column: Column, first: number, last: number, lo: number, hi: number, work: FieldWork): void {
  const { way, cell, part } = work;
  const { cells: n, dz_m, from } = column;
  const end = Math.min(n, Math.max(hi, last) + 1);
  way[n] = 0;
  work.rising = column.from_m === 0 && column.to_m === 0;
  // The first and the last cell may be lower or higher than the rest.
  const height_m = Math.max(1e-9, (from === n - 1 ? column.bottom_m : (from + 1) * dz_m) - column.from_m);
  if (Math.min(lo - 1, first) <= from) way[from] *= dz_m / height_m;
  if (end === n && from < n - 1) way[n - 1] *= dz_m / (column.bottom_m - (n - 1) * dz_m);
  for (let f = lo <= from || lo === column.to ? traceTop(column, last, lo, hi, height_m, work) : lo; f <= hi; f++) {
    const below = way[f];
    if (below > 0) {
      if (below < 1) {
        cell[f] = f;
        part[f] = below < NO_SHARE ? 0 : below;
        continue;
      }
      // Most faces come from the second cell below.
      const reach = f < last ? way[f + 1] * (1 - 1 / below) : -1;
      if (reach >= NO_SHARE && reach < 1) {
        cell[f] = f + 1;
        part[f] = reach;
      } else walkDown(f, f, 0, 1, last, work);
    } else if (way[f - 1] < 0) {
      walkUp(f, first, work);
      work.rising = false;
    } else {
      cell[f] = f;
      part[f] = 0;
    }
  }
}
