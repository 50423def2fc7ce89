// Where things stand in the picture at zoom 1: a page laid out by the room there is, from 320 x 200 px up.
// Depth has one scale (px per metre). The hole is drawn wider by a whole number, so that the stated figure is exact.
// Pit and gear stand on the bank at a scale of their own, stated when it differs.

export interface Measures {
  width_px: number;
  height_px: number;
  /** Size of a label's letters. */
  text_px: number;
  /** Deepest depth that must be in the picture, and the greatest height of steel above ground, m. */
  shown_m: number;
  above_m: number;
  bit_m: number;
  /** Lengths of the two chambers as seen from the side and the deeper floor, m. */
  suctionLength_m: number;
  settlingLength_m: number;
  pitDepth_m: number;
  /** How many times wider the viewer wants the hole drawn; null: as the room suggests. */
  widening: number | null;
}

export interface Composition {
  width_px: number;
  height_px: number;
  text_px: number;
  /** Narrow or low pictures carry fewer words. */
  compact: boolean;
  depth_pxm: number;
  ground_y: number;
  hole_x: number;
  /** How many times wider than true the hole is drawn, and the least and most that this page allows. */
  widening: number;
  leastWidening: number;
  mostWidening: number;
  bank_pxm: number;
  /** Left rim of the suction chamber. */
  pit_x: number;
  /** Size of the pump, drive and swivel: px per drawn unit, see pump.ts and drive.ts. */
  gear_px: number;
  shown_m: number;
  axis_x: number;
  log_x: number;
  log_px: number;
  words_x: number;
}

/** Length of the wall between the chambers, m of the drawing. */
export const CHAMBER_GAP_m = 0.24;

/** However small the depth scale, the pit is drawn at least so large, px per metre and unit of gear. */
const LEAST_PIT_pxm = 105;

/** Narrower than this, half the hole, stem and wall could no longer be told apart, px; wider, the rest would lack room. */
const LEAST_HALF_px = 9;
const MOST_HALF_share = 0.1;

const clamp = (x: number, low: number, high: number): number => Math.max(low, Math.min(high, x));

/** Depths that the picture may reach down to: steps, so that the scale does not creep while the bit goes down. */
const STEPS_m = [6, 8, 10, 13, 16, 20, 25, 30, 36, 43, 50, 60, 80, 100];

/** The first step that leaves a metre or a tenth of the depth below what has to be seen. */
export function shownDepth_m(bottom_m: number): number {
  const need_m = bottom_m + Math.max(1, 0.1 * bottom_m);
  for (const step_m of STEPS_m) if (step_m >= need_m) return step_m;
  return Math.ceil(need_m / 20) * 20;
}

export function compose(m: Measures): Composition {
  const em = m.text_px;
  const compact = m.width_px < 42 * em || m.height_px < 24 * em;
  const edge = compact ? 4 : 14;

  // Columns at the right: words beside the log, the log, the ruler with its figures.
  const words_px = compact ? 5.1 * em : 8.4 * em;
  const log_px = clamp(m.width_px * 0.115, 2.9 * em, 7.4 * em);
  const words_x = m.width_px - edge - words_px + (compact ? 0 : 6);
  const log_x = words_x - (compact ? 4 : 8) - log_px;
  const axis_x = log_x - (compact ? 1.1 : 3.4) * em;
  const ruler_x = axis_x - (compact ? 1.9 : 2.6) * em;

  // Height: the steel that stands above ground, the swivel and the rope need sky; the rest is ground.
  const gear_px = clamp(m.height_px / 640, 0.36, 1.15) * clamp(m.width_px / 700, 0.62, 1);
  const head_px = 100 * gear_px;
  const depth_pxm = (m.height_px - head_px - 6) / (m.shown_m + m.above_m);
  const ground_y = Math.round(head_px + m.above_m * depth_pxm);

  const trueHalf_px = 0.5 * m.bit_m * depth_pxm;
  const wantedHalf_px = clamp(m.width_px * 0.052, 15, 44);
  const leastWidening = Math.max(1, Math.ceil(LEAST_HALF_px / trueHalf_px));
  const mostWidening = Math.max(leastWidening, Math.floor(clamp(m.width_px * MOST_HALF_share, 24, 95) / trueHalf_px));
  const widening = clamp(m.widening ?? Math.round(wantedHalf_px / trueHalf_px), leastWidening, mostWidening);
  const half_px = 0.5 * m.bit_m * depth_pxm * widening;

  const hole_x = Math.round(ruler_x - half_px - (compact ? 0.5 : 2.6) * em - half_px * 0.45);
  const pump_px = 74 * gear_px;
  const channel_px = (compact ? 1.2 : 3) * em;
  const pitRoom_px = hole_x - half_px - channel_px - edge - pump_px;
  const pit_m = m.suctionLength_m + CHAMBER_GAP_m + m.settlingLength_m;
  const bank_pxm = Math.max(
    12,
    Math.min(
      pitRoom_px / pit_m,
      (0.42 * (m.height_px - ground_y)) / m.pitDepth_m,
      Math.max(2.2 * depth_pxm, LEAST_PIT_pxm * gear_px),
    ),
  );
  const pit_x = Math.round(hole_x - half_px - channel_px - pit_m * bank_pxm);

  return {
    width_px: m.width_px,
    height_px: m.height_px,
    text_px: m.text_px,
    compact,
    depth_pxm,
    ground_y,
    hole_x,
    widening,
    leastWidening,
    mostWidening,
    bank_pxm,
    pit_x,
    gear_px,
    shown_m: m.shown_m,
    axis_x: Math.round(axis_x),
    log_x: Math.round(log_x),
    log_px: Math.round(log_px),
    words_x: Math.round(words_x),
  };
}
