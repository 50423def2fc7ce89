// Geometry of a drawn column of ground: a ruler, the beds at one depth scale, words beside them.

export interface ColumnScale {
  readonly width_px: number;
  readonly height_px: number;
  readonly text_px: number;
  /** Ground level, and a metre down. */
  readonly ground_y: number;
  readonly depth_pxm: number;
  readonly step_m: number;
  readonly ruler_x: number;
  readonly column_x: number;
  readonly column_px: number;
  /** Words of the beds begin here. */
  readonly words_x: number;
}

const STEPS_m = [0.5, 1, 2, 5, 10, 20];
/** Room for a finger at the right edge of the column, px. */
export const GRIP_px = 48;

/** `grips`: something can be taken hold of between column and words. */
export function columnScale(
  width_px: number,
  height_px: number,
  text_px: number,
  shown_m: number,
  grips: boolean,
): ColumnScale {
  const ground_y = 0.7 * text_px;
  const depth_pxm = Math.max(1, (height_px - ground_y - 0.7 * text_px) / Math.max(1, shown_m));
  const step_m = STEPS_m.find((step) => step * depth_pxm >= 2.2 * text_px) ?? 20;
  const ruler_x = 2.4 * text_px;
  const column_x = ruler_x + 0.5 * text_px;
  const column_px = Math.max(2.5 * text_px, Math.min(9 * text_px, 0.32 * width_px));
  const words_x = column_x + column_px + (grips ? GRIP_px : 0.6 * text_px);
  return { width_px, height_px, text_px, ground_y, depth_pxm, step_m, ruler_x, column_x, column_px, words_x };
}

export const yAt = ({ ground_y, depth_pxm }: ColumnScale, depth_m: number): number => ground_y + depth_m * depth_pxm;
export const depthAt = ({ ground_y, depth_pxm }: ColumnScale, y: number): number => (y - ground_y) / depth_pxm;

export const ticksOf = ({ step_m }: ColumnScale, shown_m: number): number[] =>
  Array.from({ length: Math.floor(shown_m / step_m + 1e-6) + 1 }, (_, i) => i * step_m);
