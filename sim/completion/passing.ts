// What share of a sand comes through slot, cloth and pack, and whether it ever stops.
import { finerThan_frac, sizeAt_mm, type Gradation } from '../ground/gradation';
import { clamp } from '../numeric/curve';

/** What stands between the ground and the bore; left out: not there. */
export interface Barrier {
  readonly slotWidth_mm: number;
  /** O95 of the cloth over the slots. */
  readonly cloth_mm?: number;
  readonly pack?: Gradation;
}

/**
 * A woven cloth's working opening beside its O95, the largest of them. ASSUMED: O95 = d85 of an even sand just holds it (cloth.ts),
 * as does a slot of d60, and d60 is about .65 d85 there.
 */
const CLOTH_ratio = 0.65;
/** A pack holds what is coarser than its d15 over this: the middle of Terzaghi and Peck's 4 to 5 (1948, from memory). */
const THROAT_ratio = 4.5;
/**
 * A slot that lets no more than 60 % by soon holds all: it keeps 40 % (Driscoll 1986 ch. 13, from memory). From 90 % on nothing
 * is left to bridge it. ASSUMED; a pack of ten times the sand's median comes out near it, where sand passes.
 */
const HOLDS_frac = 0.6;
const PASSES_frac = 0.9;

/** Opening of slot and cloth, mm: the smaller. Worked value: slot .8, cloth .25 -> .1625. */
export const screenOpening_mm = ({ slotWidth_mm, cloth_mm }: Barrier): number =>
  cloth_mm === undefined ? slotWidth_mm : Math.min(slotWidth_mm, CLOTH_ratio * cloth_mm);

/** Opening between the grains of a pack, mm: d15/4.5. Worked value: d15 1.125 -> .25. */
export const packThroat_mm = (pack: Gradation): number => sizeAt_mm(pack, 0.15) / THROAT_ratio;

/**
 * Share of the grains behind an opening that go on coming for ever, 0 to 1, for the share that is finer than the opening: none up to .6, all
 * from .9 on, smooth between (3x^2 - 2x^3). ASSUMED form. Worked value: .75 -> .5.
 */
export function staysLoose_frac(passing_frac: number): number {
  const x = clamp((passing_frac - HOLDS_frac) / (PASSES_frac - HOLDS_frac), 0, 1);
  return x * x * (3 - 2 * x);
}

/**
 * Opening that the sand meets, mm: that of the screen, or the pack's throat where that is smaller; a pack that runs out through
 * the screen gives way to the screen's opening. Never smaller for a wider slot. Worked value: slot .5, pack of d15 1.125 that it holds -> .25.
 */
export function openingTo_mm(barrier: Barrier): number {
  const screen_mm = screenOpening_mm(barrier);
  if (!barrier.pack) return screen_mm;
  const throat_mm = Math.min(screen_mm, packThroat_mm(barrier.pack));
  const lost_frac = staysLoose_frac(finerThan_frac(barrier.pack, screen_mm));
  return throat_mm + lost_frac * (screen_mm - throat_mm);
}

/**
 * Share of a sand's grains that slot, cloth and pack together let by, 0 to 1, by weight; never less for a wider slot or a coarser
 * pack. Grains that a bridge of coarser ones holds back count here: see staysLoose_frac. Worked value: slot at d50, nothing else -> .5.
 */
export const passing_frac = (sand: Gradation, barrier: Barrier): number => finerThan_frac(sand, openingTo_mm(barrier));
