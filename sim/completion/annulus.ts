// What stands round the casing, cell by cell: the same cells as those of the hole.
import { FILL_COUNT } from './fills';

/** Arrays by fill are fill-major: fill f, cell i at f*cells + i. There is an annulus once the crew has begun to fill round the casing. */
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
  /** Of it, the part on its way down. */
  falling_m3: Float64Array;
  /** 1 where the fill of a cell rests on a bridge under it, over a void. */
  bridged: Float64Array;
  /** Share of the seal in a cell that is spoilt: dry, salty, disturbed before it was ready. */
  spoilt_frac: Float64Array;
  /** Share of the pores of a pack or of caved ground that cement has entered. */
  clogged_frac: Float64Array;
  /** Bulk volume of each fill put in or caved in so far, m3. */
  put_m3: Float64Array;
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
    bridged: new Float64Array(cells),
    spoilt_frac: new Float64Array(cells),
    clogged_frac: new Float64Array(cells),
    put_m3: new Float64Array(FILL_COUNT),
  };
}
