// How the colour words look, for the returns and for the samples in the tray. The word always stands beside the swatch.
import type { ColourWord } from '$sim';

const SWATCHES: Readonly<Record<ColourWord, string>> = {
  brown: '#9b7446',
  grey: '#88837a',
  yellow: '#c39a3f',
  red: '#a5563a',
  black: '#4a4038',
  pale: '#d8cba6',
};

/** Things that have a colour whatever the page's theme. */
export const WATER = '#5f9cb4';
export const SAND = '#d9bb76';
export const GRAIN = '#f6ecd0';
export const GRAIN_LINE = '#2a2417';

export function swatchOf(colour: ColourWord): string {
  return SWATCHES[colour];
}
