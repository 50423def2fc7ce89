// The page for a view and an element: how large the letters are and how deep the picture has to reach.

import { compose, shownDepth_m, type Composition } from './composition';
import { sideLength_m } from './pitShape';
import type { CutawayView } from './shown';

/** Letters of the drawing as a share of the page's own. */
const LABEL_SHARE = 0.8;
const LABEL_SHARE_COMPACT = 0.72;
const COMPACT_BELOW_px = 480;
/** However large the page's text, so many letters' widths must fit across, or there is no room for the picture itself. */
const LEAST_EMS = 22;
const LEAST_WIDTH_px = 160;
const LEAST_HEIGHT_px = 120;

/** What the element offers: read once and kept until its size or the page's text changes, for reading makes the browser lay the page out. */
export interface Room {
  readonly width_px: number;
  readonly height_px: number;
  readonly text_px: number;
}

export function roomIn(host: HTMLElement): Room {
  const { clientWidth, clientHeight } = host;
  const root_px = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) || 16;
  const small = clientWidth < COMPACT_BELOW_px || clientHeight < COMPACT_BELOW_px * 0.7;
  return {
    width_px: Math.max(LEAST_WIDTH_px, clientWidth),
    height_px: Math.max(LEAST_HEIGHT_px, clientHeight),
    text_px: Math.min(root_px * (small ? LABEL_SHARE_COMPACT : LABEL_SHARE), clientWidth / LEAST_EMS),
  };
}

export function pageFor({ stem, kit, pit, hole }: CutawayView, room: Room, widening: number | null): Composition {
  const above_m = stem.rods * kit.rodLength_m - stem.bit_m;
  // Steps of a rod: the scale stays while a rod goes down and changes when the stem is lifted higher than one.
  const rods = Math.max(1, Math.ceil(above_m / kit.rodLength_m - 0.08));
  return compose({
    ...room,
    shown_m: shownDepth_m(Math.max(stem.bottom_m, hole?.depth_m ?? 0)),
    above_m: rods * kit.rodLength_m + 0.1,
    bit_m: kit.bit_m,
    suctionLength_m: sideLength_m(pit.suction),
    settlingLength_m: sideLength_m(pit.settling),
    pitDepth_m: Math.max(pit.suction.depth_m, pit.settling.depth_m),
    widening,
  });
}

export function samePage(a: Composition, b: Composition): boolean {
  return (
    a.width_px === b.width_px &&
    a.height_px === b.height_px &&
    a.text_px === b.text_px &&
    a.depth_pxm === b.depth_pxm &&
    a.widening === b.widening &&
    a.ground_y === b.ground_y
  );
}
