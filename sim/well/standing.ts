// The finished well as it stands in the ground, as plain data: casing, slots, cloth, and by cell what fills the ring round it.
import type { Slots } from '../completion/slots';
import type { AnnulusState } from '../completion/annulus';
import type { CompletionState } from '../completion/completion';
import { FILL_NAMES, type FillName } from '../completion/fills';
import { CLOTHS, type Cloth } from '../materials/cloths';
import { PACK_NAMES, type PackName } from '../materials/packs';
import { CASINGS, type Casing } from '../materials/pipes';
import { SEAL_NAMES, SEALS, type SealName } from '../materials/seals';

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

/** Fill of cell i as shares of the ring's room, or of the whole hole below the casing. */
function fillOf(annulus: AnnulusState, i: number, outside_m: number, shoe_m: number): RingFill {
  const { dz_m, cells, fill_m3, radius_m } = annulus;
  const steel_m = Math.min((i + 1) * dz_m, Math.max(i * dz_m, shoe_m)) - i * dz_m;
  const hole_m2 = Math.PI * radius_m[i] * radius_m[i];
  const room_m3 = Math.max(0, hole_m2 * dz_m - (Math.PI / 4) * outside_m * outside_m * steel_m);
  const fill = emptyFill();
  fill.clogged_frac = annulus.clogged_frac[i];
  if (!(room_m3 > 0)) return { ...fill, ground_frac: 1 };
  let most_frac = 0;
  let sealed_s = 0;
  FILL_NAMES.forEach((name, f) => {
    const share = Math.min(1, fill_m3[f * cells + i] / room_m3);
    if (share === 0) return;
    if (isPack(name)) {
      fill.pack_frac += share;
      if (share > most_frac) fill.pack = name;
      most_frac = Math.max(most_frac, share);
    } else if (isSeal(name)) {
      const { K_ms, spoiltK_ms, piece_mm } = SEALS[name];
      const spoilt = annulus.spoilt_frac[i];
      fill.seal_frac += share;
      sealed_s += share / ((1 - spoilt) * K_ms + spoilt * spoiltK_ms);
      fill.piece_mm = Math.max(fill.piece_mm, piece_mm);
    } else fill.ground_frac += share;
  });
  fill.seal_ms = sealed_s > 0 ? fill.seal_frac / sealed_s : 0;
  return fill;
}

const isPack = (name: FillName): name is PackName => (PACK_NAMES as readonly string[]).includes(name);
const isSeal = (name: FillName): name is SealName => (SEAL_NAMES as readonly string[]).includes(name);

/** The well as its casing and its ring stand; null where nothing has been set yet. The screen lies where the shoe is, not where it was planned. */
export function standingOf({ plan, casing, annulus }: CompletionState): Standing | null {
  if (!plan || !annulus) return null;
  const pipe = CASINGS[plan.casing];
  const screenTo_m = casing.shoe_m - plan.sump_m;
  const fill: RingFill[] = [];
  for (let i = 0; i < annulus.used; i++) fill.push(fillOf(annulus, i, pipe.outside_m, casing.shoe_m));
  return {
    pipe,
    slots: plan,
    cloth: plan.cloth === 'none' ? null : CLOTHS[plan.cloth],
    screenFrom_m: screenTo_m - (plan.screenTo_m - plan.screenFrom_m),
    screenTo_m,
    shoe_m: casing.shoe_m,
    capped: plan.cap,
    snapped: casing.snapped,
    dz_m: annulus.dz_m,
    cells: annulus.used,
    hole_m: annulus.radius_m,
    offMiddle_frac: annulus.offMiddle_frac,
    fill,
  };
}
