// Where the lens lies on the picture, what it is held to, and its own transform: wide and deep alike, so that shapes are
// true, and a whole number of times the depth scale, so that the stated figure is exact.

import { radiusAt } from './holeShape';
import type { LensFacts } from './part';
import { bankY, halfOf, yOf, type Place } from './place';
import type { CutawayView } from './shown';

/** Put away, held to the whole bit, or to the wall beside it. */
export type LensPower = 0 | 1 | 2;

/** The round picture: its middle and diameter, px. */
export interface LensSpot {
  x: number;
  y: number;
  diameter_px: number;
}

/** The lens shows so many widths of the bit; held to the wall it is so many times stronger. */
const SHOWN_BITS = 1.8;
const CLOSER = 4;
/** The bit is 15 cm tall: held this far above its edge, the lens has all of it and the ground under it. */
const ABOVE_EDGE_m = 0.05;
/** The wall is looked at above the wings, where grains pass the stem and a skin is left. */
const ABOVE_EDGE_CLOSE_m = 0.135;
/** Lines of words at the foot of the picture that stay free. */
const LINES = 5;
const LINES_COMPACT = 4;
const MOST_px = 250;
const MOST_COMPACT_px = 132;
const LEAST_px = 64;
/** Of the pit's depth so much stays clear above the lens: there the fluid's level is read. */
const LEVEL_CLEAR_frac = 0.35;
/** So much taller than the lens is what is drawn for it: it can follow the bit a little without drawing anew. */
export const TALLER = 1.7;

/** At the left below the bank, beside the hole, over the words at the foot: never over the log or the ruler. */
export function lensSpot(view: CutawayView, place: Place): LensSpot {
  const edge = place.compact ? 4 : 14;
  const right = place.zoom > 1 ? place.axis_x * 0.4 : place.hole_x - halfOf(place, view.kit.bit_m / 2) * 1.5 - 10;
  const foot = place.height_px - place.text_px * 1.35 * (place.compact ? LINES_COMPACT : LINES) - 4;
  const pit = Math.max(view.pit.suction.depth_m, view.pit.settling.depth_m);
  const bank = place.zoom === 1 && view.pit.dug;
  const head = Math.max(4, bank ? bankY(place, pit * LEVEL_CLEAR_frac) : place.zoom > 1 ? 0 : place.ground_y + 4);
  const below = foot - (bank ? bankY(place, pit) + 6 : head);
  const most = Math.min(right - edge, foot - head, place.compact ? MOST_COMPACT_px : MOST_px);
  // Below the pit if that leaves a fair size, else over its lower part.
  const fair = Math.min(most, Math.max(below, place.compact ? MOST_COMPACT_px * 0.9 : MOST_px * 0.72));
  const diameter_px = Math.round(Math.max(LEAST_px, fair));
  return { x: Math.round(edge + diameter_px / 2), y: Math.round(foot - diameter_px / 2), diameter_px };
}

interface LensAim {
  at: LensFacts['at'];
  depth_m: number;
  /** Right of the axis, m. */
  off_m: number;
}

/** Steps of 5 mm: the lens does not shift with every grain that leaves the wall. */
const step = (length_m: number): number => Math.round(length_m * 200) / 200;

/** What the lens is held to: the bit while there is one, then the screen, the casing's end, the bottom. */
export function lensAim(view: CutawayView, bit_m: number, close: boolean): LensAim {
  const { stem, kit, well, hole } = view;
  const wall_m = (depth_m: number): number => (hole ? radiusAt(hole, depth_m) : kit.bit_m / 2);
  if (!stem.out) {
    const depth_m = bit_m - (close ? ABOVE_EDGE_CLOSE_m : ABOVE_EDGE_m);
    return { at: 'bit', depth_m, off_m: close ? step(wall_m(depth_m) * 0.9) : 0 };
  }
  const casing = well?.casing;
  if (casing && casing.shoe_m > 0) {
    const screen = casing.screen;
    const depth_m = screen ? (screen.from_m + screen.to_m) / 2 : casing.shoe_m;
    const gap_m = (casing.outside_m / 2 + Math.max(casing.outside_m / 2, wall_m(depth_m))) / 2;
    return { at: screen ? 'screen' : 'casing', depth_m, off_m: close ? step(gap_m) : 0 };
  }
  const depth_m = stem.bottom_m - (close ? ABOVE_EDGE_CLOSE_m : ABOVE_EDGE_m);
  return { at: 'bottom', depth_m, off_m: close ? step(wall_m(depth_m) * 0.9) : 0 };
}

/** How many times the depth scale of the picture the lens shows things. */
export function lensTimes(place: Place, bit_m: number, diameter_px: number, close: boolean): number {
  const whole = Math.max(1, Math.floor(diameter_px / (SHOWN_BITS * bit_m) / place.depth_pxm));
  return close ? whole * CLOSER : whole;
}

/** The transform of what is drawn for the lens; its middle stands at the depth of the anchor. */
export function lensPlace(place: Place, diameter_px: number, times: number, anchor_m: number, off_m: number): Place {
  const pxm = place.depth_pxm * times;
  const height_px = Math.round(diameter_px * TALLER);
  return {
    ...place,
    zoom: Math.max(2, place.zoom * times),
    depth_pxm: pxm,
    across_pxm: pxm,
    widening: 1,
    width_px: diameter_px,
    height_px,
    hole_x: diameter_px / 2 - off_m * pxm,
    ground_y: height_px / 2 - anchor_m * pxm,
    sky_px: 1e6,
    axis_x: 1e5,
  };
}

/** What of the drawing the lens shows, px of the picture: middle and half axes. */
export function lensMark(place: Place, aim: LensAim, across_m: number): [x: number, y: number, rx: number, ry: number] {
  const half_m = across_m / 2;
  return [
    place.hole_x + aim.off_m * place.across_pxm,
    yOf(place, aim.depth_m),
    Math.max(3, half_m * place.across_pxm),
    Math.max(3, half_m * place.depth_pxm),
  ];
}
