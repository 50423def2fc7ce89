// What went wrong with the wall in one tick, by cause, cell and volume: made anew each tick, told by the run.

/** In this order by number. level: the fluid stands too low; inflow: ground water runs in; noCake: head enough, but nothing on the wall for it to press on;
 * gap: the same in ground too open for any cake; swab: the pull took the pressure away; washout: the stream took the wall; squeeze, swelling: clay came in. */
export const CAUSES = ['level', 'inflow', 'noCake', 'gap', 'swab', 'washout', 'squeeze', 'swelling'] as const;
export type Cause = (typeof CAUSES)[number];

export const LEVEL = 0;
export const INFLOW = 1;
export const NO_CAKE = 2;
export const GAP = 3;
export const SWAB = 4;
export const WASHOUT = 5;
export const SQUEEZE = 6;
export const SWELLING = 7;

export interface Failures {
  /** Entries in use. */
  count: number;
  cause: Uint8Array;
  cell: Int32Array;
  /** Ground that fell or was washed off, pores included; for clay what the hole lost; m3. */
  volume_m3: Float64Array;
  /** 1 where the cell was sound before: the first tick of this failure. */
  begins: Uint8Array;
  /** The same by cause: entries that begin, ground in all, first and last cell (first above last: none). */
  begun: Uint16Array;
  whole_m3: Float64Array;
  first: Int32Array;
  last: Int32Array;
}

/** Deeper than any cell. */
const NO_CELL = 0x7fffffff;

export function createFailures(most: number): Failures {
  return {
    count: 0,
    cause: new Uint8Array(most),
    cell: new Int32Array(most),
    volume_m3: new Float64Array(most),
    begins: new Uint8Array(most),
    begun: new Uint16Array(CAUSES.length),
    whole_m3: new Float64Array(CAUSES.length),
    first: new Int32Array(CAUSES.length).fill(NO_CELL),
    last: new Int32Array(CAUSES.length).fill(-1),
  };
}

/** Makes the list empty. */
export function clearFailures(failures: Failures): void {
  if (failures.count === 0) return;
  failures.count = 0;
  failures.begun.fill(0);
  failures.whole_m3.fill(0);
  failures.first.fill(NO_CELL);
  failures.last.fill(-1);
}

/** Adds an entry; a full list keeps what it has. */
export function note(failures: Failures, cause: number, cell: number, volume_m3: number, begins: boolean): void {
  const at = failures.count;
  if (at >= failures.cause.length) return;
  failures.cause[at] = cause;
  failures.cell[at] = cell;
  failures.volume_m3[at] = volume_m3;
  failures.begins[at] = begins ? 1 : 0;
  failures.count = at + 1;
  if (begins) failures.begun[cause] += 1;
  failures.whole_m3[cause] += volume_m3;
  if (cell < failures.first[cause]) failures.first[cause] = cell;
  if (cell > failures.last[cause]) failures.last[cause] = cell;
}
