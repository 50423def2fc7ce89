// Geometry of the drawn plan: metres to pixels, north up, with a margin where the arrows to the neighbours stand.
import type { Place, Site } from '$sim';

export interface Sheet {
  readonly width_px: number;
  readonly height_px: number;
  readonly margin_px: number;
  readonly scale_pxm: number;
}

/** Fills a width. Where letters are large for the width the margin stays wide enough for them. */
export function sheetFor({ width_m, breadth_m }: Site, width_px: number, text_px: number): Sheet {
  const margin_px = Math.max(2 * text_px, 24);
  const scale_pxm = Math.max(1, (width_px - 2 * margin_px) / width_m);
  return { width_px, height_px: breadth_m * scale_pxm + 2 * margin_px, margin_px, scale_pxm };
}

export interface Point {
  readonly x: number;
  readonly y: number;
}

export const onSheet = (sheet: Sheet, { breadth_m }: Site, { east_m, north_m }: Place): Point => ({
  x: sheet.margin_px + east_m * sheet.scale_pxm,
  y: sheet.margin_px + (breadth_m - north_m) * sheet.scale_pxm,
});

/** Where an arrow from the middle to a place off the plan crosses the plan's edge, and the unit step outwards. */
export function edgeTowards(
  sheet: Sheet,
  site: Site,
  place: Place,
): Point & { readonly dx: number; readonly dy: number } {
  const middle = onSheet(sheet, site, { east_m: site.width_m / 2, north_m: site.breadth_m / 2 });
  const to = onSheet(sheet, site, place);
  const length = Math.hypot(to.x - middle.x, to.y - middle.y) || 1;
  const dx = (to.x - middle.x) / length;
  const dy = (to.y - middle.y) / length;
  const half_x = (site.width_m / 2) * sheet.scale_pxm;
  const half_y = (site.breadth_m / 2) * sheet.scale_pxm;
  const reach = Math.min(dx === 0 ? Infinity : half_x / Math.abs(dx), dy === 0 ? Infinity : half_y / Math.abs(dy));
  return { x: middle.x + dx * reach, y: middle.y + dy * reach, dx, dy };
}

/** Side of the squares drawn on the plan, m. */
export const SQUARE_m = 10;

/** Half the side of a peg with the figure below it, in letters' heights. */
const PEG_em = 1.6;

/** The first of some places for words of a width where they cover no peg and stay on the sheet; else the first. */
export function clearPlace(
  tries: readonly Point[],
  pegs: readonly Point[],
  wide_px: number,
  em_px: number,
  sheet: Sheet,
): Point {
  const half_px = wide_px / 2;
  const free = tries.find(
    ({ x, y }) =>
      x - half_px > 0 &&
      x + half_px < sheet.width_px &&
      pegs.every(
        (peg) => Math.abs(peg.x - x) > half_px + PEG_em * em_px || Math.abs(peg.y - y) > (PEG_em + 0.6) * em_px,
      ),
  );
  const [first] = tries;
  return free ?? { x: Math.min(Math.max(first!.x, half_px), sheet.width_px - half_px), y: first!.y };
}
