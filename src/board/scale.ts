// Geometry of the board's drawing: one depth scale for the learner's log and the well beside it.

export interface BoardScale {
  readonly width_px: number;
  readonly height_px: number;
  readonly text_px: number;
  /** Ground level, and a metre down. */
  readonly ground_y: number;
  readonly depth_pxm: number;
  readonly shown_m: number;
  readonly step_m: number;
  readonly ruler_x: number;
  readonly log_x: number;
  readonly log_px: number;
  /** Middle of the well and half the hole's width. */
  readonly well_x: number;
  readonly halfHole_px: number;
  /** How much wider than true the well is drawn. */
  readonly wider_ratio: number;
  /** Words fit beside the columns. */
  readonly wordy: boolean;
  readonly words_x: number;
}

const STEPS_m = [0.5, 1, 2, 5, 10];
/** The narrowest drawing with words in it, in letters. */
const WORDY_em = 24;

export function boardScale(
  width_px: number,
  height_px: number,
  text_px: number,
  depth_m: number,
  above_m: number,
  bit_m: number,
): BoardScale {
  const head_px = 1.4 * text_px;
  const foot_px = 0.9 * text_px;
  const shown_m = depth_m + 0.3;
  const depth_pxm = Math.max(8, (height_px - head_px - foot_px) / (shown_m + above_m));
  const step_m = STEPS_m.find((step) => step * depth_pxm >= 2.4 * text_px) ?? 20;
  const wordy = width_px >= WORDY_em * text_px;
  const ruler_x = wordy ? 2.6 * text_px : 1.9 * text_px;
  const log_x = ruler_x + 0.4 * text_px;
  const log_px = wordy ? 4 * text_px : Math.max(16, 0.24 * (width_px - log_x));
  // Left of the hole the grips of seal and pack, right of it those of the screen.
  const grip_px = 1.1 * text_px;
  const free_px = width_px - log_x - log_px - (wordy ? 15.5 * text_px : 0);
  const halfHole_px = Math.max(10, Math.min(free_px / 2 - grip_px - 4, 5.5 * text_px));
  const wellRoom_px = wordy ? 2 * (halfHole_px + grip_px + 4) : free_px;
  const well_x = log_x + log_px + (wordy ? 6.5 * text_px : 0) + wellRoom_px / 2;
  return {
    width_px,
    height_px,
    text_px,
    ground_y: head_px + above_m * depth_pxm,
    depth_pxm,
    shown_m,
    step_m,
    ruler_x,
    log_x,
    log_px,
    well_x,
    halfHole_px,
    wider_ratio: (2 * halfHole_px) / bit_m / depth_pxm,
    wordy,
    words_x: log_x + log_px + 0.4 * text_px,
  };
}

export const yAt = (scale: BoardScale, depth_m: number): number => scale.ground_y + depth_m * scale.depth_pxm;
export const depthAt = (scale: BoardScale, y: number): number => (y - scale.ground_y) / scale.depth_pxm;
