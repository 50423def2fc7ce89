// Transport of one field along the hole for one tick: conservative, any distance per tick, little smearing.

/** The column that fields are carried along: cells of height dz_m from the mouth down, the last one ending at bottom_m. */
export interface Column {
  cells: number;
  dz_m: number;
  bottom_m: number;
}

/** What left the column: over the mouth, and through the bottom. */
export interface Ends {
  top: number;
  topMoment: number;
  bottom: number;
  bottomMoment: number;
}

/** What came in at a face (the bit) and is carried up from there. */
export interface Entry {
  /** Index of the face: 0 the mouth, `cells` the bottom. */
  face: number;
  amount: number;
  moment: number;
}

/** Scratch of one sweep. */
export interface FieldWork {
  amount: Float64Array;
  moment: Float64Array;
  slope: Float64Array;
}

export const createFieldWork = (cells: number): FieldWork => ({
  amount: new Float64Array(cells),
  moment: new Float64Array(cells),
  slope: new Float64Array(cells),
});

/** Amounts below this travel undivided, so that the forerunners of a front do not dwindle into denormal numbers. */
const UNDIVIDED = 1e-24;
/** A carried cell thinner than this, m, counts as a point. */
const POINT_m = 1e-12;

const faceDepth_m = (column: Column, face: number): number =>
  face >= column.cells ? column.bottom_m : face * column.dz_m;

/** Where the matter just above a face is after dt when it moves up: cell by cell at each cell's own speed, until one that sinks. */
function carriedUp_m(column: Column, up_ms: Float64Array, face: number, dt_s: number): number {
  let at_m = faceDepth_m(column, face);
  let left_s = dt_s;
  let i = face - 1;
  for (; i >= 0; i--) {
    const speed = up_ms[i];
    if (speed <= 0) return at_m;
    const top_m = i * column.dz_m;
    const need_s = (at_m - top_m) / speed;
    if (need_s >= left_s) return at_m - speed * left_s;
    left_s -= need_s;
    at_m = top_m;
  }
  return at_m - Math.max(0, up_ms[0]) * left_s;
}

/** Where the matter just below a face is after dt when it sinks. */
function carriedDown_m(column: Column, up_ms: Float64Array, face: number, dt_s: number): number {
  let at_m = faceDepth_m(column, face);
  let left_s = dt_s;
  for (let i = face; i < column.cells; i++) {
    const speed = -up_ms[i];
    if (speed <= 0) return at_m;
    const bottom_m = faceDepth_m(column, i + 1);
    const need_s = (bottom_m - at_m) / speed;
    if (need_s >= left_s) return at_m + speed * left_s;
    left_s -= need_s;
    at_m = bottom_m;
  }
  return at_m + Math.max(0, -up_ms[column.cells - 1]) * left_s;
}

/** Relative slope of the amount per metre within each cell, van Leer's limited: no new highs or lows, nothing below zero. */
function slopesInto(slope: Float64Array, column: Column, field: Float64Array, base: number): void {
  const last = column.cells - 1;
  const lastLength = column.bottom_m - last * column.dz_m;
  for (let i = 0; i <= last; i++) {
    slope[i] = 0;
    if (i === 0 || i === last) continue;
    const here = field[base + i] / column.dz_m;
    if (here <= 0) continue;
    const above = field[base + i - 1] / column.dz_m;
    const below = field[base + i + 1] / (i + 1 === last ? lastLength : column.dz_m);
    const rise = (below - here) * (here - above);
    if (rise > 0) slope[i] = (2 * rise) / ((below - above) * here);
  }
}

/** Lays an amount that spans from_m to to_m onto the cells; slope is relative, positive where it thickens downwards. */
function lay(
  work: FieldWork,
  column: Column,
  ends: Ends,
  from_m: number,
  to_m: number,
  amount: number,
  moment: number,
  slope: number,
): void {
  const span_m = to_m - from_m;
  if (span_m < POINT_m || amount < UNDIVIDED) {
    const at_m = (from_m + to_m) / 2;
    if (at_m < 0) {
      ends.top += amount;
      ends.topMoment += moment;
    } else if (at_m > column.bottom_m) {
      ends.bottom += amount;
      ends.bottomMoment += moment;
    } else {
      const i = Math.min(column.cells - 1, Math.floor(at_m / column.dz_m));
      work.amount[i] += amount;
      work.moment[i] += moment;
    }
    return;
  }
  let done = 0;
  if (from_m < 0) {
    done = to_m <= 0 ? 1 : shareAbove(-from_m / span_m, slope);
    ends.top += amount * done;
    ends.topMoment += moment * done;
    if (done === 1) return;
  }
  let i = from_m <= 0 ? 0 : Math.min(column.cells, Math.floor(from_m / column.dz_m));
  if (from_m >= column.bottom_m) i = column.cells;
  for (; i < column.cells; i++) {
    const floor_m = faceDepth_m(column, i + 1);
    const next = to_m <= floor_m ? 1 : floor_m <= from_m ? done : shareAbove((floor_m - from_m) / span_m, slope);
    work.amount[i] += amount * (next - done);
    work.moment[i] += moment * (next - done);
    done = next;
    if (done === 1) return;
  }
  ends.bottom += amount * (1 - done);
  ends.bottomMoment += moment * (1 - done);
}

/** Share of a carried cell's amount above a place in it (0 its top, 1 its bottom). */
const shareAbove = (place: number, slope: number): number => place + 0.5 * slope * (place * place - place);

/**
 * Carries field (and, in the same shares, moment) of the cells base .. base + column.cells - 1 over dt_s at the cells' upward
 * speeds. Cells are carried by their edges, whose paths never cross, and laid back onto the grid; so what leaves one cell
 * arrives in another to the last bit of rounding. Where the cell above moves away upwards from the one below, entry fills the
 * gap at its face; an entry that is not carried up goes into the cell below its face. ends is set, not added to.
 * Source of the method: conservative semi-Lagrangian remapping with van Leer's limited slopes (van Leer 1977).
 */
export function carryField(
  field: Float64Array,
  moment: Float64Array | null,
  base: number,
  column: Column,
  up_ms: Float64Array,
  dt_s: number,
  entry: Entry,
  ends: Ends,
  work: FieldWork,
): void {
  const n = column.cells;
  ends.top = 0;
  ends.topMoment = 0;
  ends.bottom = 0;
  ends.bottomMoment = 0;
  slopesInto(work.slope, column, field, base);
  for (let i = 0; i < n; i++) {
    work.amount[i] = 0;
    work.moment[i] = 0;
  }
  for (let i = 0; i < n; i++) {
    const amount = field[base + i];
    if (amount <= 0) continue;
    const speed = up_ms[i];
    let from_m = faceDepth_m(column, i);
    let to_m = faceDepth_m(column, i + 1);
    if (speed > 0) {
      from_m = carriedUp_m(column, up_ms, i, dt_s);
      to_m = carriedUp_m(column, up_ms, i + 1, dt_s);
    } else if (speed < 0) {
      from_m = carriedDown_m(column, up_ms, i, dt_s);
      to_m = carriedDown_m(column, up_ms, i + 1, dt_s);
    }
    lay(work, column, ends, from_m, to_m, amount, moment === null ? 0 : moment[base + i], work.slope[i]);
  }
  if (entry.amount > 0) {
    const face = Math.min(n, Math.max(0, entry.face));
    if (face > 0 && up_ms[face - 1] > 0) {
      const from_m = carriedUp_m(column, up_ms, face, dt_s);
      lay(work, column, ends, from_m, faceDepth_m(column, face), entry.amount, entry.moment, 0);
    } else {
      const i = Math.min(n - 1, face);
      work.amount[i] += entry.amount;
      work.moment[i] += entry.moment;
    }
  }
  for (let i = 0; i < n; i++) {
    field[base + i] = work.amount[i];
    if (moment !== null) moment[base + i] = work.moment[i];
  }
}
