// Pieces too big for the gap, or too many at once, jam in it.
import { cellRoom_m3, type AnnulusState, type Standpipe } from './annulus';

/** Share of the gap that a piece may measure: a fifth (California Bulletin 74-90 section 9, for pellets and aggregate). */
const PIECE_ratio = 0.2;
/** Share of the ring that fine grains may take up on their way down before they jam, bulk. ASSUMED: half of what they take up at rest. */
const CROWD_frac = 0.5;
/** Cells nearly as bad as the worst one can jam as well as it. */
const AS_BAD_ratio = 0.95;

/** Largest piece that goes down a gap without jamming, mm: a fifth of it. Worked value: 18.5 mm -> 3.7. */
export const largestPiece_mm = (gap_m: number): number => PIECE_ratio * 1000 * Math.max(0, gap_m);

/** Bulk share of the ring that is on its way down, -: Q/(A w). Worked value: 5 L/min, .004737 m2, .15 m/s -> .1173. */
export const crowd_frac = (rate_m3s: number, ring_m2: number, fall_ms: number): number =>
  rate_m3s / (ring_m2 * fall_ms);

/**
 * Bulk share at which pieces jam, -: .5 (1 - piece/largest), none from the largest piece on. ASSUMED form: fine grains jam when they
 * crowd, and the less of them it takes the nearer they come to the size that jams one by one. Worked value: 1.8 mm in 18.5 mm -> .2568.
 */
export const jamAt_frac = (piece_mm: number, gap_m: number): number => {
  const largest_mm = largestPiece_mm(gap_m);
  return largest_mm > piece_mm ? CROWD_frac * (1 - piece_mm / largest_mm) : 0;
};

/** How near a cell is to jamming: above 1 it does. */
function strain_ratio(
  annulus: AnnulusState,
  i: number,
  pipe: Standpipe,
  piece_mm: number,
  rate_m3s: number,
  fall_ms: number,
): number {
  const inner_m = i * annulus.dz_m < pipe.shoe_m ? pipe.outside_m / 2 : 0;
  const limit = jamAt_frac(piece_mm, annulus.radius_m[i] - inner_m);
  const ring_m2 = cellRoom_m3(annulus, i, pipe) / annulus.dz_m;
  return limit > 0 && ring_m2 > 0 ? crowd_frac(rate_m3s, ring_m2, fall_ms) / limit : Infinity;
}

/**
 * Cell at which pieces poured at a rate will jam between two cells on their way, or -1: the worst one, and of those as bad as it the
 * one that chance, 0 to 1, picks.
 */
export function jamCell(
  annulus: AnnulusState,
  from: number,
  to: number,
  pipe: Standpipe,
  piece_mm: number,
  rate_m3s: number,
  fall_ms: number,
  chance: number,
): number {
  let worst = 0;
  for (let i = from; i <= to; i++) worst = Math.max(worst, strain_ratio(annulus, i, pipe, piece_mm, rate_m3s, fall_ms));
  if (!(worst > 1)) return -1;
  const bad: number[] = [];
  for (let i = from; i <= to; i++)
    if (strain_ratio(annulus, i, pipe, piece_mm, rate_m3s, fall_ms) >= AS_BAD_ratio * worst) bad.push(i);
  return bad[Math.min(bad.length - 1, Math.floor(chance * bad.length))];
}
