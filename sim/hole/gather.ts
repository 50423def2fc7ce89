// Lays a field out anew: each cell gathers what lay between the origins of its faces.
import type { Column, FieldWork } from './field';

/** Places in FieldWork.ends: what went over the mouth, and through the bottom. */
export const TOP = 0;
export const TOP_MOMENT = 1;
export const BOTTOM = 2;
export const BOTTOM_MOMENT = 3;
const SLICE = 4;
const SLICE_MOMENT = 5;

/** Amounts below this travel undivided, so that the forerunners of a front do not dwindle into denormal numbers. */
const UNDIVIDED = 1e-24;

/** Keeps 0/0 out, and changes nothing else: no product of two loads comes near it. */
const LEAST = 1e-300;

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
 * The same as gather in one pass and in place, where no face came from above: each cell is read before it is written. Nothing
 * reaches the bottom. Cells below `last` hold nothing.
 */
function gatherRising(
  field: Float64Array,
  base: number,
  moment: Float64Array,
  momentBase: number,
  column: Column,
  first: number,
  last: number,
  lo: number,
  work: FieldWork,
): void {
  const { cell, part, dilution, ends } = work;
  const top = column.from;
  const bottom = column.cells - 1;
  const open = lo === column.to && column.to_m === 0;
  let j = first;
  let done = 0;
  let amount = field[base + j];
  let origin = moment[momentBase + j];
  let above = j > top ? field[base + j - 1] * dilution[j - 1] : 0;
  let here = amount * dilution[j];
  let next = j < bottom ? field[base + j + 1] : 0;
  let below = j < bottom ? next * dilution[j + 1] : 0;
  ends[TOP] = 0;
  ends[TOP_MOMENT] = 0;
  ends[BOTTOM] = 0;
  ends[BOTTOM_MOMENT] = 0;
  for (let f = open ? lo : lo + 1; f <= last; f++) {
    const to = cell[f];
    const p = part[f];
    let sum = 0;
    let momentSum = 0;
    while (j < to && j <= last) {
      sum += amount * (1 - done);
      momentSum += origin * (1 - done);
      done = 0;
      j++;
      amount = next;
      origin = j <= bottom ? moment[momentBase + j] : 0;
      above = here;
      here = below;
      next = j < bottom ? field[base + j + 1] : 0;
      below = j < bottom ? next * dilution[j + 1] : 0;
    }
    if (p > 0 && j === to) {
      let share = p;
      if (amount < UNDIVIDED) share = p < 0.5 ? 0 : 1;
      else if (j > top && j < bottom) {
        // Without a branch: whether an even load rises or falls is chance.
        const rise = Math.max(0, (below - here) * (here - above));
        share += (rise / ((below - above) * here + LEAST)) * (p * p - p);
      }
      if (share > done) {
        sum += amount * (share - done);
        momentSum += origin * (share - done);
        done = share;
      }
    }
    if (f > lo) {
      field[base + f - 1] = sum;
      moment[momentBase + f - 1] = momentSum;
    } else {
      ends[TOP] = sum;
      ends[TOP_MOMENT] = momentSum;
    }
  }
  let rest = amount * (1 - done);
  let restMoment = origin * (1 - done);
  for (j++; j <= last; j++) {
    rest += field[base + j];
    restMoment += moment[momentBase + j];
  }
  field[base + last] = rest;
  moment[momentBase + last] = restMoment;
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
  if (work.rising) {
    gatherRising(field, base, moment, momentBase, column, first, last, lo, work);
    return;
  }
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
