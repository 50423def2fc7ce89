// Transport of one field along the hole for one tick: each cell gathers what lay between its faces a tick ago.
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
  /** Way of a cell's matter in the tick, in heights of that cell, positive upwards. */
  way: Float64Array;
  /** By face: the cell that its matter came from, and how far down in that cell, 0 top to 1. */
  cell: Int32Array;
  part: Float64Array;
  /** By face: the share of that cell's matter that came from above there. */
  share: Float64Array;
  /** One over the room that a cell's matter fills: amount x dilution is what slopes are judged by. */
  dilution: Float64Array;
  amount: Float64Array;
  moment: Float64Array;
  /** What left the column, set by gather: see TOP ... BOTTOM_MOMENT. */
  ends: Float64Array;
}

/** Places in FieldWork.ends: what went over the mouth, and through the bottom. */
export const TOP = 0;
export const TOP_MOMENT = 1;
export const BOTTOM = 2;
export const BOTTOM_MOMENT = 3;
const SLICE = 4;
const SLICE_MOMENT = 5;

export const createFieldWork = (cells: number): FieldWork => ({
  way: new Float64Array(cells + 1),
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

/** Amounts below this travel undivided, so that the forerunners of a front do not dwindle into denormal numbers. */
const UNDIVIDED = 1e-24;

/**
 * Shares from parts for the faces lo to hi: van Leer's limited slope within each cell, so no new highs or lows and nothing below
 * zero. The column's first and last cell are taken as even.
 */
function setShares(field: Float64Array, base: number, column: Column, lo: number, hi: number, work: FieldWork): void {
  const { cell, part, share, dilution } = work;
  const top = column.from;
  const bottom = column.cells - 1;
  for (let f = lo; f <= hi; f++) {
    const p = part[f];
    share[f] = p;
    if (p === 0) continue;
    const j = cell[f];
    const at = base + j;
    const amount = field[at];
    if (amount < UNDIVIDED) share[f] = p < 0.5 ? 0 : 1;
    else if (j > top && j < bottom) {
      const here = amount * dilution[j];
      const above = field[at - 1] * dilution[j - 1];
      const below = field[at + 1] * dilution[j + 1];
      const rise = (below - here) * (here - above);
      if (rise > 0) share[f] = p + (rise / ((below - above) * here)) * (p * p - p);
    }
  }
}

/** Sums up what lies between the share `done` of cell j and the share `taken` of cell `to`, of the cells to last. */
function sumSlice(
  field: Float64Array,
  base: number,
  moment: Float64Array,
  momentBase: number,
  from: number,
  done: number,
  last: number,
  to: number,
  taken: number,
  work: FieldWork,
): void {
  let amount = 0;
  let origin = 0;
  for (let j = from; j <= last && j <= to; j++) {
    const part = (j === to ? taken : 1) - (j === from ? done : 0);
    amount += field[base + j] * part;
    origin += moment[momentBase + j] * part;
  }
  work.ends[SLICE] = amount;
  work.ends[SLICE_MOMENT] = origin;
}

/** Fills the cells lo to traced-1 of work.amount and work.moment from between their faces. Cells beyond `last` are empty. */
function layCells(
  field: Float64Array,
  base: number,
  moment: Float64Array,
  momentBase: number,
  first: number,
  last: number,
  lo: number,
  traced: number,
  open: boolean,
  work: FieldWork,
): void {
  const { cell, share, amount, moment: origin } = work;
  let j = open ? Math.max(first, cell[lo]) : first;
  let done = open && cell[lo] >= first ? share[lo] : 0;
  for (let i = lo; i < traced; i++) {
    const to = cell[i + 1];
    const taken = share[i + 1];
    let sum = 0;
    let momentSum = 0;
    if (to === j) {
      if (taken > done && j <= last) {
        sum = field[base + j] * (taken - done);
        momentSum = moment[momentBase + j] * (taken - done);
        done = taken;
      }
    } else if (to > j) {
      if (j <= last) {
        sum = field[base + j] * (1 - done);
        momentSum = moment[momentBase + j] * (1 - done);
        for (j++; j < to && j <= last; j++) {
          sum += field[base + j];
          momentSum += moment[momentBase + j];
        }
        if (to <= last) {
          sum += field[base + to] * taken;
          momentSum += moment[momentBase + to] * taken;
        }
      }
      j = to;
      done = taken;
    }
    amount[i] = sum;
    origin[i] = momentSum;
  }
}

function copyBack(
  field: Float64Array,
  base: number,
  moment: Float64Array,
  momentBase: number,
  lo: number,
  hi: number,
  { amount, moment: origin }: FieldWork,
): void {
  for (let i = lo; i < hi; i++) {
    field[base + i] = amount[i];
    moment[momentBase + i] = origin[i];
  }
}

/**
 * Lays out anew the cells lo to hi-1 of a field (and, in the same shares, of its moment) from the faces lo to hi in work.
 * first and last: the cells that held matter. What lay above the uppermost face of an open column, or below the lowest, is set in
 * work.ends. The shares of a cell add up to 1, so nothing is lost.
 */
export function gather(
  field: Float64Array,
  base: number,
  moment: Float64Array,
  momentBase: number,
  column: Column,
  first: number,
  last: number,
  lo: number,
  hi: number,
  work: FieldWork,
): void {
  const { ends, share } = work;
  const open = lo === column.to && column.to_m === 0;
  // Below the lowest face that is traced everything belongs to the last cell, unless that face is the bottom itself.
  const traced = hi === column.cells ? hi : hi - 1;
  setShares(field, base, column, open ? lo : lo + 1, traced, work);
  sumSlice(field, base, moment, momentBase, first, 0, last, open ? work.cell[lo] : first, open ? share[lo] : 0, work);
  ends[TOP] = ends[SLICE];
  ends[TOP_MOMENT] = ends[SLICE_MOMENT];
  layCells(field, base, moment, momentBase, first, last, lo, traced, open, work);
  const from = traced > lo || open ? work.cell[traced] : first;
  const done = traced > lo || open ? share[traced] : 0;
  sumSlice(field, base, moment, momentBase, from, done, last, last + 1, 0, work);
  ends[BOTTOM] = 0;
  ends[BOTTOM_MOMENT] = 0;
  if (traced < hi) {
    work.amount[traced] = ends[SLICE];
    work.moment[traced] = ends[SLICE_MOMENT];
  } else {
    ends[BOTTOM] = ends[SLICE];
    ends[BOTTOM_MOMENT] = ends[SLICE_MOMENT];
  }
  for (let i = first; i < lo; i++) {
    field[base + i] = 0;
    moment[momentBase + i] = 0;
  }
  copyBack(field, base, moment, momentBase, lo, hi, work);
}

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
 * Carries a field (and, in the same shares, its moment) over the tick and brings entry in. way: upward way of each cell's matter,
 * in heights of a whole cell, from column.from on. first and last: the cells outside which the field is empty. reach: no
 * matter goes further than so many cells. work.dilution must be set. What leaves the column is set in work.ends.
 * Source of the method: conservative semi-Lagrangian remapping with van Leer's limited slopes (van Leer 1977).
 */
export function carryField(
  field: Float64Array,
  moment: Float64Array,
  base: number,
  column: Column,
  way: Float64Array,
  entry: Entry,
  work: FieldWork,
  first = column.from,
  last = column.cells - 1,
  reach = column.cells,
): void {
  const lo = Math.max(column.to, first - reach);
  const hi = Math.max(lo + 1, Math.min(column.cells, last + 1 + reach));
  traceFaces(column, way, first, last, lo, hi, work);
  gather(field, base, moment, base, column, first, last, lo, hi, work);
  if (entry.amount > 0) addEntry(field, base, moment, column, entry, work);
}
