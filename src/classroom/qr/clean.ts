// A photo made black and white: grain smoothed, uneven light evened out, flat parts left white.

/** Dots as red, green, blue, opacity, by rows. */
export interface Picture {
  readonly data: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

/** One number for each dot, by rows: 0 dark, 255 light. */
export interface Grey {
  readonly dots: Uint8ClampedArray;
  readonly width: number;
  readonly height: number;
}

/** What a dot is compared with: so many dots around it to each side, share of the picture's longer side. */
const AROUND_frac = 0.025;
/** A dot is dark where it is darker than what is around it by this share, less where that is full of contrast (after Sauvola and Pietikainen, 2000). */
const DARKER_frac = 0.2;
/** Spread of brightness of black beside white. */
const FULL = 128;

export function greyOf({ data, width, height }: Picture): Grey {
  const dots = new Uint8ClampedArray(width * height);
  for (let i = 0; i < dots.length; i++)
    dots[i] = 0.2126 * data[4 * i]! + 0.7152 * data[4 * i + 1]! + 0.0722 * data[4 * i + 2]!;
  return { dots, width, height };
}

/** As a picture again, or the part of it from left and top on, with a white rim. */
export function pictureOf({ dots, width }: Grey, part: Box, rim: number): Picture {
  const [wide, high] = [part.right - part.left + 2 * rim, part.bottom - part.top + 2 * rim];
  const data = new Uint8ClampedArray(4 * wide * high).fill(255);
  for (let y = part.top; y < part.bottom; y++)
    for (let x = part.left; x < part.right; x++) {
      const to = 4 * ((y - part.top + rim) * wide + x - part.left + rim);
      data.fill(dots[y * width + x]!, to, to + 3);
    }
  return { data, width: wide, height: high };
}

/** Twice as wide and high, each dot between those around it: fine squares are told apart better. */
export function doubled({ data, width, height }: Picture): Picture {
  const [wide, high] = [2 * width, 2 * height];
  const out = new Uint8ClampedArray(4 * wide * high).fill(255);
  for (let y = 0; y < high; y++) {
    const [near, far] = neighbours(y, height);
    for (let x = 0; x < wide; x++) {
      const [here, there] = neighbours(x, width);
      const at = (row: number, column: number): number => data[4 * (row * width + column)]!;
      const grey = (9 * at(near, here) + 3 * at(near, there) + 3 * at(far, here) + at(far, there)) / 16;
      out.fill(grey, 4 * (y * wide + x), 4 * (y * wide + x) + 3);
    }
  }
  return { data: out, width: wide, height: high };
}

/** The dot that a half dot lies in, and the one on its other side. */
function neighbours(half: number, count: number): [number, number] {
  const near = half >> 1;
  const far = half % 2 === 0 ? near - 1 : near + 1;
  return [near, Math.max(0, Math.min(count - 1, far))];
}

/** Dots from left and top on, up to right and bottom. */
export interface Box {
  readonly left: number;
  readonly top: number;
  readonly right: number;
  readonly bottom: number;
}

/** Each dot the mean of the nine around it. */
function smoothed({ dots, width, height }: Grey): Grey {
  const rows = new Float32Array(dots.length);
  const out = new Uint8ClampedArray(dots.length);
  const at = (i: number, most: number): number => Math.max(0, Math.min(most, i));
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const row = y * width;
      rows[row + x] = dots[row + at(x - 1, width - 1)]! + dots[row + x]! + dots[row + at(x + 1, width - 1)]!;
    }
  for (let y = 0; y < height; y++)
    for (let x = 0; x < width; x++) {
      const [above, below] = [at(y - 1, height - 1) * width, at(y + 1, height - 1) * width];
      out[y * width + x] = (rows[above + x]! + rows[y * width + x]! + rows[below + x]!) / 9;
    }
  return { dots: out, width, height };
}

/** Sums of a value over all dots above and left of each, one row and column more than the picture. */
function sumsOf({ dots, width, height }: Grey, power: 1 | 2): Float64Array {
  const sums = new Float64Array((width + 1) * (height + 1));
  for (let y = 0; y < height; y++) {
    let row = 0;
    for (let x = 0; x < width; x++) {
      const dot = dots[y * width + x]!;
      row += power === 1 ? dot : dot * dot;
      sums[(y + 1) * (width + 1) + x + 1] = sums[y * (width + 1) + x + 1]! + row;
    }
  }
  return sums;
}

/** Black and white. */
export function cleaned(grey: Grey): Grey {
  const soft = smoothed(grey);
  const { dots, width, height } = soft;
  const around = Math.max(8, Math.round(Math.max(width, height) * AROUND_frac));
  const [sums, squares] = [sumsOf(soft, 1), sumsOf(soft, 2)];
  const out = new Uint8ClampedArray(dots.length);
  for (let y = 0; y < height; y++) {
    const [top, bottom] = [Math.max(0, y - around) * (width + 1), Math.min(height, y + around + 1) * (width + 1)];
    for (let x = 0; x < width; x++) {
      const [left, right] = [Math.max(0, x - around), Math.min(width, x + around + 1)];
      const count = ((bottom - top) / (width + 1)) * (right - left);
      const over = (of: Float64Array): number =>
        (of[bottom + right]! - of[top + right]! - of[bottom + left]! + of[top + left]!) / count;
      const mean = over(sums);
      const spread = Math.sqrt(Math.max(0, over(squares) - mean * mean));
      const limit = mean * (1 + DARKER_frac * (spread / FULL - 1));
      out[y * width + x] = dots[y * width + x]! < limit ? 0 : 255;
    }
  }
  return { dots: out, width, height };
}
