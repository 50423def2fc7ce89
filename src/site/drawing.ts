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

/** Length of the scale bar: a round number of metres that fits a quarter of the plan. */
export const scaleBar_m = (site: Site): number => (site.width_m >= 40 ? 10 : 5);
