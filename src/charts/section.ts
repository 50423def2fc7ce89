// Geometry of the section log: two columns, one ruler between them, one depth scale.

export interface Band {
  top_m: number;
  bottom_m: number;
  kind: string;
}

export interface SectionPlan {
  height_px: number;
  depth_pxm: number;
  own_x: number;
  true_x: number;
  column_px: number;
  ruler_x: number;
  /** Words of the own log end here (right-aligned) or, without the true ground, start here. */
  ownWords_x: number;
  trueWords_x: number;
  step_m: number;
  /** Left edge and width of the well as built; no width where there is none. */
  well_x: number;
  well_px: number;
  /** Where the words of the true ground must end. */
  trueWordsEnd_x: number;
}

const HEAD_em = 2.2;
const FOOT_em = 1.2;
const LEAST_pxm = 22;
const MOST_pxm = 90;
const STEPS_m = [0.5, 1, 2, 5, 10];

export const headOf_px = (em: number): number => em * HEAD_em;

/** Lays the section out for a width; both: the true ground stands beside the own log; withWell: the well at the right edge. */
export function planSection(
  width_px: number,
  em: number,
  depth_m: number,
  both: boolean,
  withWell = false,
): SectionPlan {
  const depth_pxm = Math.max(LEAST_pxm, Math.min(MOST_pxm, (34 * em) / Math.max(1, depth_m)));
  const height_px = Math.ceil(headOf_px(em) + depth_m * depth_pxm + FOOT_em * em);
  const step_m = STEPS_m.find((step) => step * depth_pxm >= 2.2 * em) ?? 20;
  const gap = 0.6 * em;
  if (!both) {
    const ruler_x = 2.6 * em;
    const column_px = Math.max(3.2 * em, Math.min(8 * em, width_px * 0.26));
    const own_x = ruler_x + 0.8 * em;
    return {
      height_px,
      depth_pxm,
      own_x,
      true_x: own_x,
      column_px,
      ruler_x,
      ownWords_x: own_x + column_px + gap,
      trueWords_x: 0,
      step_m,
      well_x: width_px,
      well_px: 0,
      trueWordsEnd_x: width_px,
    };
  }
  const well_px = withWell ? Math.max(3.2 * em, Math.min(6 * em, width_px * 0.12)) : 0;
  const well_x = width_px - well_px - (withWell ? 2 : 0);
  const middle = (withWell ? well_x - 0.8 * em : width_px) / 2;
  const column_px = Math.max(2.8 * em, Math.min(8 * em, width_px * 0.15));
  const rulerHalf = 1.5 * em;
  const own_x = middle - rulerHalf - column_px;
  const true_x = middle + rulerHalf;
  return {
    height_px,
    depth_pxm,
    own_x,
    true_x,
    column_px,
    ruler_x: middle,
    ownWords_x: own_x - gap,
    trueWords_x: true_x + column_px + gap,
    step_m,
    well_x,
    well_px,
    trueWordsEnd_x: withWell ? well_x - gap : width_px,
  };
}

export interface PlacedWords {
  lines: string[];
  /** Base line of the first line. */
  y: number;
}

/** Places words so that none covers another: each at the top of its band, pushed down where bands are thin. */
export function placeWords(
  bands: readonly Band[],
  words: (kind: string) => string,
  yOf: (depth_m: number) => number,
  room_px: number,
  em: number,
): PlacedWords[] {
  let free = -Infinity;
  return bands.map((band) => {
    const lines = linesFor(words(band.kind), room_px, em);
    const y = Math.max(yOf(band.top_m) + em * 0.95, free);
    free = y + lines.length * em * 1.2;
    return { lines, y };
  });
}

/** The part of the bands above a depth. */
export function cutAt(bands: readonly Band[], depth_m: number): Band[] {
  return bands
    .filter((band) => band.top_m < depth_m)
    .map((band) => ({ ...band, bottom_m: Math.min(band.bottom_m, depth_m) }));
}

/** Words on one line, or on two where one is too wide for the room. A letter is taken as .56 of the text's size wide. */
export function linesFor(words: string, room_px: number, em: number): string[] {
  const gap = words.lastIndexOf(' ');
  if (gap < 0 || words.length * 0.56 * em <= room_px) return [words];
  return [words.slice(0, gap), words.slice(gap + 1)];
}
