// Pieces too big for the gap jam in it.

/** Share of the gap that a piece may measure: a fifth (California Bulletin 74-90 section 9, for pellets and aggregate). */
const PIECE_ratio = 0.2;

/** Largest piece that goes down a gap without jamming, mm: a fifth of it. Worked value: 18.5 mm -> 3.7. */
export const largestPiece_mm = (gap_m: number): number => PIECE_ratio * 1000 * Math.max(0, gap_m);
