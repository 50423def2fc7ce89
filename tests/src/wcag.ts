// Contrast as WCAG 2.2 reckons it, for every test that looks at colours.

export type Rgb = readonly [red: number, green: number, blue: number];

const linear = (share: number): number => (share <= 0.04045 ? share / 12.92 : ((share + 0.055) / 1.055) ** 2.4);

/** Linear light of a colour, each part 0 to 1; colours are #rrggbb or numbers. */
export function linearOf(colour: string | number): Rgb {
  const value = typeof colour === 'number' ? colour : Number.parseInt(colour.slice(1), 16);
  const part = (shift: number): number => linear(((value >> shift) & 255) / 255);
  return [part(16), part(8), part(0)];
}

/** Relative luminance of linear light, 0 to 1. */
export const luminanceOf = ([r, g, b]: Rgb): number => 0.2126 * r + 0.7152 * g + 0.0722 * b;

/** (lighter + .05)/(darker + .05), 1 to 21. */
export const contrastOf = (one: number, other: number): number =>
  (Math.max(one, other) + 0.05) / (Math.min(one, other) + 0.05);

export const contrast = (one: string | number, other: string | number): number =>
  contrastOf(luminanceOf(linearOf(one)), luminanceOf(linearOf(other)));
