// What stands round the casing, cell by cell: the same cells as those of the hole.
import { FILL_COUNT } from './fills';

/** Arrays by fill are fill-major: fill f, cell i at f*cells + i. There is an annulus once the casing is set. */
export interface AnnulusState {
  dz_m: number;
  cells: number;
  /** Cells in use, from the ground level to the bottom of the hole. */
  used: number;
  /** Radius of the wall by cell, m, as it was when the casing was set, and wider where it has caved in since. */
  radius_m: Float64Array;
  /** How far the pipe stands off the middle, as a share of the gap: 0 in the middle, 1 against the wall. */
  offMiddle_frac: Float64Array;
  /** Bulk volume of each fill at rest, by cell, m3; below the lower end of the casing too. */
  fill_m3: Float64Array;
  /** What is on its way down, by fill and cell, and by fill in all, m3; how fast each falls, m/s. */
  falling_m3: Float64Array;
  inFlight_m3: Float64Array;
  fall_ms: Float64Array;
  /** 1 where the fill of a cell rests on a bridge at its floor, over a void. */
  bridged: Float64Array;
  /** Share of the seal in a cell that is spoilt: dry, salty, disturbed before it was ready. */
  spoilt_frac: Float64Array;
  /** Share of the pores of a pack that cement has entered. */
  clogged_frac: Float64Array;
  /** Share of the fluid's pressure that held the wall when the casing was set. */
  support_frac: Float64Array;
  /** Bulk volume of each fill put in or caved in so far, and of it what has gone into the pores of a pack, m3. */
  put_m3: Float64Array;
  entered_m3: number;
  /** The fluid that stood in the ring when the casing was set. */
  K_Pasn: number;
  n_ratio: number;
  density_kgm3: number;
  salt_gL: number;
  /** Level at which the wall was last looked at, m; whether something caved then. */
  looked_m: number;
  /** Cell in which the pieces that fall now will jam, and the fill they are of; -1: nowhere. */
  jamCell: number;
  jamFill: number;
  caves: boolean;
}

export function createAnnulus(dz_m: number, cells: number, used: number): AnnulusState {
  return {
    dz_m,
    cells,
    used,
    radius_m: new Float64Array(cells),
    offMiddle_frac: new Float64Array(cells),
    fill_m3: new Float64Array(FILL_COUNT * cells),
    falling_m3: new Float64Array(FILL_COUNT * cells),
    inFlight_m3: new Float64Array(FILL_COUNT),
    fall_ms: new Float64Array(FILL_COUNT),
    bridged: new Float64Array(cells),
    spoilt_frac: new Float64Array(cells),
    clogged_frac: new Float64Array(cells),
    support_frac: new Float64Array(cells),
    put_m3: new Float64Array(FILL_COUNT),
    entered_m3: 0,
    K_Pasn: 1e-3,
    n_ratio: 1,
    density_kgm3: 1000,
    salt_gL: 0,
    looked_m: -1,
    jamCell: -1,
    jamFill: -1,
    caves: true,
  };
}

/** The casing as it takes room in the ring. */
export interface Standpipe {
  readonly outside_m: number;
  readonly shoe_m: number;
}

/** Room of cell i round the casing, and of the whole hole below it, m3. Worked value: cell of .25 m, hole .1 m, casing 63 mm through it -> 1.1842e-3. */
export function cellRoom_m3({ dz_m, radius_m }: AnnulusState, i: number, { outside_m, shoe_m }: Standpipe): number {
  const pipe_m = Math.min((i + 1) * dz_m, Math.max(i * dz_m, shoe_m)) - i * dz_m;
  const hole_m2 = Math.PI * radius_m[i] * radius_m[i];
  return Math.max(0, hole_m2 * dz_m - (Math.PI / 4) * outside_m * outside_m * pipe_m);
}

/** All fill at rest in cell i, m3. */
export function standing_m3({ fill_m3, cells }: AnnulusState, i: number): number {
  let whole_m3 = 0;
  for (let f = 0; f < FILL_COUNT; f++) whole_m3 += fill_m3[f * cells + i];
  return whole_m3;
}

/** Room of cell i that nothing stands in, m3. */
export const freeRoom_m3 = (annulus: AnnulusState, i: number, pipe: Standpipe): number =>
  Math.max(0, cellRoom_m3(annulus, i, pipe) - standing_m3(annulus, i));

/** Less room than this share of a cell is none: rounding, and the last grains. */
const NO_ROOM_frac = 1e-6;

export const isFull = (annulus: AnnulusState, i: number, pipe: Standpipe): boolean =>
  freeRoom_m3(annulus, i, pipe) <= NO_ROOM_frac * cellRoom_m3(annulus, i, pipe);

/** What comes down to cell i stays there: on the bottom, on a bridge, on a full cell. */
export const restsIn = (annulus: AnnulusState, i: number, pipe: Standpipe): boolean =>
  i >= annulus.used - 1 || annulus.bridged[i] === 1 || isFull(annulus, i + 1, pipe);

/** Cell that holds the top of what stands in the ring, seen from above; `used` where nothing does. */
export function topCell(annulus: AnnulusState): number {
  let i = 0;
  while (i < annulus.used && !(standing_m3(annulus, i) > 0)) i++;
  return i;
}

/** Depth of that top, m: what a weighted line finds. */
export function top_m(annulus: AnnulusState, pipe: Standpipe): number {
  const i = topCell(annulus);
  if (i >= annulus.used) return annulus.used * annulus.dz_m;
  const room_m3 = cellRoom_m3(annulus, i, pipe);
  const share = room_m3 > 0 ? Math.min(1, standing_m3(annulus, i) / room_m3) : 1;
  return (i + 1 - share) * annulus.dz_m;
}
