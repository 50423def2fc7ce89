// Lines that the renderer has no word for: dashes, and a hose that hangs.

import type { Graphics } from 'pixi.js';

/** Adds dashes to the path; the caller strokes them. */
export function dashedLine(
  pen: Graphics,
  x1: number,
  y1: number,
  x2: number,
  y2: number,
  dash_px: number,
  gap_px: number,
): void {
  const length = Math.sqrt((x2 - x1) * (x2 - x1) + (y2 - y1) * (y2 - y1));
  if (length === 0) return;
  const ux = (x2 - x1) / length;
  const uy = (y2 - y1) / length;
  for (let s = 0; s < length; s += dash_px + gap_px) {
    const e = Math.min(length, s + dash_px);
    pen.moveTo(x1 + ux * s, y1 + uy * s).lineTo(x1 + ux * e, y1 + uy * e);
  }
}

export interface HosePath {
  x1: number;
  y1: number;
  cx1: number;
  cy1: number;
  cx2: number;
  cy2: number;
  x2: number;
  y2: number;
}

/** A hose as three strokes: rim, body, and a light along it. */
export function drawHose(
  pen: Graphics,
  path: HosePath,
  width_px: number,
  rim: string,
  body: string,
  light: string,
): void {
  const stroke = (width: number, color: string, alpha: number): void => {
    pen
      .moveTo(path.x1, path.y1)
      .bezierCurveTo(path.cx1, path.cy1, path.cx2, path.cy2, path.x2, path.y2)
      .stroke({ width, color, alpha, cap: 'round', join: 'round' });
  };
  if (rim !== body) stroke(width_px + 1.6, rim, 1);
  stroke(width_px, body, 1);
  stroke(Math.max(0.8, width_px * 0.28), light, 0.7);
}
