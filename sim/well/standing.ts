// The finished well as it stands in the ground, as plain data: casing, slots, cloth, and by cell what fills the ring round it.
import type { Slots } from '../completion/slots';
import type { Cloth } from '../materials/cloths';
import type { PackName } from '../materials/packs';
import type { Casing } from '../materials/pipes';

/** What fills the ring in one cell of the hole's grid, as shares of its room; what is left over is void. */
export interface RingFill {
  /** Share that is pack, and the pack that most of it is; null: none. */
  pack_frac: number;
  pack: PackName | null;
  /** Share of the pack's pores that cement has entered. */
  clogged_frac: number;
  /** Share that is seal, K of the seal as it has become, its pores, and the size of its pieces. */
  seal_frac: number;
  seal_ms: number;
  piece_mm: number;
  /** Share that is caved ground or cuttings. */
  ground_frac: number;
}

export interface Standing {
  readonly pipe: Casing;
  readonly slots: Slots;
  readonly cloth: Cloth | null;
  /** Depths as the casing stands, which need not be as planned. */
  readonly screenFrom_m: number;
  readonly screenTo_m: number;
  readonly shoe_m: number;
  readonly capped: boolean;
  readonly snapped: boolean;
  /** Cells of dz_m from the ground level down; radius of the wall, how far the pipe stands off the middle (0 to 1, at the wall). */
  readonly dz_m: number;
  readonly cells: number;
  readonly hole_m: ArrayLike<number>;
  readonly offMiddle_frac: ArrayLike<number>;
  readonly fill: readonly RingFill[];
}

export const emptyFill = (): RingFill => ({
  pack_frac: 0,
  pack: null,
  clogged_frac: 0,
  seal_frac: 0,
  seal_ms: 0,
  piece_mm: 0,
  ground_frac: 0,
});

/** Length of the screen. */
export const screenLength_m = ({ screenFrom_m, screenTo_m }: Standing): number => screenTo_m - screenFrom_m;

/** First and last cell of the grid that the screen touches, at least one cell. */
export function screenCells(standing: Standing): { first: number; last: number } {
  const { dz_m, cells, screenFrom_m, screenTo_m } = standing;
  const first = Math.min(cells - 1, Math.max(0, Math.floor(screenFrom_m / dz_m + 1e-9)));
  const last = Math.min(cells - 1, Math.max(first, Math.ceil(screenTo_m / dz_m - 1e-9) - 1));
  return { first, last };
}
