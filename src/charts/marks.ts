// The pattern of a layer as lines and dots of its own, cut at its edges by a clip: a printer draws them sharp, where it would make a picture of a repeated tile.
import type { Tile } from './patterns';

export interface Marks {
  /** Filled shapes, and strokes by their width. */
  readonly dots: string;
  readonly strokes: readonly { readonly width: number; readonly path: string }[];
}

const round = (value: number): string => String(Math.round(value * 100) / 100);

const ellipse = (x: number, y: number, rx: number, ry: number): string =>
  `M${round(x - rx)} ${round(y)}a${round(rx)} ${round(ry)} 0 1 0 ${round(2 * rx)} 0a${round(rx)} ${round(ry)} 0 1 0 ${round(-2 * rx)} 0`;

export interface Box {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
}

/** The tiles are made for letters of so many pixels. */
export const TILE_LETTER_px = 13;

/** Marks over a box; rows of tiles are counted from the top of the paper, so that neighbours of one kind join. */
export function marksIn(tile: Tile, { x, y, width, height }: Box, scale: number): Marks {
  const wide = tile.width * scale;
  const high = tile.height * scale;
  let dots = '';
  const strokes = new Map<number, string>();
  const stroke = (w: number, path: string): void => void strokes.set(w * scale, (strokes.get(w * scale) ?? '') + path);
  for (let top = Math.floor(y / high) * high; top < y + height; top += high)
    for (let left = x; left < x + width; left += wide)
      for (const mark of tile.marks) {
        if (mark.kind === 'dot') {
          const r = mark.r * scale;
          dots += ellipse(left + mark.x * scale, top + mark.y * scale, r, r);
        } else if (mark.kind === 'ring') {
          const { rx, ry, w } = mark;
          stroke(w, ellipse(left + mark.x * scale, top + mark.y * scale, rx * scale, ry * scale));
        } else {
          const { x1, y1, x2, y2, w } = mark;
          stroke(
            w,
            `M${round(left + x1 * scale)} ${round(top + y1 * scale)}L${round(left + x2 * scale)} ${round(top + y2 * scale)}`,
          );
        }
      }
  return { dots, strokes: [...strokes].map(([width, path]) => ({ width, path })) };
}
