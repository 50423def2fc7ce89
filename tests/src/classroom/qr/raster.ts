// A code drawn as it is on the screen, dot by dot, and what happens to it on the way to a photo.
import type { Picture } from '../../../../src/classroom/qr/clean';
import { pathOf, RIM, type Squares } from '../../../../src/classroom/qr/squares';

export type Stray = () => number;

/** The same numbers for the same seed, 0 to 1. */
export function strays(seed: number): Stray {
  let state = seed;
  return () => {
    state = (Math.imul(state, 1664525) + 1013904223) >>> 0;
    return state / 4294967296;
  };
}

export function blank(width: number, height: number, grey = 255): Picture {
  const data = new Uint8ClampedArray(4 * width * height).fill(grey);
  for (let i = 3; i < data.length; i += 4) data[i] = 255;
  return { data, width, height };
}

/** Fills the path's rectangles: what is drawn is read, not what was meant. */
export function draw(picture: Picture, squares: Squares, dots: number, left = 0, top = 0): void {
  for (const [, x, y, long] of pathOf(squares).matchAll(/M(\d+) (\d+)h(\d+)v1h-\d+z/g))
    for (let row = Number(y) * dots; row < (Number(y) + 1) * dots; row++)
      for (let column = Number(x) * dots; column < (Number(x) + Number(long)) * dots; column++)
        picture.data.fill(
          20,
          4 * ((top + row) * picture.width + left + column),
          4 * ((top + row) * picture.width + left + column) + 3,
        );
}

export function drawn(squares: Squares, dots: number): Picture {
  const side = (squares.side + 2 * RIM) * dots;
  const picture = blank(side, side);
  draw(picture, squares, dots);
  return picture;
}

/** Turned by so many quarters. */
export function turned(picture: Picture, quarters: number): Picture {
  if (quarters === 0) return picture;
  const { data, width, height } = picture;
  const next = blank(height, width);
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const to = 4 * (x * height + (height - 1 - y));
      next.data.set(data.subarray(4 * (y * width + x), 4 * (y * width + x) + 4), to);
    }
  return turned(next, quarters - 1);
}

/** As a camera sees it: held askew, soft, unevenly lit, with grain. */
export function photographed(picture: Picture, { askew_rad = 0, scale = 1, grain = 0, stray = strays(1) }): Picture {
  const side = Math.ceil(Math.max(picture.width, picture.height) * scale * 1.4);
  const photo = blank(side, side, 170);
  const [cos, sin] = [Math.cos(askew_rad) / scale, Math.sin(askew_rad) / scale];
  for (let y = 0; y < side; y++)
    for (let x = 0; x < side; x++) {
      const [dx, dy] = [x - side / 2, y - side / 2];
      const grey = softly(picture, dx * cos + dy * sin + picture.width / 2, dy * cos - dx * sin + picture.height / 2);
      const light = 0.75 + (0.25 * x) / side;
      const value = (grey ?? 170) * light + (stray() - 0.5) * 2 * grain;
      photo.data.fill(value, 4 * (y * side + x), 4 * (y * side + x) + 3);
    }
  return photo;
}

/** Between the four dots around; null outside. */
function softly({ data, width, height }: Picture, x: number, y: number): number | null {
  const [left, top] = [Math.floor(x), Math.floor(y)];
  if (left < 0 || top < 0 || left >= width - 1 || top >= height - 1) return null;
  const at = (column: number, row: number): number => data[4 * (row * width + column)]!;
  const [right_frac, down_frac] = [x - left, y - top];
  const above = at(left, top) * (1 - right_frac) + at(left + 1, top) * right_frac;
  const below = at(left, top + 1) * (1 - right_frac) + at(left + 1, top + 1) * right_frac;
  return above * (1 - down_frac) + below * down_frac;
}
