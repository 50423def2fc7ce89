// The start of a lesson as a small drawing: where each thing of the opening state stands on a field of 340 by 220.
// It is given the same view as the cutaway, so it shows what the lesson's view level allows and nothing else.
import type { CutawayView } from '../../cutaway/shown';
import type { KeyedMessage } from '../../words';

export const FIELD = { width: 340, height: 220, ground: 84, bottom: 214 } as const;
/** The drawing goes at least so deep, m. */
const LEAST_m = 3;

export interface Opening {
  /** Height on the field of a depth, m below ground. */
  y(depth_m: number): number;
  readonly deepest_m: number;
  readonly goal_m: number | null;
}

/** How deep the drawing goes: past the hole, the casing and, where the job has one, the depth to reach. */
export function openingScale(view: CutawayView, goal_m: number | null): Opening {
  const { stem, well } = view;
  const deepest_m = 1.15 * Math.max(LEAST_m, stem.bottom_m, well?.casing?.shoe_m ?? 0, goal_m ?? 0);
  const px = (FIELD.bottom - FIELD.ground) / deepest_m;
  return { y: (depth_m) => FIELD.ground + depth_m * px, deepest_m, goal_m };
}

/** Share of a chamber's depth that is filled. */
export function filled_frac(chamber: { readonly level_m: number; readonly depth_m: number }): number {
  return Math.min(1, Math.max(0, 1 - chamber.level_m / chamber.depth_m));
}

export interface RingPart {
  readonly from_m: number;
  readonly to_m: number;
  readonly fill: string;
}

/** What fills the annulus, as stretches of one kind; only where the view shows it. */
export function ringParts(view: CutawayView): RingPart[] {
  const annulus = view.well?.annulus;
  if (!annulus) return [];
  const parts: { from_m: number; to_m: number; fill: string }[] = [];
  for (let cell = 0; cell < annulus.cells; cell++) {
    let most = -1;
    let share = 0.5;
    annulus.fills.forEach((_, f) => {
      const here = annulus.rest_frac[f * annulus.stride + cell]!;
      if (here >= share) [most, share] = [f, here];
    });
    if (most < 0) continue;
    const from_m = cell * annulus.dz_m;
    const to_m = Math.min(annulus.depth_m, from_m + annulus.dz_m);
    const fill = annulus.fills[most]!;
    const last = parts.at(-1);
    if (last?.fill === fill && Math.abs(last.to_m - from_m) < 1e-6) last.to_m = to_m;
    else parts.push({ from_m, to_m, fill });
  }
  return parts;
}

/** The same in sentences, for the caption. */
export function openingWords(view: CutawayView): KeyedMessage[] {
  const { stem, pit, well } = view;
  const words: KeyedMessage[] = [];
  if (!pit.dug) words.push({ key: 'brief.opening.noPit' });
  if (well?.casing) words.push({ key: 'brief.opening.casing', data: { depth_m: well.casing.shoe_m } });
  else if (stem.bottom_m < 0.5) words.push({ key: 'brief.opening.nothing' });
  else words.push({ key: 'brief.opening.hole', data: { depth_m: stem.bottom_m } });
  if (!stem.out && stem.rods > 0) words.push({ key: 'brief.opening.rods', data: { n: stem.rods } });
  return words;
}
