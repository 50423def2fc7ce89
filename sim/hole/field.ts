// Transport of one field along the hole for one tick: each cell gathers what lay between its faces a tick ago.
import { gather, TOP, TOP_MOMENT } from './gather';
import { traceFaces } from './origins';

/**
 * The column that fields are carried along: cells of height dz_m from ground level down, the last one ending at bottom_m. It
 * starts where the fluid stands: at cell `from`, which begins at from_m, before the tick; at cell `to`, which begins at to_m,
 * after it. Cells above hold nothing.
 */
export interface Column {
  cells: number;
  dz_m: number;
  bottom_m: number;
  from: number;
  from_m: number;
  to: number;
  to_m: number;
}

/** A column that is full to the ground level and stays so. */
export const fullColumn = (cells: number, dz_m: number, bottom_m: number): Column => ({
  cells,
  dz_m,
  bottom_m,
  from: 0,
  from_m: 0,
  to: 0,
  to_m: 0,
});

/** What came in at a face (the bit): the part that is carried up from there, the rest goes into the cell below. */
export interface Entry {
  /** Index of the face: 0 the mouth, `cells` the bottom. */
  face: number;
  amount: number;
  moment: number;
  /** Share of the stream that turns upwards. */
  up_frac: number;
}

/** Scratch of one sweep: only numbers in typed arrays, so that nothing is allocated in a tick. */
export interface FieldWork {
  /** Way of a cell's matter in the tick, in heights of a whole cell, positive upwards. */
  way: Float64Array;
  /** No face of the last trace came from above. */
  rising: boolean;
  /** By face: the cell that its matter came from, and how far down in that cell, 0 top to 1. */
  cell: Int32Array;
  part: Float64Array;
  /** By face: the share of that cell's matter that came from above there. */
  share: Float64Array;
  /** One over the room that a cell's matter fills: amount x dilution is what slopes are judged by. */
  dilution: Float64Array;
  amount: Float64Array;
  moment: Float64Array;
  /** What left the column, set by gather: see TOP ... BOTTOM_MOMENT there. */
  ends: Float64Array;
}

export const createFieldWork = (cells: number): FieldWork => ({
  way: new Float64Array(cells + 1),
  rising: false,
  cell: new Int32Array(cells + 1),
  part: new Float64Array(cells + 1),
  share: new Float64Array(cells + 1),
  dilution: new Float64Array(cells).fill(1),
  amount: new Float64Array(cells),
  moment: new Float64Array(cells),
  ends: new Float64Array(6),
});

/** Room below which a cell counts as closed, m3. */
export const NO_ROOM_m3 = 1e-12;

/**
 * Adds what entered at the bit: it fills the gap that the matter above left on its way up, evenly in time. What does not
 * rise goes into the cell below. work.way must be set above the face.
 */
function addEntry(
  field: Float64Array,
  base: number,
  moment: Float64Array,
  column: Column,
  entry: Entry,
  work: FieldWork,
): void {
  const { way, ends } = work;
  const face = Math.min(column.cells, Math.max(column.to, entry.face));
  const rises = face > column.from && way[face - 1] > 0;
  const up = rises ? entry.amount * entry.up_frac : 0;
  const upMoment = rises ? entry.moment * entry.up_frac : 0;
  const below = base + Math.min(column.cells - 1, face);
  field[below] += entry.amount - up;
  moment[below] += entry.moment - upMoment;
  if (!(up > 0)) return;
  // Time of the tick left at each face on the way up: the share of the entry that gets there.
  let left = 1;
  let i = face - 1;
  for (; i >= column.from && way[i] > 0 && left > 0; i--) {
    const next = Math.max(0, left - 1 / way[i]);
    field[base + i] += up * (left - next);
    moment[base + i] += upMoment * (left - next);
    left = next;
  }
  if (left <= 0) return;
  if (i < column.from && column.to_m === 0) {
    ends[TOP] += up * left;
    ends[TOP_MOMENT] += upMoment * left;
  } else {
    field[base + Math.max(i + 1, column.to)] += up * left;
    moment[base + Math.max(i + 1, column.to)] += upMoment * left;
  }
}

/**
 * Carries a field (and, in the same shares, its moment) over the tick and brings entry in. work.way must be set (it is brought to
 * the heights of the first and the last cell). first and last: the cells outside which the field is empty. reach: no
 * matter goes further than so many cells. traced: the faces of the field before serve again. work.dilution must be set. What leaves the column is set in work.ends.
 * Source of the method: conservative semi-Lagrangian remapping with van Leer's limited slopes (van Leer 1977).
 */
export function carryField(
  field: Float64Array,
  moment: Float64Array,
  base: number,
  column: Column,
  entry: Entry,
  work: FieldWork,
  first = column.from,
  last = column.cells - 1,
  reach = column.cells,
  traced = false,
): void {
  const lo = Math.max(column.to, first - reach);
  const hi = Math.max(lo + 1, Math.min(column.cells, last + 1 + reach));
  if (!traced) traceFaces(column, first, last, lo, hi, work);
  gather(field, base, moment, base, column, first, last, lo, hi, work);
  if (entry.amount > 0) addEntry(field, base, moment, column, entry, work);
}
