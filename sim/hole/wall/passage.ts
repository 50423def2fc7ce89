// What gets through the hole: where it is tighter than the bit, and the bit that cuts it back.
import type { HoleState } from '../hole';
import type { WallGround } from '../wallGround';
import { addFallen, type Fallen } from './fallen';
import { openHeight_m } from './slough';

/** A hole this much tighter than the bit grips it, m in radius. ASSUMED: less is the play of the wings. */
const PLAY_m = 0.001;

export interface Tight {
  /** Length of hole above the bit that is tighter than it, m, and the mean undrained strength there, kPa. */
  length_m: number;
  su_kPa: number;
}

/** Reads how much of the hole above the bit is tighter than the bit: what a pull has to overcome. */
export function tightInto(out: Tight, hole: HoleState, ground: WallGround, bit_m: number, bitWidth_m: number): void {
  out.length_m = 0;
  out.su_kPa = 0;
  const radius_m = bitWidth_m / 2 - PLAY_m;
  for (let i = 0; i < hole.cells && i * hole.dz_m < Math.min(bit_m, hole.depth_m); i++) {
    if (hole.radius_m[i] >= radius_m) continue;
    const height_m = Math.min(openHeight_m(hole, i), bit_m - i * hole.dz_m);
    out.length_m += height_m;
    out.su_kPa += height_m * Math.max(0, ground.su_kPa[i]);
  }
  if (out.length_m > 0) out.su_kPa /= out.length_m;
}

/** Depth down to which a body of this radius can go from from_m on its way to to_m, m: the top of the first cell that is narrower. A bit passes with its play, a closed cell (radius 0) stops all. */
export function passableTo_m(hole: HoleState, from_m: number, to_m: number, radius_m: number): number {
  // A body that stands in a narrow cell already may go on in it.
  for (let i = Math.floor(from_m / hole.dz_m) + 1; i < hole.cells && i * hole.dz_m < to_m; i++) {
    if (hole.radius_m[i] < radius_m - PLAY_m) return i * hole.dz_m;
  }
  return to_m;
}

/**
 * The turning bit has gone from from_m to to_m, up or down: it cuts the wall back to its own radius where that had come in. A cell
 * left half done is cut back in part, and whole when the bit leaves it. The cuttings are counted in fallen.
 */
export function reamInto(
  hole: HoleState,
  ground: WallGround,
  fallen: Fallen,
  from_m: number,
  to_m: number,
  bitWidth_m: number,
): void {
  if (from_m === to_m) return;
  const bit_m = bitWidth_m / 2;
  const top_m = Math.min(from_m, to_m);
  const bottom_m = Math.min(hole.depth_m, Math.max(from_m, to_m));
  for (let i = Math.floor(top_m / hole.dz_m); i < hole.cells && i * hole.dz_m < bottom_m; i++) {
    const before_m = hole.radius_m[i];
    if (before_m >= bit_m) continue;
    const cellTop_m = i * hole.dz_m;
    const height_m = openHeight_m(hole, i);
    const cellBottom_m = cellTop_m + height_m;
    const passed_m = Math.min(bottom_m, cellBottom_m) - Math.max(top_m, cellTop_m);
    // The way that is left in the cell, the one just gone included.
    const way_m =
      to_m > from_m ? cellBottom_m - Math.max(from_m, cellTop_m) : Math.min(from_m, cellBottom_m) - cellTop_m;
    const share = way_m > 0 ? Math.min(1, passed_m / way_m) : 1;
    const after_m = share >= 1 ? bit_m : Math.sqrt(before_m * before_m + share * (bit_m * bit_m - before_m * before_m));
    hole.radius_m[i] = after_m;
    const { wall } = hole;
    const left = (bit_m - after_m) / (bit_m - before_m);
    wall.squeezed_m[i] *= left;
    wall.swollen_m[i] *= left;
    wall.cake_m[i] *= left;
    wall.cakeResistance_s[i] *= left;
    addFallen(fallen, ground, i, Math.PI * (after_m * after_m - before_m * before_m) * height_m);
  }
}
