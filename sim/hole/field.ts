// Transport of one field along the hole for one tick: conservative, any distance per tick, little smearing.

/** The column that fields are carried along: cells of height dz_m from the mouth down, the last one ending at bottom_m. */
export interface Column {
  cells: number;
  dz_m: number;
  bottom_m: number;
}

/** What came in at a face (the bit) and is carried up from there. */
export interface Entry {
  /** Index of the face: 0 the mouth, `cells` the bottom. */
  face: number;
  amount: number;
  moment: number;
}

/** Scratch of one sweep: only numbers in typed arrays, so that nothing is allocated in a tick. */
export interface FieldWork {
  /** Where the edges of each cell's matter are after the tick, m. */
  from_m: Float64Array;
  to_m: Float64Array;
  slope: Float64Array;
  amount: Float64Array;
  moment: Float64Array;
  /** What left the column, set by carryField: see TOP ... BOTTOM_MOMENT. */
  ends: Float64Array;
}

/** Places in FieldWork.ends: what went over the mouth, and through the bottom. */
export const TOP = 0;
export const TOP_MOMENT = 1;
export const BOTTOM = 2;
export const BOTTOM_MOMENT = 3;

export const createFieldWork = (cells: number): FieldWork => ({
  from_m: new Float64Array(cells + 1),
  to_m: new Float64Array(cells + 1),
  slope: new Float64Array(cells + 1),
  amount: new Float64Array(cells),
  moment: new Float64Array(cells),
  ends: new Float64Array(4),
});

/** Amounts below this travel undivided, so that the forerunners of a front do not dwindle into denormal numbers. */
const UNDIVIDED = 1e-24;
/** A carried cell thinner than this, m, counts as a point. */
const POINT_m = 1e-12;

/**
 * Where the edges of every cell's matter get to in dt: each edge goes cell by cell at each cell's own speed, up or down, and
 * stops at the edge of a cell that moves against it. Edges never cross.
 */
function carryEdges(column: Column, up_ms: Float64Array, dt_s: number, work: FieldWork): void {
  const { from_m, to_m } = work;
  const n = column.cells;
  const dz = column.dz_m;
  const bottom = column.bottom_m;
  for (let i = 0; i < n; i++) {
    const speed = up_ms[i];
    const top = i * dz;
    const floor = i === n - 1 ? bottom : top + dz;
    if (speed > 0) {
      from_m[i] = i === 0 ? -speed * dt_s : up_ms[i - 1] > 0 ? to_m[i - 1] : top;
      let left = dt_s - (floor - top) / speed;
      if (left <= 0) {
        to_m[i] = floor - speed * dt_s;
        continue;
      }
      let j = i - 1;
      let at = top;
      while (j >= 0 && left > 0 && up_ms[j] > 0) {
        const need = dz / up_ms[j];
        at = need >= left ? at - up_ms[j] * left : j * dz;
        left -= need;
        j--;
      }
      to_m[i] = j < 0 && left > 0 ? at - up_ms[0] * left : at;
    } else if (speed === 0) {
      from_m[i] = top;
      to_m[i] = floor;
    }
  }
  for (let i = n - 1; i >= 0; i--) {
    const speed = -up_ms[i];
    if (speed <= 0) continue;
    const top = i * dz;
    const floor = i === n - 1 ? bottom : top + dz;
    to_m[i] = i === n - 1 ? floor + speed * dt_s : up_ms[i + 1] < 0 ? from_m[i + 1] : floor;
    let left = dt_s - (floor - top) / speed;
    if (left <= 0) {
      from_m[i] = top + speed * dt_s;
      continue;
    }
    let j = i + 1;
    let at = floor;
    while (j < n && left > 0 && up_ms[j] < 0) {
      const end = j === n - 1 ? bottom : (j + 1) * dz;
      const need = (at - end) / up_ms[j];
      at = need >= left ? at - up_ms[j] * left : end;
      left -= need;
      j++;
    }
    from_m[i] = j >= n && left > 0 ? at - up_ms[n - 1] * left : at;
  }
}

/** Relative slope of the amount per metre within each cell, van Leer's limited: no new highs or lows, nothing below zero. */
function setSlopes(column: Column, field: Float64Array, base: number, slope: Float64Array): void {
  const last = column.cells - 1;
  slope[0] = 0;
  slope[last] = 0;
  // The last cell's length differs: its amount is brought to that of a whole cell.
  const lastScale = column.dz_m / (column.bottom_m - last * column.dz_m);
  for (let i = 1; i < last; i++) {
    const here = field[base + i];
    const above = field[base + i - 1];
    const below = i + 1 === last ? field[base + last] * lastScale : field[base + i + 1];
    const rise = (below - here) * (here - above);
    slope[i] = rise > 0 && here > 0 ? (2 * rise) / ((below - above) * here) : 0;
  }
}

/** Lays all carried cells back onto the grid. */
function layCells(
  column: Column,
  field: Float64Array,
  moment: Float64Array | null,
  base: number,
  work: FieldWork,
): void {
  for (let i = 0; i < column.cells; i++) {
    const amount = field[base + i];
    if (amount > 0) lay(column, amount, moment === null ? 0 : moment[base + i], i, work);
  }
}

/** Lays one amount that spans from_m[i] to to_m[i]; slope is relative, positive where it thickens downwards. */
function lay(column: Column, amount: number, moment: number, i: number, work: FieldWork): void {
  const { ends } = work;
  const n = column.cells;
  const dz = column.dz_m;
  const bottom = column.bottom_m;
  const from = work.from_m[i];
  const to = work.to_m[i];
  const span = to - from;
  if (span < POINT_m || amount < UNDIVIDED) {
    const at = (from + to) / 2;
    if (at < 0) {
      ends[TOP] += amount;
      ends[TOP_MOMENT] += moment;
    } else if (at > bottom) {
      ends[BOTTOM] += amount;
      ends[BOTTOM_MOMENT] += moment;
    } else {
      const j = Math.min(n - 1, Math.floor(at / dz));
      work.amount[j] += amount;
      work.moment[j] += moment;
    }
    return;
  }
  const half = 0.5 * work.slope[i];
  let done = 0;
  let j = 0;
  if (from < 0) {
    const place = Math.min(1, -from / span);
    done = place + half * (place * place - place);
    ends[TOP] += amount * done;
    ends[TOP_MOMENT] += moment * done;
    if (place === 1) return;
  } else {
    j = from >= bottom ? n : Math.min(n - 1, Math.floor(from / dz));
  }
  for (; j < n; j++) {
    const floor = j === n - 1 ? bottom : (j + 1) * dz;
    if (to <= floor) {
      work.amount[j] += amount * (1 - done);
      work.moment[j] += moment * (1 - done);
      return;
    }
    const place = Math.max(0, (floor - from) / span);
    const next = place + half * (place * place - place);
    work.amount[j] += amount * (next - done);
    work.moment[j] += moment * (next - done);
    done = next;
  }
  ends[BOTTOM] += amount * (1 - done);
  ends[BOTTOM_MOMENT] += moment * (1 - done);
}

/** Lays what entered: it fills the gap that the matter above the face left on its way up; one that is not carried up goes into the cell below the face. */
function layEntry(column: Column, up_ms: Float64Array, entry: Entry, work: FieldWork): void {
  const n = column.cells;
  const face = Math.min(n, Math.max(0, entry.face));
  if (face > 0 && up_ms[face - 1] > 0) {
    work.from_m[n] = work.to_m[face - 1];
    work.to_m[n] = face === n ? column.bottom_m : face * column.dz_m;
    work.slope[n] = 0;
    lay(column, entry.amount, entry.moment, n, work);
    return;
  }
  const i = Math.min(n - 1, face);
  work.amount[i] += entry.amount;
  work.moment[i] += entry.moment;
}

/**
 * Carries field (and, in the same shares, moment) of the cells base .. base + column.cells - 1 over dt_s at the cells' upward
 * speeds, m/s, and brings entry in. Cells are carried by their edges and laid back onto the grid, so what leaves one cell
 * arrives in another to the last bit of rounding; what leaves the column is set in work.ends.
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
  work: FieldWork,
): void {
  const n = column.cells;
  work.ends.fill(0);
  for (let i = 0; i < n; i++) {
    work.amount[i] = 0;
    work.moment[i] = 0;
  }
  carryEdges(column, up_ms, dt_s, work);
  setSlopes(column, field, base, work.slope);
  layCells(column, field, moment, base, work);
  if (entry.amount > 0) layEntry(column, up_ms, entry, work);
  for (let i = 0; i < n; i++) {
    field[base + i] = work.amount[i];
    if (moment !== null) moment[base + i] = work.moment[i];
  }
}
